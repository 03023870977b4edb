import { adaptPacking, dropEmptySheets, priceOf } from './adaptPacking.ts'
import { orderParts, PLAIN_ORDERS } from './partOrders.ts'
import type { PlaceSearch } from './placeSearch.ts'
import { repackSheets, startRepacking } from './repackSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import { type Packing, startPlan } from './startPlan.ts'

/** After so much effort no further order is tried. */
const MOST_EFFORT = 4_000_000
/** Spent on counted sheets that don't seem to suffice, before they are called too few. */
const LAST_EFFORT = 12_000_000
const EFFORT_PER_STEP = 50_000

/**
 * First plans, one for each order of the parts; hands out each that is complete and cheaper. Returns the
 * last of these, or where counted sheets seem too few the packing with the least area missing.
 */
export function* findStart(
  model: SheetModel,
  search: PlaceSearch,
): Generator<Packing | undefined, Packing> {
  const until = search.effort + MOST_EFFORT
  let best: Packing | undefined
  for (let order = 0; order < PLAIN_ORDERS && (!best || search.effort < until); order++) {
    const plan = yield* startPlan(model, search, orderParts(model.classes, order))
    if (best && !isBetter(model, plan, best)) continue
    best = plan
    yield plan.missingArea === 0 ? plan : undefined
  }
  if (!best) throw new Error('no order of parts')
  return best.missingArea > 0 ? yield* squeezeIn(model, search, best) : best
}

/** Opens all counted sheets that are left and searches for a way to place what is missing. */
function* squeezeIn(
  model: SheetModel,
  search: PlaceSearch,
  packing: Packing,
): Generator<Packing | undefined, Packing> {
  const counts = model.types.map((type) => {
    const used = packing.sheets.filter((sheet) => sheet.type.stock === type.stock).length
    return Number.isFinite(type.count) ? Math.min(type.count, model.parts) : used
  })
  const repacking = startRepacking(adaptPacking(model, packing, counts))
  const until = search.effort + LAST_EFFORT
  while (repacking.best.missingArea > 0 && search.effort < until) {
    repackSheets(model, search, repacking, EFFORT_PER_STEP)
    yield undefined
  }
  const best = dropEmptySheets(repacking.best)
  if (best.missingArea === 0) yield best
  return best
}

function isBetter(model: SheetModel, a: Packing, b: Packing): boolean {
  if (a.missingArea !== b.missingArea) return a.missingArea < b.missingArea
  return priceOf(model, a) < priceOf(model, b)
}
