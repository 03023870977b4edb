import { cutRow, measureExtentMm } from './cutRows.ts'
import type { PackedSheet, SheetCell } from './packedSheet.ts'
import type { CutNode, SheetJob, SheetRect } from './sheetJob.ts'

interface CellCutter {
  /** What a cell's parts need along the sheet's length or its width. */
  readonly needMm: (cell: SheetCell, alongLength: boolean) => number
  readonly cutCell: (cell: SheetCell, rect: SheetRect) => CutNode
}

/** The first cuts of a sheet into pieces that can be carried, and what becomes of each piece. */
export function cutSections(
  job: SheetJob,
  sheet: PackedSheet,
  rect: SheetRect,
  { needMm, cutCell }: CellCutter,
): CutNode {
  const { grid } = sheet
  const { kerfMm, carry } = job
  const along = grid.sectionsAlongLength
  const limitMm = (isLength: boolean) =>
    (isLength === grid.isTurned ? carry?.widthMm : carry?.lengthMm) ?? Number.POSITIVE_INFINITY
  const sections: SheetCell[][] = []
  for (let at = 0; at < sheet.cells.length; at += grid.cells) {
    sections.push(sheet.cells.slice(at, at + grid.cells))
  }
  const cutCells = (cells: readonly SheetCell[], piece: SheetRect): CutNode => {
    const needs = cells.map((cell) => ({ what: cell, neededMm: needMm(cell, !along) }))
    const size = { totalMm: measureExtentMm(piece, !along), limitMm: limitMm(!along), kerfMm }
    const row = shareOut(needs, size).map(({ what, thickMm }) => ({
      thickMm,
      cut: (cellRect: SheetRect) => cutCell(what, cellRect),
    }))
    return cutRow(piece, { alongLength: !along, kerfMm, isCarry: true }, row)
  }
  const needs = sections.map((cells) => ({
    what: cells,
    neededMm: Math.max(...cells.map((cell) => needMm(cell, along))),
  }))
  const size = { totalMm: measureExtentMm(rect, along), limitMm: limitMm(along), kerfMm }
  const row = shareOut(needs, size).map(({ what, thickMm }) => ({
    thickMm,
    cut: (piece: SheetRect) => cutCells(what, piece),
  }))
  return cutRow(rect, { alongLength: along, kerfMm, isCarry: true }, row)
}

interface RowSize {
  readonly totalMm: number
  readonly limitMm: number
  readonly kerfMm: number
}

/**
 * The pieces of a row that fill it but for the saw cuts, the largest need first: none longer than the
 * limit, none shorter than it needs, and no more of them than that takes.
 */
function shareOut<T>(
  needs: readonly { readonly what: T; readonly neededMm: number }[],
  { totalMm, limitMm, kerfMm }: RowSize,
): readonly { readonly what: T; readonly thickMm: number }[] {
  const order = [...needs].sort((a, b) => b.neededMm - a.neededMm)
  const needy = order.filter((need) => need.neededMm > 0).length
  const fill = Math.ceil((totalMm + kerfMm) / (limitMm + kerfMm) - 1e-9)
  const kept = order.slice(0, Math.max(needy, fill))
  let overMm = totalMm - kerfMm * (kept.length - 1)
  for (const need of kept) overMm -= need.neededMm
  const more = new Array<number>(kept.length).fill(0)
  // Empty pieces first, then the smallest.
  const turns = [...kept.keys()].sort((a, b) => rankOf(a, needy) - rankOf(b, needy))
  for (const at of turns) {
    const roomMm = Math.max(0, limitMm - (kept[at]?.neededMm ?? 0))
    const addedMm = Math.min(Math.max(0, overMm), roomMm)
    more[at] = addedMm
    overMm -= addedMm
  }
  return kept.map((need, at) => ({ what: need.what, thickMm: need.neededMm + (more[at] ?? 0) }))
}

function rankOf(index: number, needy: number): number {
  return index >= needy ? index - needy - 1e6 : -index
}
