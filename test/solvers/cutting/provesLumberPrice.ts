import type { LumberJob } from '../../../src/solvers/cutting/lumber/lumberJob.ts'

/** Added to what a board holds, mm: a sum that is rounded up by the computer still fits. */
const SLACK_MM = 1e-6

/** A purchase must be cheaper by more than this to count as cheaper. */
const SLACK_PRICE = 1e-7

/**
 * True when the dual vectors prove that no purchase below `price` can give all the parts. Each vector
 * gives each part a whole weight. A board of length L yields at most F(L), the greatest weight that
 * fits on it (a bounded knapsack), so a purchase whose boards yield less than the parts weigh in all
 * is too small (Farley 1990; Alves & Valério de Carvalho 2008). Walks through all greatest purchases
 * below the price. Written apart from the solver's own verifier, in true lengths, not in its units.
 */
export const provesLumberPrice = (
  job: LumberJob,
  price: number,
  duals: readonly (readonly number[])[],
): boolean => {
  if (duals.some((dual) => !isDual(job, dual))) return false
  const rules = duals.map((dual) => ({
    asked: job.parts.reduce((sum, { count }, i) => sum + count * (dual[i] ?? 0), 0),
    yields: job.stocks.map(({ lengthMm }) => greatestWeight(job, lengthMm, dual)),
  }))
  // The last stock's counts are not walked through, so the cheapest, with the most of them, is last.
  const priceOf = (stock: number): number => job.stocks[stock]?.price ?? 0
  const order = job.stocks.map((_, i) => i).toSorted((a, b) => priceOf(b) - priceOf(a))
  return isTooSmall({ job, rules, order, yields: rules.map(() => 0), money: price - SLACK_PRICE })
}

interface Rule {
  readonly asked: number
  readonly yields: readonly number[]
}

interface Walk {
  readonly job: LumberJob
  readonly rules: readonly Rule[]
  /** Stocks that are still to be bought. */
  readonly order: readonly number[]
  /** What the boards bought so far yield, by rule. */
  readonly yields: readonly number[]
  /** What may still be spent; a purchase for nothing is always cheaper than one that costs something. */
  readonly money: number
}

/** True when each purchase that goes on from here breaks at least one rule. */
const isTooSmall = ({ job, rules, order, yields, money }: Walk): boolean => {
  if (money < 0) return true
  const [stock, ...rest] = order
  if (stock === undefined) return rules.some(({ asked }, i) => (yields[i] ?? 0) < asked)
  const { price = 0, count = Infinity } = job.stocks[stock] ?? {}
  // More boards than parts are never of use.
  const parts = job.parts.reduce((sum, part) => sum + part.count, 0)
  const most = Math.min(count, parts, price > 0 ? Math.floor(money / price) : Infinity)
  // To buy more of the last stock only helps, so its greatest count stands for all lower ones.
  const least = rest.length === 0 ? most : 0
  for (let bought = least; bought <= most; bought++) {
    const after = rules.map((rule, i) => (yields[i] ?? 0) + bought * (rule.yields[stock] ?? 0))
    const next = { job, rules, order: rest, yields: after, money: money - bought * price }
    if (!isTooSmall(next)) return false
  }
  return true
}

const isDual = (job: LumberJob, dual: readonly number[]): boolean =>
  dual.length === job.parts.length && dual.every((u) => Number.isSafeInteger(u) && u >= 0)

/** A set of pieces on one board: none shorter weighs as much. */
interface Load {
  readonly lengthMm: number
  readonly weight: number
}

/** The greatest weight of pieces on one board, no part more often than it is asked for. */
const greatestWeight = (job: LumberJob, boardMm: number, dual: readonly number[]): number => {
  const roomMm = boardMm - job.trimMm + job.kerfMm + SLACK_MM
  let loads: readonly Load[] = [{ lengthMm: 0, weight: 0 }]
  job.parts.forEach(({ lengthMm, count }, i) => {
    const weight = dual[i] ?? 0
    if (weight === 0) return
    const piece = { lengthMm: lengthMm + job.kerfMm, weight }
    for (const copies of bundles(Math.min(count, Math.floor(roomMm / piece.lengthMm)))) {
      const more = { lengthMm: copies * piece.lengthMm, weight: copies * piece.weight }
      loads = keepBest(loads, more, roomMm)
    }
  })
  return loads.at(-1)?.weight ?? 0
}

/** Numbers whose sums are all the numbers up to `count`: 1, 2, 4, ... and what is left. */
const bundles = (count: number): readonly number[] => {
  const sizes: number[] = []
  let left = count
  for (let size = 1; left > 0; size *= 2) {
    sizes.push(Math.min(size, left))
    left -= Math.min(size, left)
  }
  return sizes
}

/** Loads with and without the bundle, by length, without those that are no heavier than a shorter one. */
const keepBest = (loads: readonly Load[], more: Load, roomMm: number): readonly Load[] => {
  const longer = loads
    .map(({ lengthMm, weight }) => ({
      lengthMm: lengthMm + more.lengthMm,
      weight: weight + more.weight,
    }))
    .filter(({ lengthMm }) => lengthMm <= roomMm)
  const kept: Load[] = []
  let heaviest = -1
  for (const load of merge(loads, longer)) {
    if (load.weight <= heaviest) continue
    kept.push(load)
    heaviest = load.weight
  }
  return kept
}

/** Two rows in order of length as one. */
const merge = (a: readonly Load[], b: readonly Load[]): readonly Load[] => {
  const all: Load[] = []
  let [i, j] = [0, 0]
  while (i < a.length || j < b.length) {
    const [left, right] = [a[i], b[j]]
    if (right === undefined || (left !== undefined && left.lengthMm <= right.lengthMm)) {
      if (left !== undefined) all.push(left)
      i++
    } else {
      all.push(right)
      j++
    }
  }
  return all
}
