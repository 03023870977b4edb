import type { Column } from '../masterProgram.ts'
import type { PackingSpace } from './packingSpace.ts'
import { type Bar, sizeOf } from './problem.ts'

/** Boards by stock, and the pieces by kind that have to go onto them. */
export interface FillTask {
  readonly boards: readonly number[]
  readonly demand: readonly number[]
}

/** Boards that are cut already, and what is left to do. */
export interface PartialFill extends FillTask {
  readonly bars: readonly Bar[]
}

/** Weight of the pieces that have no board yet; nothing is 0 pieces, even of no weight. */
export const missingWeight = (space: PackingSpace, { demand }: FillTask): number =>
  sizeOf(space.weights, demand) + demand.reduce((sum, count) => sum + count, 0)

/** Cuts so many more boards to a pattern, each without the pieces that are no longer wanted. */
export const cutBoards = (fill: PartialFill, column: Column, times: number): PartialFill => {
  const boards = [...fill.boards]
  const demand = [...fill.demand]
  const bars = [...fill.bars]
  for (let copy = 0; copy < times && (boards[column.bin] ?? 0) > 0; copy++) {
    const counts = demand.map(() => 0)
    let pieces = 0
    column.kinds.forEach((kind, at) => {
      const copies = Math.min(column.copies[at] ?? 0, demand[kind] ?? 0)
      counts[kind] = copies
      demand[kind] = (demand[kind] ?? 0) - copies
      pieces += copies
    })
    if (pieces === 0) break
    boards[column.bin] = (boards[column.bin] ?? 0) - 1
    bars.push({ stock: column.bin, counts })
  }
  return { boards, demand, bars }
}

/** Takes some boards back: their pieces are to be placed anew. */
export const releaseBars = (fill: PartialFill, released: ReadonlySet<number>): PartialFill => {
  const boards = [...fill.boards]
  const demand = [...fill.demand]
  const bars = fill.bars.filter((bar, index) => {
    if (!released.has(index)) return true
    boards[bar.stock] = (boards[bar.stock] ?? 0) + 1
    bar.counts.forEach((count, kind) => {
      demand[kind] = (demand[kind] ?? 0) + count
    })
    return false
  })
  return { boards, demand, bars }
}
