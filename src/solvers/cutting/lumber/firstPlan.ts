import { downgrade } from './downgrade.ts'
import { firstFit } from './firstFit.ts'
import { type Bar, costOf, type Problem } from './problem.ts'

/**
 * The cheapest of the first-fit plans that prefer one stock each, with boards exchanged for cheaper
 * ones. Undefined where counted boards run out, which does not mean that there is no plan.
 */
export const firstPlan = (problem: Problem): Bar[] | undefined => {
  let best: Bar[] | undefined
  for (let stock = 0; stock < problem.caps.length; stock++) {
    const others = problem.caps.map((_, at) => at).filter((at) => at !== stock)
    // On-hand boards and counted ones first, or longest first: both orders are worth a try.
    const cheapestFirst = [...others].sort((a, b) => rate(problem, a) - rate(problem, b))
    for (const order of [others, cheapestFirst]) {
      const bars = firstFit(problem, [stock, ...order])
      if (bars === undefined) continue
      const moved = downgrade(problem, bars)
      if (best === undefined || costOf(problem, moved) < costOf(problem, best)) best = moved
    }
  }
  return best
}

const rate = ({ costs, caps }: Problem, stock: number): number =>
  (costs[stock] ?? 0) / Math.max(1, caps[stock] ?? 1)
