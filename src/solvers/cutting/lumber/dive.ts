import type { Column } from '../masterProgram.ts'
import { generateColumns } from './generateColumns.ts'
import type { PackingSpace } from './packingSpace.ts'
import { cutBoards, type FillTask, missingWeight, type PartialFill } from './partialFill.ts'
import { searchPatterns } from './searchPatterns.ts'

export interface DiveEffort {
  /** How often a second-best rounding may be tried on the way down. */
  readonly detours: number
  readonly mostPrograms: number
  /** Rounds of column generation after everything is covered. */
  readonly patience: number
  /** Steps of the search that takes over when few boards are left. */
  readonly endSteps: number
}

/** How much worse it is to leave a piece out than to use board for it. */
const MISSING = 20
/** With so few boards left, looking through the patterns is quicker than rounding. */
const FEW_BOARDS = 4

/**
 * Diving with limited detours (Sadykov et al. 2019): solve the linear programme, keep the whole part of
 * each pattern's use, round one fraction up, and go on with what is left. Gives the fill that leaves
 * least out.
 */
export function* dive(
  space: PackingSpace,
  task: FillTask,
  effort: DiveEffort,
): Generator<undefined, PartialFill> {
  let best: PartialFill = { boards: task.boards, demand: task.demand, bars: [] }
  let least = missingWeight(space, best)
  let programs = 0

  /** True when nothing is left out. */
  const offer = (fill: PartialFill): boolean => {
    const missing = missingWeight(space, fill)
    if (missing < least) {
      least = missing
      best = fill
    }
    return missing === 0
  }

  /** Whether the few boards that are left can be filled; undefined when that is not known. */
  function* searchEnd(fill: PartialFill): Generator<undefined, boolean | undefined> {
    if (fill.boards.reduce((sum, count) => sum + count, 0) > FEW_BOARDS) return undefined
    const end = yield* searchPatterns(space, fill, effort.endSteps)
    if (end.kind === 'filled') return offer(finish(fill, end.bars))
    return end.kind === 'impossible' ? false : undefined
  }

  function* descend(fill: PartialFill, detours: number): Generator<undefined, boolean> {
    if (offer(fill)) return true
    const end = yield* searchEnd(fill)
    if (end !== undefined) return end
    if (programs >= effort.mostPrograms) return false
    programs++
    const relaxed = yield* generateColumns(space, relaxationOf(space, fill, effort.patience))
    if (relaxed.kind !== 'solved' || !relaxed.isCovered) return false
    const { kept, fractions } = keepWhole(fill, relaxed.values)
    // All whole, but for pieces that a pattern had in vain: once more with what is left.
    if (fractions.length === 0) return yield* descend(kept, detours)
    // The largest fraction up; on a detour the second largest, and so on.
    for (const [choice, column] of fractions.slice(0, detours + 1).entries()) {
      if (yield* descend(cutBoards(kept, column, 1), detours - choice)) return true
    }
    return false
  }

  yield* descend(best, effort.detours)
  return best
}

const finish = (fill: PartialFill, bars: PartialFill['bars']): PartialFill => ({
  boards: fill.boards,
  demand: fill.demand.map(() => 0),
  bars: [...fill.bars, ...bars],
})

/** Cover everything with as little board as can be: that leaves the most room for rounding. */
const relaxationOf = (space: PackingSpace, { boards, demand }: FillTask, patience: number) => {
  const longest = Math.max(1, ...space.caps)
  return {
    demand,
    boards,
    costs: space.caps.map((cap) => cap / longest),
    penalties: space.weights.map((weight) => (MISSING * (weight + 1)) / longest),
    patience,
  }
}

/** The whole parts are cut; the columns with a fraction left follow, largest first. */
const keepWhole = (
  fill: PartialFill,
  values: readonly (readonly [Column, number])[],
): { readonly kept: PartialFill; readonly fractions: readonly Column[] } => {
  let kept = fill
  const fractions: (readonly [Column, number])[] = []
  for (const [column, value] of values) {
    const whole = Math.floor(value + 1e-6)
    if (whole > 0) kept = cutBoards(kept, column, whole)
    if (value - whole > 1e-6) fractions.push([column, value - whole])
  }
  return { kept, fractions: fractions.sort((a, b) => b[1] - a[1]).map(([column]) => column) }
}
