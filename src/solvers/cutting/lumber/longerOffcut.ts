import { quietly, type Search } from './climbLadder.ts'
import { LIGHT } from './efforts.ts'
import { equalPurchases } from './equalPurchases.ts'
import { fillPurchase } from './fillPurchase.ts'
import { withBoard } from './packingSpace.ts'
import { type Bar, longestOffcut, type Problem, sizeOf } from './problem.ts'

/** Offcuts are compared in steps of this length: less is no gain that is worth more saw settings. */
const STEP_MM = 50
const MOST_PURCHASES = 4
const MOST_TRIES = 20

/** How many whole steps long an offcut is. */
const offcutSteps = ({ unitMm }: Problem, offcut: number): number =>
  Math.floor((offcut * unitMm) / STEP_MM + 1e-9)

/**
 * Looks for a plan with as many boards, as cheap, that leaves one longer offcut: one board is taken to
 * be shorter by it, and everything has to fit all the same. Halves the range between what the plan has
 * and all that is wasted. Yields true when the plan got better.
 */
export function* longerOffcut(search: Search): Generator<boolean, void> {
  const { problem, progress } = search
  const purchases = yield* equalPurchases(search, progress.bars.length + 1)
  const choices = purchases
    .filter(({ count }) => count === progress.bars.length)
    .map(({ boards }) => ({ boards, waste: wasteOf(problem, boards) }))
    .sort((a, b) => b.waste - a.waste)
    .slice(0, MOST_PURCHASES)
    .flatMap(({ boards, waste }) =>
      boards.flatMap((count, stock) => (count > 0 ? [{ boards, waste, stock }] : [])),
    )
  let tries = 0
  for (const { boards, waste, stock } of choices) {
    // The board still has to carry the shortest piece at least: there are no boards to spare.
    const room = (problem.caps[stock] ?? 0) - Math.min(...problem.weights)
    let low = offcutSteps(problem, longestOffcut(problem, progress.bars))
    let high = offcutSteps(problem, Math.min(waste, room) - problem.kerf) + 1
    let next = high - 1
    while (high - low > 1 && tries < MOST_TRIES) {
      tries++
      const bars = yield* tryOffcut(search, { boards, stock, steps: next })
      if (bars === undefined) high = next
      else {
        progress.bars = bars
        low = next
        yield true
      }
      next = Math.floor((low + high) / 2)
    }
  }
}

const wasteOf = (problem: Problem, boards: readonly number[]): number =>
  sizeOf(problem.caps, boards) - sizeOf(problem.weights, problem.demand)

interface OffcutTry {
  readonly boards: readonly number[]
  /** The stock of which one board is to leave the offcut. */
  readonly stock: number
  readonly steps: number
}

function* tryOffcut(
  { problem, spaces, random }: Search,
  { boards, stock, steps }: OffcutTry,
): Generator<false, readonly Bar[] | undefined> {
  const offcut = Math.ceil((steps * STEP_MM) / problem.unitMm - 1e-9) + problem.kerf
  const shorter = withBoard(spaces.fit, (problem.caps[stock] ?? 0) - offcut)
  const task = {
    boards: [...boards.map((count, at) => (at === stock ? count - 1 : count)), 1],
    demand: problem.demand,
  }
  const steady = { low: shorter, fit: shorter }
  const answer = yield* quietly(fillPurchase(steady, task, LIGHT, random))
  if (answer.kind !== 'filled') return undefined
  const isNew = problem.caps.length
  return answer.bars.map((bar) => (bar.stock === isNew ? { ...bar, stock } : bar))
}
