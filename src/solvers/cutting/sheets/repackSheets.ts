import { fillSheets, measureMissing } from './fillSheets.ts'
import { shuffleParts } from './partOrders.ts'
import type { PlaceSearch } from './placeSearch.ts'
import { ruinSheets } from './ruinSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

/** A search on a fixed set of sheets, and where it stands. */
export interface Repacking {
  current: Packing
  best: Packing
  /** Effort spent on it in all. */
  effort: number
  /** Effort into the present cycle of cooling, and how long it is. */
  cycleEffort: number
  cycleLength: number
}

/** Area that a step may lose at a cycle's start, in mean parts. */
const FIRST_TOLERANCE = 0.15
const FIRST_CYCLE = 2_000_000
const CYCLE_GROWTH = 2
/** What a step takes besides looking for places, in nodes. */
const OVERHEAD = 100

export function startRepacking(packing: Packing): Repacking {
  return { current: packing, best: packing, effort: 0, cycleEffort: 0, cycleLength: FIRST_CYCLE }
}

/**
 * Ruin and recreate (Schrimpf et al. 2000; for sheets Gardeyn & Wauters 2022) until nothing is missing
 * or the effort is spent: takes some parts out, puts back what fits in an order drawn by lot, and keeps
 * the result unless much more is missing than before. What counts as much falls to nothing in cycles,
 * each longer than the last and begun from the best so far.
 */
export function repackSheets(
  model: SheetModel,
  search: PlaceSearch,
  repacking: Repacking,
  effort: number,
): void {
  const until = search.effort + effort
  while (repacking.best.missingArea > 0 && search.effort < until) {
    const from = search.effort
    const heat = 1 - repacking.cycleEffort / repacking.cycleLength
    repackOnce(model, search, repacking, Math.max(0, heat) * FIRST_TOLERANCE * model.meanArea)
    const spent = search.effort - from + 1
    repacking.effort += spent
    repacking.cycleEffort += spent
    if (repacking.cycleEffort < repacking.cycleLength) continue
    repacking.cycleEffort = 0
    repacking.cycleLength *= CYCLE_GROWTH
    repacking.current = repacking.best
  }
}

function repackOnce(
  model: SheetModel,
  search: PlaceSearch,
  repacking: Repacking,
  tolerance: number,
): void {
  const { current } = repacking
  const next = recreate(model, search, current)
  // An allowance drawn by lot, most often small: the same as a chance that falls with the loss.
  const allowance = -tolerance * Math.log(1 - search.random())
  if (next.missingArea > current.missingArea + allowance) return
  repacking.current = next
  if (next.missingArea < repacking.best.missingArea) repacking.best = next
}

/** The packing after parts were taken out and put back. */
export function recreate(model: SheetModel, search: PlaceSearch, packing: Packing): Packing {
  search.effort += OVERHEAD
  const sheets = [...packing.sheets]
  const missing = [...packing.missing]
  ruinSheets(sheets, missing, search.random)
  const waiting = model.classes.filter((part) => (missing[part.id] ?? 0) > 0)
  fillSheets(search, sheets, missing, shuffleParts(waiting, search.random))
  return { sheets, missing, missingArea: measureMissing(model.classes, missing) }
}
