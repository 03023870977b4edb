import type { PackingSpace } from './packingSpace.ts'

/**
 * A rule for purchases: with whole values for pieces, the boards of any purchase that holds all pieces
 * are worth at least what the pieces are, each board being worth the most that fits it.
 */
export interface DualCut {
  /** By kind. */
  readonly values: readonly number[]
  /** By stock. */
  readonly worth: readonly number[]
  readonly need: number
}

/** A board's worth must stay within the knapsack's 32-bit table. */
const MOST_WORTH = 2 ** 30

/** Whole values in proportion to `duals`, as fine as the knapsack's table allows, or `finest` at most. */
export const wholeValues = (
  space: PackingSpace,
  duals: ArrayLike<number>,
  finest = 1e7,
): number[] => {
  const longest = Math.max(...space.caps)
  let densest = 0
  let dearest = 0
  for (let kind = 0; kind < duals.length; kind++) {
    const dual = duals[kind] ?? 0
    densest = Math.max(densest, dual / Math.max(1, space.weights[kind] ?? 1))
    dearest = Math.max(dearest, dual)
  }
  if (dearest <= 0) return Array.from(duals, () => 0)
  const factor = Math.min(MOST_WORTH / (densest * longest), finest / dearest)
  // A dual a hair below a whole number is meant to be that number.
  return Array.from(duals, (dual) => Math.floor(dual * factor + 1e-6))
}

/** The rule that whole values make; runs the knapsack. */
export const makeCut = (
  space: PackingSpace,
  demand: readonly number[],
  values: readonly number[],
): DualCut => {
  space.knapsack.solve(values, demand)
  return readCut(space, demand, values)
}

/** The rule that the values of the knapsack's last run make, which was limited by all of `demand`. */
export const readCut = (
  { caps, knapsack }: PackingSpace,
  demand: readonly number[],
  values: readonly number[],
): DualCut => ({
  values,
  worth: caps.map((cap) => knapsack.best[cap] ?? 0),
  need: values.reduce((sum, value, kind) => sum + value * (demand[kind] ?? 0), 0),
})

/** These boards can't hold all pieces. */
export const isCutOff = (cut: DualCut, boards: readonly number[]): boolean => {
  let have = 0
  for (let stock = 0; stock < boards.length; stock++) {
    const count = boards[stock] ?? 0
    if (count > 0) have += count * (cut.worth[stock] ?? 0)
  }
  return have < cut.need
}
