import { dropEmptySheets } from './adaptPacking.ts'
import type { PlaceSearch } from './placeSearch.ts'
import { rateOffcuts } from './rateOffcuts.ts'
import { recreate } from './repackSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

/** Between two pauses: some milliseconds. */
const EFFORT_PER_STEP = 20_000
const LEAST_GAIN = 1e-9

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
    let isBetter = false
    const pause = search.effort + EFFORT_PER_STEP
    while (search.effort < pause) {
      search.effort++
      const next = recreate(model, search, current)
      if (next.missingArea > 0) continue
      const kept = dropEmptySheets(next)
      const nextRate = rateOffcuts(kept)
      const isCheaper = kept.sheets.length < current.sheets.length
      if (!isCheaper && nextRate < rate) continue
      isBetter ||= isCheaper || nextRate > rate + LEAST_GAIN
      current = kept
      rate = nextRate
    }
    yield isBetter ? current : undefined
  }
}
