import { worth } from './leftoverWorth.ts'
import { measureRoom, type PackedSheet } from './packedSheet.ts'
import { type Place, type PlaceSearch, proposePlace } from './placeSearch.ts'
import { tryRow } from './rowPlaces.ts'
import type { PartClass } from './sheetModel.ts'
import type { SliceNode } from './sliceTree.ts'

/**
 * The place in these sheets that keeps what is left over in the fewest, largest pieces: the sum of the
 * left-over rectangles' areas to the power 1.5 falls least. Undefined where nothing fits.
 * After Gardeyn & Wauters 2022, who value left-over pieces by a power of their area; here a row still
 * grows while its sheet has room, so nothing is lost to where the first cut was laid.
 */
export function findPlace(
  search: PlaceSearch,
  sheets: readonly PackedSheet[],
  part: PartClass,
): Place | undefined {
  search.best = undefined
  search.bestScore = Number.NEGATIVE_INFINITY
  search.part = part
  for (let at = 0; at < sheets.length; at++) {
    const sheet = sheets[at]
    if (!sheet || sheet.type.area - sheet.usedArea < part.area) continue
    search.sheet = at
    searchSheet(search, sheet, part)
  }
  return search.best
}

function searchSheet(search: PlaceSearch, sheet: PackedSheet, part: PartClass): void {
  let hasTriedEmpty = false
  for (let at = 0; at < sheet.cells.length; at++) {
    const cell = sheet.cells[at]
    if (!cell) continue
    search.cell = at
    const room = measureRoom(sheet, at)
    if (!cell.root) {
      // Empty cells of a sheet are alike.
      if (!hasTriedEmpty) {
        tryStart(search, part, room.length, room.width, true)
        tryStart(search, part, room.width, room.length, false)
      }
      hasTriedEmpty = true
      continue
    }
    search.alongLength = cell.alongLength
    search.along = cell.alongLength ? room.length : room.width
    search.cross = cell.alongLength ? room.width : room.length
    tryLift(search, part, cell.root)
    visit(search, cell.root, 0, search.along, search.cross)
  }
}

/** All places in a branch that may reach `along` in its own row and `cross` across it. */
function visit(
  search: PlaceSearch,
  branch: SliceNode,
  level: number,
  along: number,
  cross: number,
): void {
  const part = search.part
  if (!part) return
  search.effort += branch.children.length + 1
  search.branches[level] = branch
  const slack = along - branch.reach
  const rowAlongLength = ((level & 1) === 0) === search.alongLength
  for (let turn = 0; turn < (part.mayTurn ? 2 : 1); turn++) {
    const isThickLength = rowAlongLength === (turn === 0)
    const thick = isThickLength ? part.length : part.width
    const reach = isThickLength ? part.width : part.length
    if (reach > cross) continue
    tryRow(search, branch, level, [thick, reach, slack, cross], turn)
  }
  const least = Math.min(part.length, part.width)
  for (let at = 0; at < branch.children.length; at++) {
    const child = branch.children[at]
    if (!child || child.part || child.thick + slack < least) continue
    search.steps[level] = at
    visit(search, child, level + 1, cross, child.thick + slack)
  }
}

function tryStart(
  search: PlaceSearch,
  part: PartClass,
  along: number,
  cross: number,
  alongLength: boolean,
): void {
  for (let turn = 0; turn < (part.mayTurn ? 2 : 1); turn++) {
    const isThickLength = alongLength === (turn === 0)
    const thick = isThickLength ? part.length : part.width
    const reach = isThickLength ? part.width : part.length
    if (thick > along || reach > cross) continue
    search.alongLength = alongLength
    const score =
      worth((along - thick) * cross) + worth(thick * (cross - reach)) - worth(along * cross)
    proposePlace(search, score, 'start', 0, -1, turn)
  }
}

function tryLift(search: PlaceSearch, part: PartClass, root: SliceNode): void {
  if (root.height + 1 > search.stages) return
  const { along, cross } = search
  // The new row runs across the old one: the sheet's `cross` is its length.
  for (let turn = 0; turn < (part.mayTurn ? 2 : 1); turn++) {
    const isThickLength = !search.alongLength === (turn === 0)
    const thick = isThickLength ? part.length : part.width
    const reach = isThickLength ? part.width : part.length
    const left = cross - root.thick - thick
    if (left < 0 || reach > along) continue
    let score =
      worth(left * along) +
      worth(thick * (along - reach)) +
      worth(root.thick * (along - root.reach)) -
      worth((along - root.reach) * cross)
    for (const child of root.children) {
      score +=
        worth(child.thick * (root.thick - child.reach)) - worth(child.thick * (cross - child.reach))
    }
    proposePlace(search, score, 'lift', 0, -1, turn)
  }
}
