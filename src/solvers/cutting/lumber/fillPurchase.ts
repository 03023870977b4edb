import { type DiveEffort, dive } from './dive.ts'
import { type DualCut, isCutOff, makeCut } from './dualCut.ts'
import { generateColumns } from './generateColumns.ts'
import type { PackingSpace } from './packingSpace.ts'
import { type FillTask, missingWeight } from './partialFill.ts'
import { type Bar, sizeOf } from './problem.ts'
import { randomFill } from './randomFill.ts'
import { type RepairEffort, repairFill } from './repairFill.ts'
import { searchPatterns } from './searchPatterns.ts'

export type FillAnswer =
  | { readonly kind: 'filled'; readonly bars: readonly Bar[] }
  | { readonly kind: 'cut'; readonly cut: DualCut }
  /** All patterns were looked through in vain; there is no cut that says so. */
  | { readonly kind: 'impossible' }
  | { readonly kind: 'open' }

/** How hard to try, in counts of what is tried. */
export interface FillEffort {
  readonly randomFills: number
  readonly dive: DiveEffort
  readonly repair: RepairEffort
  readonly searchSteps: number
}

/** Where bounds are proved and where plans are made: the same space where units are exact. */
export interface Spaces {
  readonly low: PackingSpace
  readonly fit: PackingSpace
}

/** Tries to get all pieces out of these boards, or to prove that they don't fit. */
export function* fillPurchase(
  { low, fit }: Spaces,
  task: FillTask,
  effort: FillEffort,
  random: () => number,
): Generator<undefined, FillAnswer> {
  if (sizeOf(low.caps, task.boards) < sizeOf(low.weights, task.demand)) {
    return { kind: 'cut', cut: makeCut(low, task.demand, low.weights) }
  }
  // 1. Luck, where there is some room.
  for (let attempt = 0; attempt < effort.randomFills; attempt++) {
    const bars = yield* randomFill(fit, task, random)
    if (bars !== undefined) return { kind: 'filled', bars }
  }
  // 2. The linear programme, which may prove that it can't be.
  const cut = yield* findCut(low, task)
  if (cut !== undefined) return { kind: 'cut', cut }
  // 3. Rounding it, and mending what came out.
  const dived = yield* dive(fit, task, effort.dive)
  const mended = yield* repairFill(fit, dived, effort.repair, random)
  if (missingWeight(fit, mended) === 0) return { kind: 'filled', bars: mended.bars }
  // 4. Looking through everything.
  if (effort.searchSteps === 0) return { kind: 'open' }
  const searched = yield* searchPatterns(fit, task, effort.searchSteps)
  if (searched.kind === 'filled') return searched
  return { kind: searched.kind === 'impossible' && low === fit ? 'impossible' : 'open' }
}

/** A cut that forbids these boards, if linear programming finds one. */
function* findCut(
  space: PackingSpace,
  { boards, demand }: FillTask,
): Generator<undefined, DualCut | undefined> {
  const longest = Math.max(1, ...space.caps)
  const relaxed = yield* generateColumns(space, {
    demand,
    boards,
    costs: space.caps.map(() => 0),
    penalties: space.weights.map((weight) => (weight + 1) / longest),
    patience: 0,
  })
  if (relaxed.kind !== 'cut') return undefined
  // Again over all boards, because only those at hand were priced.
  const cut = makeCut(space, demand, relaxed.cut.values)
  return isCutOff(cut, boards) ? cut : undefined
}
