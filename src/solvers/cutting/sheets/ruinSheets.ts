import type { CarryGrid } from './carryGrids.ts'
import type { Missing } from './fillSheets.ts'
import { openSheet, type PackedSheet, type SheetCell, swapCell } from './packedSheet.ts'
import { pruneTree } from './sliceTree.ts'

/** Parts that are taken out of a sheet at most, unless it is emptied. */
const MOST_DROPPED = 8

/**
 * Takes parts out of one or two sheets, most often some that lie together. Changes both arrays in
 * place. The number of parts is drawn by lot; now and then a whole sheet is emptied, and may then be
 * divided another way to be carried.
 */
export function ruinSheets(sheets: PackedSheet[], missing: Missing, random: () => number): void {
  const times = 1 + Math.floor(random() * 2)
  for (let time = 0; time < times; time++) {
    const at = Math.floor(random() * sheets.length)
    const sheet = sheets[at]
    if (!sheet) continue
    if (sheet.leaves === 0) {
      sheets[at] = openSheet(sheet.type, drawGrid(sheet, random))
      continue
    }
    const isWhole = sheet.leaves <= 12 && random() < 0.05
    const most = Math.min(sheet.leaves, MOST_DROPPED)
    const count = isWhole ? sheet.leaves : 1 + Math.floor(random() * most)
    const from = Math.floor(random() * (sheet.leaves - count + 1))
    const isScattered = random() < 0.3
    const chance = count / sheet.leaves
    const isDropped = isScattered
      ? () => random() < chance
      : (leaf: number) => leaf >= from && leaf < from + count
    const pruned = pruneSheet(sheet, missing, isDropped)
    sheets[at] = pruned.leaves > 0 ? pruned : openSheet(sheet.type, drawGrid(sheet, random))
  }
}

function drawGrid({ type, grid }: PackedSheet, random: () => number): CarryGrid {
  if (type.grids.length < 2) return grid
  return type.grids[Math.floor(random() * type.grids.length)] ?? grid
}

/** The sheet without some parts, which are counted as missing. */
export function pruneSheet(
  sheet: PackedSheet,
  missing: Missing,
  isDropped: (leaf: number) => boolean,
): PackedSheet {
  let pruned = sheet
  let first = 0
  for (const [index, cell] of sheet.cells.entries()) {
    if (!cell.root) continue
    const offset = first
    first += cell.root.leaves
    const root = pruneTree(
      cell.root,
      (leaf) => isDropped(offset + leaf),
      (part) => {
        missing[part.id] = (missing[part.id] ?? 0) + 1
      },
    )
    if (root === cell.root) continue
    pruned = swapCell(pruned, index, straighten({ root, alongLength: cell.alongLength }))
  }
  return pruned
}

/** A root with one row in it gives way to that row. */
function straighten(cell: SheetCell): SheetCell {
  const [only] = cell.root?.children ?? []
  if (cell.root?.children.length !== 1 || !only || only.part) return cell
  return { root: only, alongLength: !cell.alongLength }
}
