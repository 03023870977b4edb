import { type DiveEffort, dive } from './dive.ts'
import type { PackingSpace } from './packingSpace.ts'
import { missingWeight, type PartialFill, releaseBars } from './partialFill.ts'

export interface RepairEffort {
  readonly attempts: number
  readonly dive: DiveEffort
}

const FEWEST_RELEASED = 3
const MOST_RELEASED = 10

/**
 * Large neighbourhood search (Shaw 1998): takes some boards back by chance and places their pieces anew
 * together with what had no place; what is no worse is kept.
 */
export function* repairFill(
  space: PackingSpace,
  start: PartialFill,
  effort: RepairEffort,
  random: () => number,
): Generator<undefined, PartialFill> {
  let best = start
  let least = missingWeight(space, best)
  for (let attempt = 0; attempt < effort.attempts && least > 0; attempt++) {
    const range = MOST_RELEASED - FEWEST_RELEASED + 1
    const count = FEWEST_RELEASED + Math.floor(random() * range)
    const opened = releaseBars(best, pickSome(best.bars.length, count, random))
    const again = yield* dive(space, opened, effort.dive)
    const missing = missingWeight(space, again)
    if (missing > least) continue
    least = missing
    best = { ...again, bars: [...opened.bars, ...again.bars] }
  }
  return best
}

const pickSome = (all: number, count: number, random: () => number): Set<number> => {
  const picked = new Set<number>()
  while (picked.size < Math.min(all, count)) picked.add(Math.floor(random() * all))
  return picked
}
