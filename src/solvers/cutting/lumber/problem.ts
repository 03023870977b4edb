/**
 * A job in whole units. Parts of equal length are one kind, longest first; a piece weighs its length
 * and one saw cut, a board holds its usable length and one saw cut, because n pieces that fill a board
 * need n − 1 cuts. All arrays by kind or by stock run alike.
 */
export interface Problem {
  /** Weight of a piece by kind, never less than the true one. */
  readonly weights: readonly number[]
  /** Weight of a piece by kind, never more than the true one; the same array where units are exact. */
  readonly lowWeights: readonly number[]
  /** Pieces by kind. */
  readonly demand: readonly number[]
  /** The job's parts that are of this kind. */
  readonly members: readonly (readonly number[])[]
  /** What a board holds, by stock; only stocks that can be of use. */
  readonly caps: readonly number[]
  /** Price by stock, in whole price units. */
  readonly costs: readonly number[]
  /** Boards at most, by stock; never more than there are pieces. */
  readonly limits: readonly number[]
  /** Index in the job's stocks. */
  readonly stocks: readonly number[]
  /** Price units in one unit of money: 100, or more where prices are finer. */
  readonly unitsPerMoney: number
  /** All costs are whole multiples of this. */
  readonly costStep: number
  /** One unit of weight in millimetres. */
  readonly unitMm: number
  /** Weight of a saw cut alone, never less than the true one. */
  readonly kerf: number
}

/** One board and the pieces cut from it, by kind. */
export interface Bar {
  readonly stock: number
  readonly counts: readonly number[]
}

/** What pieces weigh together. */
export const sizeOf = (weights: readonly number[], counts: readonly number[]): number => {
  let size = 0
  for (let kind = 0; kind < counts.length; kind++) {
    size += (counts[kind] ?? 0) * (weights[kind] ?? 0)
  }
  return size
}

/** What a set of boards costs, in price units. */
export const costOf = (problem: Problem, bars: readonly Bar[]): number =>
  bars.reduce((sum, { stock }) => sum + (problem.costs[stock] ?? 0), 0)

/** What is left of a board in one length behind its pieces and their saw cuts, in units of weight. */
export const offcutOf = (problem: Problem, { stock, counts }: Bar): number =>
  Math.max(0, (problem.caps[stock] ?? 0) - problem.kerf - sizeOf(problem.weights, counts))

/** The longest offcut of a plan, in units of weight. */
export const longestOffcut = (problem: Problem, bars: readonly Bar[]): number =>
  bars.reduce((most, bar) => Math.max(most, offcutOf(problem, bar)), 0)
