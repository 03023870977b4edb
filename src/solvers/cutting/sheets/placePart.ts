import { type PackedSheet, type SheetCell, swapCell } from './packedSheet.ts'
import type { Place } from './placeSearch.ts'
import type { PartClass } from './sheetModel.ts'
import { buildBranch, buildLeaf, flipLeaf, type SliceNode, swapChildren } from './sliceTree.ts'

/** The sheet with the part where `findPlace` found room for it; the old sheet stays as it is. */
export function placePart(sheet: PackedSheet, place: Place, part: PartClass): PackedSheet {
  const cell = sheet.cells[place.cell]
  if (!cell) return sheet
  return swapCell(sheet, place.cell, placeInCell(cell, place, part))
}

function placeInCell(cell: SheetCell, place: Place, part: PartClass): SheetCell {
  if (!cell.root) {
    const leaf = buildLeaf(part, place.turned, place.alongLength)
    return { root: buildBranch([leaf]), alongLength: place.alongLength }
  }
  if (place.kind === 'lift') {
    const leaf = buildLeaf(part, place.turned, !cell.alongLength)
    const [only] = cell.root.children
    const rest = cell.root.leaves === 1 && only ? flipLeaf(only) : cell.root
    return { root: buildBranch([rest, leaf]), alongLength: !cell.alongLength }
  }
  const rowAlongLength = (place.path.length % 2 === 0) === cell.alongLength
  const root = rebuild(cell.root, place.path, 0, (branch) => {
    if (place.kind === 'join') {
      return swapChildren(branch, () => false, buildLeaf(part, place.turned, rowAlongLength))
    }
    const leaf = buildLeaf(part, place.turned, !rowAlongLength)
    if (place.kind === 'wrap') {
      const old = branch.children[place.child]
      const pair = buildBranch(old ? [flipLeaf(old), leaf] : [leaf])
      return swapChildren(branch, (at) => at === place.child, pair)
    }
    const group = buildBranch(branch.children.slice(0, place.child))
    return swapChildren(branch, (at) => at < place.child, buildBranch([group, leaf]))
  })
  return { root, alongLength: cell.alongLength }
}

function rebuild(
  branch: SliceNode,
  path: readonly number[],
  level: number,
  change: (branch: SliceNode) => SliceNode,
): SliceNode {
  const step = path[level]
  const child = step === undefined ? undefined : branch.children[step]
  if (!child) return change(branch)
  return swapChildren(branch, (at) => at === step, rebuild(child, path, level + 1, change))
}
