import { measureRoom, type PackedSheet } from './packedSheet.ts'
import type { SliceNode } from './sliceTree.ts'
import type { Packing } from './startPlan.ts'

/** A strip narrower than this share of its length is no use as an offcut. */
const LEAST_SHAPE = 1 / 12
/** So little that it only decides between plans with equal offcuts. */
const CUT_WEIGHT = 0.002

/**
 * How good a plan is among plans of one price: the largest usable offcut, as a share of its sheet
 * (Andrade, Birgin & Morabito 2013), less a little for the length of all cuts.
 */
export function rateOffcuts(packing: Packing): number {
  let largest = 0
  let cuts = 0
  for (const sheet of packing.sheets) {
    largest = Math.max(largest, measureLargestOffcut(sheet) / sheet.type.area)
    cuts += measureCuts(sheet) / (sheet.type.length + sheet.type.width)
  }
  return largest - (CUT_WEIGHT * cuts) / Math.max(1, packing.sheets.length)
}

function measureLargestOffcut(sheet: PackedSheet): number {
  let largest = 0
  for (const [index, cell] of sheet.cells.entries()) {
    const room = measureRoom(sheet, index)
    const [along, cross] = cell.alongLength ? [room.length, room.width] : [room.width, room.length]
    largest = Math.max(largest, measureUse(along - (cell.root?.reach ?? 0), cross))
    for (const child of cell.root?.children ?? []) {
      largest = Math.max(largest, measureUse(child.thick, cross - child.reach))
    }
  }
  return largest
}

function measureUse(a: number, b: number): number {
  return Math.min(a, b) < LEAST_SHAPE * Math.max(a, b) ? 0 : a * b
}

function measureCuts(sheet: PackedSheet): number {
  let length = 0
  for (const [index, cell] of sheet.cells.entries()) {
    if (!cell.root) continue
    const room = measureRoom(sheet, index)
    const [along, cross] = cell.alongLength ? [room.length, room.width] : [room.width, room.length]
    length += measureBranchCuts(cell.root, along, cross)
  }
  return length
}

function measureBranchCuts(branch: SliceNode, along: number, cross: number): number {
  const isFlush = branch.reach === along
  let length = (branch.children.length - (isFlush ? 1 : 0)) * cross
  for (const child of branch.children) {
    if (!child.part) length += measureBranchCuts(child, cross, child.thick)
    else if (child.reach < cross) length += child.thick
  }
  return length
}
