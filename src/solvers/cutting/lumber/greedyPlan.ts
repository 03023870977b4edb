import type { PackingSpace } from './packingSpace.ts'
import { type Bar, type Problem, sizeOf } from './problem.ts'
import { timesIn } from './randomFill.ts'

/**
 * Board after board the one that holds most length for its price, long pieces counted for a little more
 * because they are hard to place later. Undefined where counted boards run out. Pauses after each
 * knapsack.
 */
export function* greedyPlan(
  problem: Problem,
  space: PackingSpace,
  random: () => number,
): Generator<undefined, Bar[] | undefined> {
  const { weights, caps, costs } = problem
  const demand = [...problem.demand]
  const left = [...problem.limits]
  const longest = weights[0] ?? 1
  const greed = 0.1 + 0.3 * random()
  const values = weights.map((weight) => {
    const share = weight / longest
    return Math.round(1e5 * share * (1 + greed * share + 0.02 * random()))
  })
  const bars: Bar[] = []
  while (demand.some((count) => count > 0)) {
    space.knapsack.solve(values, demand)
    let [stock, most] = [-1, 0]
    caps.forEach((cap, at) => {
      const rate = (space.knapsack.best[cap] ?? 0) / ((costs[at] ?? 0) + 1e-3)
      if ((left[at] ?? 0) === 0 || rate <= most) return
      stock = at
      most = rate
    })
    yield undefined
    const counts = stock < 0 ? [] : space.knapsack.trace(caps[stock] ?? 0)
    if (sizeOf(weights, counts) === 0) return undefined
    const alike = Math.min(left[stock] ?? 0, timesIn(demand, counts))
    for (let copy = 0; copy < alike; copy++) bars.push({ stock, counts })
    left[stock] = (left[stock] ?? 0) - alike
    counts.forEach((count, kind) => {
      demand[kind] = (demand[kind] ?? 0) - alike * count
    })
  }
  return bars
}
