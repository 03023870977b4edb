import { type DualCut, makeCut, wholeValues } from './dualCut.ts'
import { generateColumns } from './generateColumns.ts'
import type { PackingSpace } from './packingSpace.ts'
import type { Problem } from './problem.ts'

/**
 * The first rules for purchases, one by one: length itself (which boards' lengths can be made up at
 * all), the duals of the cheapest fractional plan, whose bound is Farley's (1990), and the stepped
 * lengths of Fekete & Schepers 2001 for each board.
 */
export function* startCuts(
  problem: Problem,
  space: PackingSpace,
): Generator<DualCut | undefined, void> {
  const cutOf = (values: readonly number[]): DualCut => makeCut(space, problem.demand, values)
  yield cutOf(wholeValues(space, space.weights, 1e6))
  const dearest = Math.max(1, ...problem.costs)
  const relaxed = yield* generateColumns(space, {
    demand: problem.demand,
    penalties: problem.demand.map(() => MISSING),
    boards: problem.limits.map((limit, stock) => (isAmple(problem, stock) ? Infinity : limit)),
    costs: problem.costs.map((cost) => cost / dearest),
    patience: Infinity,
  })
  if (relaxed.kind === 'solved' && relaxed.cut !== undefined) {
    // The programme priced all boards at once, so its cut holds for all of them.
    yield relaxed.cut
    for (const finest of [60, 1000]) yield cutOf(wholeValues(space, relaxed.cut.values, finest))
  }
  for (const values of steppedLengths(space)) yield cutOf(values)
}

/** How many of the dearest boards it costs to leave a piece out. */
const MISSING = 10

/** There are as many of these boards as pieces. */
const isAmple = ({ limits, demand }: Problem, stock: number): boolean =>
  (limits[stock] ?? 0) >= demand.reduce((sum, count) => sum + count, 0)

const MOST_STEPS = 3

/** A piece is worth how many whole (k + 1)ths of the board it takes. */
const steppedLengths = ({ weights, caps }: PackingSpace): number[][] => {
  const byKey = new Map<string, number[]>()
  for (const cap of caps) {
    for (let step = 1; step <= MOST_STEPS; step++) {
      const values = weights.map((weight) => Math.floor(((step + 1) * weight) / cap))
      if (values.some((value) => value > 0)) byKey.set(values.join(), values)
    }
  }
  return [...byKey.values()]
}
