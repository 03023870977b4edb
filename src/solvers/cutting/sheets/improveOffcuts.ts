import type { PlaceSearch } from './findPlace.ts'
import { rateOffcuts } from './rateOffcuts.ts'
import { recreate } from './repackSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

/** Between two pauses: some milliseconds. */
const EFFORT_PER_STEP = 50_000

/**
 * The same sheets packed so that what is left is of more use: ruin and recreate that keeps every plan
 * that is complete and no worse by `rateOffcuts`. Hands out better packings, at most one a pause.
 */
export function* improveOffcuts(
  model: SheetModel,
  search: PlaceSearch,
  start: Packing,
  mostEffort: number,
): Generator<Packing | undefined, void> {
  let current = start
  let rate = rateOffcuts(start)
  const until = search.effort + mostEffort
  while (search.effort < until) {
    const before = rate
    const pause = search.effort + EFFORT_PER_STEP
    while (search.effort < pause) {
      search.effort++
      const next = recreate(model, search, current)
      if (next.missingArea > 0) continue
      const nextRate = rateOffcuts(next)
      if (nextRate < rate) continue
      current = next
      rate = nextRate
    }
    yield rate > before + 1e-6 ? current : undefined
  }
}
