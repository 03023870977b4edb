import type { Solved } from './solveFor.ts'

/** One instance, solved once. Prices are in the instance's own money. */
export interface CuttingTrial {
  readonly name: string
  readonly price: number
  readonly bound: number
  readonly isProven: boolean
  /** The least price known, where there is one. */
  readonly bestKnown: number | undefined
  /** What cutting without a plan costs. */
  readonly plainPrice: number | undefined
  /** What an independent check found wrong with the plan. */
  readonly faults: readonly string[]
  /** A bound above a price that can be reached, or a proof that the independent verifier refuses. */
  readonly isFalse: boolean
  readonly time: Omit<Solved<unknown>, 'result'>
}

/** What a set of trials came to. */
export interface CuttingSummary {
  readonly count: number
  /** At or below the least price known; those that are proven where none is known. */
  readonly atBest: number
  readonly proven: number
  readonly falseProofs: number
  readonly faulty: number
  readonly medianMs: number
  readonly p95Ms: number
  readonly mostMs: number
  readonly firstMs: number
  readonly longestStepMs: number
  /** Of the price above its own bound, in percent. */
  readonly meanGap: number
  readonly mostGap: number
  /** Of all prices together above the least known, in percent; below 0 where they are better. */
  readonly aboveBest: number | undefined
  /** Of plain cutting above the plan, in percent. */
  readonly meanSaving: number | undefined
}

const EVEN_PRICE = 1e-6

export const summarize = (trials: readonly CuttingTrial[]): CuttingSummary => {
  const times = trials.map(({ time }) => time.milliseconds).toSorted((a, b) => a - b)
  const gaps = trials.map(({ price, bound }) => percentAbove(price, bound))
  const known = trials.filter(({ bestKnown }) => bestKnown !== undefined)
  const plain = trials.flatMap(({ price, plainPrice }) =>
    plainPrice === undefined ? [] : [percentAbove(plainPrice, price)],
  )
  return {
    count: trials.length,
    atBest: trials.filter(({ price, bestKnown, isProven }) =>
      bestKnown === undefined ? isProven : price <= bestKnown + EVEN_PRICE,
    ).length,
    proven: trials.filter(({ isProven }) => isProven).length,
    falseProofs: trials.filter(({ isFalse }) => isFalse).length,
    faulty: trials.filter(({ faults }) => faults.length > 0).length,
    medianMs: rank(times, 0.5),
    p95Ms: rank(times, 0.95),
    mostMs: rank(times, 1),
    firstMs: Math.max(...trials.map(({ time }) => time.firstMs)),
    longestStepMs: Math.max(...trials.map(({ time }) => time.longestStepMs)),
    meanGap: sum(gaps) / gaps.length,
    mostGap: Math.max(...gaps),
    aboveBest:
      known.length === 0
        ? undefined
        : percentAbove(
            sum(known.map(({ price }) => price)),
            sum(known.map(({ bestKnown = 0 }) => bestKnown)),
          ),
    meanSaving: plain.length === 0 ? undefined : sum(plain) / plain.length,
  }
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

const percentAbove = (value: number, base: number): number =>
  value === base ? 0 : 100 * (value / base - 1)

/** The value that this share of the sorted ones does not exceed. */
const rank = (sorted: readonly number[], share: number): number =>
  sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN
