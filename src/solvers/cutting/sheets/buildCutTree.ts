import { cutRow, measureExtentMm, type RowPiece, SAME_MM } from './cutRows.ts'
import { cutSections } from './cutSections.ts'
import type { PackedSheet, SheetCell } from './packedSheet.ts'
import type { CutNode, SheetJob, SheetRect } from './sheetJob.ts'
import type { PartClass } from './sheetModel.ts'
import type { SliceNode } from './sliceTree.ts'

/** A slice tree in true sizes, without the kerfs at its ends. */
interface TrueNode {
  /** Index in the job's parts; undefined for a branch. */
  readonly part: number | undefined
  readonly turned: boolean
  readonly thickMm: number
  readonly reachMm: number
  /** Thickest first, alike beside alike. */
  readonly children: readonly TrueNode[]
}

/**
 * The cuts that make a packed sheet, with true sizes: each removes one kerf, unless less than a kerf is
 * left behind it. The root rectangle is the sheet without its trimmed edges; cuts into pieces that can be
 * carried come first. `takeCopy` names the part of the job that the next copy of a size is.
 */
export function buildCutTree(
  job: SheetJob,
  sheet: PackedSheet,
  takeCopy: (part: PartClass) => number,
): CutNode {
  const stock = job.stocks[sheet.type.stock]
  const rect: SheetRect = {
    xMm: job.trimMm,
    yMm: job.trimMm,
    lengthMm: (stock?.lengthMm ?? 0) - 2 * job.trimMm,
    widthMm: (stock?.widthMm ?? 0) - 2 * job.trimMm,
  }
  const roots = new Map<SheetCell, TrueNode>()
  for (const cell of sheet.cells) {
    if (cell.root) roots.set(cell, measureTrue(job, cell.root, !cell.alongLength, takeCopy))
  }
  const cutCell = (cell: SheetCell, piece: SheetRect): CutNode => {
    const root = roots.get(cell)
    return root ? cutNode(job, root, piece, !cell.alongLength) : { kind: 'offcut', rect: piece }
  }
  const [only] = sheet.cells
  if (sheet.cells.length === 1 && only) return cutCell(only, rect)
  const needMm = (cell: SheetCell, alongLength: boolean) => {
    const root = roots.get(cell)
    if (!root) return 0
    return alongLength === cell.alongLength ? root.reachMm : root.thickMm
  }
  return cutSections(job, sheet, rect, { needMm, cutCell })
}

function measureTrue(
  job: SheetJob,
  node: SliceNode,
  rowAlongLength: boolean,
  takeCopy: (part: PartClass) => number,
): TrueNode {
  if (node.part) {
    const index = takeCopy(node.part)
    const part = job.parts[index]
    const [long, wide] = [part?.lengthMm ?? 0, part?.widthMm ?? 0]
    // Thick is along the row: the part's length when it lies as drawn in a row along the length.
    const [thickMm, reachMm] = rowAlongLength !== node.turned ? [long, wide] : [wide, long]
    return { part: index, turned: node.turned, thickMm, reachMm, children: [] }
  }
  const children = node.children
    .map((child) => measureTrue(job, child, !rowAlongLength, takeCopy))
    .sort((a, b) => b.thickMm - a.thickMm || b.reachMm - a.reachMm || orderOf(a) - orderOf(b))
  let reachMm = -job.kerfMm
  let thickMm = 0
  for (const child of children) {
    reachMm += child.thickMm + job.kerfMm
    thickMm = Math.max(thickMm, child.reachMm)
  }
  return { part: undefined, turned: false, thickMm, reachMm, children }
}

/** Divides a rectangle that is a node's place in a row, or the whole of a carried piece. */
function cutNode(job: SheetJob, node: TrueNode, rect: SheetRect, rowAlongLength: boolean): CutNode {
  if (node.part !== undefined) return cutPart(job, node, node.part, rect)
  const pieces: readonly RowPiece[] = node.children.map((child) => ({
    thickMm: child.thickMm,
    cut: (piece) => cutNode(job, child, piece, !rowAlongLength),
  }))
  return cutRow(rect, { alongLength: !rowAlongLength, kerfMm: job.kerfMm, isCarry: false }, pieces)
}

/** Trims what is over across the row, and along it where rounding left some. */
function cutPart(job: SheetJob, node: TrueNode, index: number, rect: SheetRect): CutNode {
  const part = job.parts[index]
  const lengthMm = (node.turned ? part?.widthMm : part?.lengthMm) ?? 0
  const widthMm = (node.turned ? part?.lengthMm : part?.widthMm) ?? 0
  for (const [alongLength, sizeMm] of [
    [true, lengthMm],
    [false, widthMm],
  ] as const) {
    if (measureExtentMm(rect, alongLength) - sizeMm < SAME_MM) continue
    const direction = { alongLength, kerfMm: job.kerfMm, isCarry: false }
    const cut = (piece: SheetRect) => cutPart(job, node, index, piece)
    return cutRow(rect, direction, [{ thickMm: sizeMm, cut }])
  }
  const own = { xMm: rect.xMm, yMm: rect.yMm, lengthMm, widthMm }
  return { kind: 'part', rect: own, piece: { ...own, part: index, turned: node.turned } }
}

function orderOf(node: TrueNode): number {
  return node.part ?? -1
}
