import { type Column, createMaster, type Master, type MasterInput } from '../masterProgram.ts'
import { type DualCut, isCutOff, readCut, wholeValues } from './dualCut.ts'
import { type PackingSpace, rememberColumn, toColumn } from './packingSpace.ts'

/** What linear programming over all patterns came to. */
export type Relaxed =
  /** No pattern improves it further, or the goal was reached. */
  | {
      readonly kind: 'solved'
      readonly isCovered: boolean
      readonly values: readonly (readonly [Column, number])[]
      /** From the last duals; undefined when the goal was reached without pricing. */
      readonly cut: DualCut | undefined
    }
  /** The boards can't hold the pieces. The cut knows nothing of stocks that have no boards. */
  | { readonly kind: 'cut'; readonly cut: DualCut }
  /** Too many rounds. */
  | { readonly kind: 'open' }

export interface Relaxation extends MasterInput {
  /** Rounds that may still follow once everything is covered; 0 when only that is asked. */
  readonly patience: number
}

const MOST_ROUNDS = 400
/** Less than a millionth of a piece left uncovered is rounding. */
const NEARLY_NOTHING = 1e-6

/**
 * Column generation (Gilmore & Gomory 1961): the knapsack finds the patterns that the duals ask for.
 * It pauses once for each knapsack. A cut is built from whole values and its own knapsack, so it holds
 * whatever the duals were (Farley 1990).
 */
export function* generateColumns(
  space: PackingSpace,
  relaxation: Relaxation,
): Generator<undefined, Relaxed> {
  const master = createMaster(relaxation)
  for (const column of space.pool) {
    const clipped = clip(column, relaxation)
    if (clipped !== undefined) master.addColumn(clipped)
  }
  const largest = largestBoard(space, relaxation)
  let cut: DualCut | undefined
  let covered = 0
  for (let round = 0; round < MOST_ROUNDS; round++) {
    while (!master.solve()) yield undefined
    yield undefined
    const isCovered = master.uncovered() < NEARLY_NOTHING
    if (isCovered) covered++
    if (covered > relaxation.patience) {
      return { kind: 'solved', isCovered, values: master.values(), cut }
    }
    const duals = master.pieceDuals()
    const values = wholeValues(space, duals)
    space.knapsack.solve(values, relaxation.demand, largest)
    cut = readCut(space, relaxation.demand, values)
    if (isCutOff(cut, relaxation.boards)) return { kind: 'cut', cut }
    const added = addBest(space, relaxation, { master, duals })
    if (added === 0) return { kind: 'solved', isCovered, values: master.values(), cut }
  }
  return { kind: 'open' }
}

/** Longer ones need not be priced. */
const largestBoard = ({ caps }: PackingSpace, { boards }: Relaxation): number =>
  caps.reduce((most, cap, bin) => ((boards[bin] ?? 0) > 0 ? Math.max(most, cap) : most), 0)

/** Adds each board size's best pattern where it pays; says how many. */
const addBest = (
  space: PackingSpace,
  { boards, costs }: Relaxation,
  { master, duals }: { readonly master: Master; readonly duals: Float64Array },
): number => {
  const boardDuals = master.boardDuals()
  let added = 0
  for (let bin = 0; bin < space.caps.length; bin++) {
    if ((boards[bin] ?? 0) <= 0) continue
    const column = toColumn(bin, space.knapsack.trace(space.caps[bin] ?? 0))
    let gain = -(costs[bin] ?? 0) - (boardDuals[bin] ?? 0)
    column.kinds.forEach((kind, at) => {
      gain += (column.copies[at] ?? 0) * (duals[kind] ?? 0)
    })
    if (gain <= 1e-6) continue
    rememberColumn(space, column)
    master.addColumn(column)
    added++
  }
  return added
}

/** A pattern without the pieces that are not wanted; undefined when nothing is left of it. */
const clip = (column: Column, { demand, boards }: Relaxation): Column | undefined => {
  if ((boards[column.bin] ?? 0) <= 0) return undefined
  const fits = column.kinds.every((kind, at) => (column.copies[at] ?? 0) <= (demand[kind] ?? 0))
  if (fits) return column
  const kinds = column.kinds.filter((kind) => (demand[kind] ?? 0) > 0)
  if (kinds.length === 0) return undefined
  const copies = kinds.map((kind) =>
    Math.min(column.copies[column.kinds.indexOf(kind)] ?? 0, demand[kind] ?? 0),
  )
  return { bin: column.bin, kinds, copies }
}
