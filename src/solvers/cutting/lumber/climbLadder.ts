import { type DualCut, isCutOff } from './dualCut.ts'
import { QUICK, THOROUGH } from './efforts.ts'
import { type FillEffort, fillPurchase, type Spaces } from './fillPurchase.ts'
import { listPurchases, type Purchase, type PurchaseList } from './listPurchases.ts'
import { type Bar, costOf, type Problem } from './problem.ts'

/** What is known of a job on the way; changes in place. */
export interface Progress {
  bars: readonly Bar[]
  cost: number
  /** Every purchase that costs less is forbidden by one of the cuts. */
  bound: number
  readonly cuts: DualCut[]
}

export interface Search {
  readonly problem: Problem
  readonly spaces: Spaces
  readonly progress: Progress
  readonly random: () => number
}

/**
 * The ladder over purchases, cheapest first: each is filled, which ends it, or forbidden by a cut, which
 * may forbid many more, or left open and tried harder in the end. Yields true when the plan got better,
 * false as a pause.
 */
export function* climbLadder(search: Search): Generator<boolean, void> {
  const { progress } = search
  const open: Purchase[] = []
  // 1. Upwards, range by range and each wider than the last, until the plan's own cost is reached.
  let width = firstWidth(search)
  let from = progress.bound
  let crowds = 0
  while (from < progress.cost) {
    const below = Math.min(progress.cost, from + width)
    const listed = yield* quietly(list(search, from, below))
    if (!listed.isComplete) {
      if (width > search.problem.costStep) {
        width = Math.max(search.problem.costStep, Math.floor(width / 4))
        continue
      }
      // Too many to list at a single cost: some are tried, which may fill one or forbid many.
      crowds++
      if (crowds > MOST_CROWDS) break
      yield* decideAll(search, someOf(listed.purchases), { effort: QUICK, open: [] })
      continue
    }
    yield* decideAll(search, listed.purchases, { effort: QUICK, open })
    from = below
    width *= 2
    if (open.length === 0) progress.bound = Math.min(from, progress.cost)
  }
  // 2. What stayed open, with more effort.
  const still: Purchase[] = []
  yield* decideAll(search, open, { effort: THOROUGH, open: still })
  progress.bound = Math.min(still[0]?.cost ?? from, from, progress.cost)
}

/** The cheapest plan rarely lies further above the cheapest fractional one than this. */
const NEAR = 0.002

const firstWidth = ({ problem, progress }: Search): number =>
  roundUp(progress.bound * NEAR, problem.costStep) + problem.costStep

/** Takes a cut in; true when the bound rises by it. */
export const addCut = (problem: Problem, progress: Progress, cut: DualCut): boolean => {
  progress.cuts.push(cut)
  const money = Math.min(progress.cost, roundUp(leastMoney(problem, cut), problem.costStep))
  if (money <= progress.bound) return false
  progress.bound = money
  return true
}

/** What a purchase must cost at least by one cut, if it is spent at the best rate. */
const leastMoney = ({ costs, limits }: Problem, { worth, need }: DualCut): number => {
  let best = 0
  let missing = need
  costs.forEach((cost, stock) => {
    if (cost === 0) missing -= (worth[stock] ?? 0) * (limits[stock] ?? 0)
    else best = Math.max(best, (worth[stock] ?? 0) / cost)
  })
  return missing > 0 && best > 0 ? (missing / best) * (1 - 1e-9) : 0
}

const roundUp = (value: number, step: number): number => Math.ceil(value / step) * step

const MOST_VISITS = 3_000_000
/** How often some of too many purchases are tried, and how many of them. */
const MOST_CROWDS = 6
const MOST_OF_CROWD = 30

/** A few from all over a list. */
const someOf = (purchases: readonly Purchase[]): Purchase[] => {
  const stride = Math.max(1, Math.ceil(purchases.length / MOST_OF_CROWD))
  return purchases.filter((_, at) => at % stride === 0)
}

const list = (
  { problem, progress }: Search,
  from: number,
  below: number,
): Generator<undefined, PurchaseList> =>
  listPurchases({
    costs: problem.costs,
    limits: problem.limits,
    cuts: progress.cuts,
    from,
    below,
    mostVisits: MOST_VISITS,
  })

interface Round {
  readonly effort: FillEffort
  /** Gets what could not be decided, cheapest first. */
  readonly open: Purchase[]
}

function* decideAll(
  { problem, spaces, progress, random }: Search,
  purchases: readonly Purchase[],
  { effort, open }: Round,
): Generator<boolean, void> {
  for (const purchase of purchases) {
    if (purchase.cost >= progress.cost) return
    if (open.length === 0) progress.bound = Math.max(progress.bound, purchase.cost)
    if (progress.cuts.some((cut) => isCutOff(cut, purchase.boards))) continue
    const task = { boards: purchase.boards, demand: problem.demand }
    const answer = yield* quietly(fillPurchase(spaces, task, effort, random))
    if (answer.kind === 'cut') progress.cuts.push(answer.cut)
    else if (answer.kind === 'filled') {
      progress.bars = answer.bars
      progress.cost = costOf(problem, answer.bars)
      yield true
    } else open.push(purchase)
  }
}

/** Passes pauses on as "nothing better yet". */
export function* quietly<Answer>(steps: Generator<undefined, Answer>): Generator<false, Answer> {
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
    yield false
  }
}
