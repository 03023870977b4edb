import type { DualCut } from './dualCut.ts'
import type { Branch } from './walkPurchases.ts'

/** A cut ready to be tried on whole branches of purchases. */
export interface BranchCut {
  readonly cut: DualCut
  /** What is still needed on the way to each depth. */
  readonly missing: number[]
  /** Most worth per money, and per board, of the stocks from each depth on. */
  readonly perMoney: readonly number[]
  readonly perBoard: readonly number[]
  /** What all pieces cost at least by this cut, in fractions of boards. */
  readonly leastMoney: number
}

/** `boards` are taken in any case; the stocks of `order` are chosen one after the other. */
export const createBranchCut = (
  cut: DualCut,
  costs: readonly number[],
  { order, boards }: { readonly order: readonly number[]; readonly boards: readonly number[] },
): BranchCut => {
  const { worth, need } = cut
  const start = boards.reduce((left, copies, at) => left - copies * (worth[at] ?? 0), need)
  const perMoney = bestFrom(order, (at) => rateOf(worth[at] ?? 0, costs[at] ?? 0))
  return {
    cut,
    perMoney,
    missing: [start, ...order.map(() => 0)],
    perBoard: bestFrom(order, (at) => worth[at] ?? 0),
    leastMoney: start > 0 ? start / Math.max(1e-9, perMoney[0] ?? 0) : 0,
  }
}

/** So many copies of a stock are taken at a depth. */
export const payInto = (
  { cut, missing }: BranchCut,
  depth: number,
  { stock, copies }: { readonly stock: number; readonly copies: number },
): void => {
  missing[depth + 1] = (missing[depth] ?? 0) - copies * (cut.worth[stock] ?? 0)
}

/** The money or the places that remain can't buy what the cut still asks for, however they are used. */
export const isHopelessBy = (
  { missing, perMoney, perBoard }: BranchCut,
  { depth, money, places }: Branch,
): boolean => {
  const needed = missing[depth] ?? 0
  if (needed <= 0) return false
  // Rounding of a rate must never cut a purchase off.
  const enough = needed * (1 - 1e-9) - 1e-6
  return times(money, perMoney[depth] ?? 0) < enough || times(places, perBoard[depth] ?? 0) < enough
}

const rateOf = (worth: number, cost: number): number => {
  if (worth === 0) return 0
  return cost > 0 ? worth / cost : Infinity
}

/** The best of what follows, for each depth and one beyond the last. */
const bestFrom = (order: readonly number[], rate: (stock: number) => number): number[] => {
  const best = new Array<number>(order.length + 1).fill(0)
  for (let depth = order.length - 1; depth >= 0; depth--) {
    best[depth] = Math.max(best[depth + 1] ?? 0, rate(order[depth] ?? 0))
  }
  return best
}

/** Nothing of an infinite rate is nothing. */
const times = (amount: number, rate: number): number =>
  amount === 0 || rate === 0 ? 0 : amount * rate
