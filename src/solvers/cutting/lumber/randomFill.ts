import type { PackingSpace } from './packingSpace.ts'
import type { FillTask } from './partialFill.ts'
import { type Bar, sizeOf } from './problem.ts'

/**
 * Fills board after board with what fits it best, long pieces valued a little above their length and
 * all values shaken, and cuts as many boards alike as there are pieces for. Gives up when more is
 * wasted than there is to waste. Pauses after each knapsack.
 */
export function* randomFill(
  space: PackingSpace,
  task: FillTask,
  random: () => number,
): Generator<undefined, Bar[] | undefined> {
  const { weights, caps, knapsack } = space
  const boards = [...task.boards]
  const demand = [...task.demand]
  const longest = weights[0] ?? 1
  const greed = random() * 0.4
  const shake = random() < 0.5 ? 0.02 : 0.15
  let slack = sizeOf(caps, boards) - sizeOf(weights, demand)
  const bars: Bar[] = []
  while (slack >= 0) {
    if (demand.every((count) => count === 0)) return bars
    const stock = pickStock(boards, random)
    if (stock < 0) return undefined
    const values = weights.map((weight) => {
      const share = weight / longest
      return Math.round(1e5 * share * (1 + greed * share + shake * random()))
    })
    const cap = caps[stock] ?? 0
    knapsack.solve(values, demand, cap)
    const counts = knapsack.trace(cap)
    yield undefined
    const size = sizeOf(weights, counts)
    if (size === 0) {
      slack -= cap * (boards[stock] ?? 0)
      boards[stock] = 0
      continue
    }
    const alike = Math.min(boards[stock] ?? 0, timesIn(demand, counts))
    for (let copy = 0; copy < alike; copy++) bars.push({ stock, counts })
    boards[stock] = (boards[stock] ?? 0) - alike
    counts.forEach((count, kind) => {
      demand[kind] = (demand[kind] ?? 0) - alike * count
    })
    slack -= alike * (cap - size)
  }
  return undefined
}

/** How often the pieces of one board can be taken from what is wanted. */
export const timesIn = (demand: readonly number[], counts: readonly number[]): number => {
  let times = Infinity
  counts.forEach((count, kind) => {
    if (count > 0) times = Math.min(times, Math.floor((demand[kind] ?? 0) / count))
  })
  return times === Infinity ? 0 : times
}

const pickStock = (boards: readonly number[], random: () => number): number => {
  const all = boards.reduce((sum, count) => sum + count, 0)
  let place = random() * all
  for (let stock = 0; stock < boards.length; stock++) {
    place -= boards[stock] ?? 0
    if (place < 0) return stock
  }
  return boards.findIndex((count) => count > 0)
}
