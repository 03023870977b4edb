import { quietly, type Search } from './climbLadder.ts'
import { listPurchases, type Purchase } from './listPurchases.ts'

const MOST_VISITS = 100_000

/** Purchases as dear as the plan with fewer boards than `boardsBelow`, fewest first; some of them where there are many. */
export function* equalPurchases(
  { problem, progress }: Search,
  boardsBelow: number,
): Generator<false, readonly Purchase[]> {
  const listed = yield* quietly(
    listPurchases({
      costs: problem.costs,
      limits: problem.limits,
      cuts: progress.cuts,
      from: progress.cost,
      below: progress.cost + 1,
      boardsBelow,
      mostVisits: MOST_VISITS,
    }),
  )
  return listed.purchases
}
