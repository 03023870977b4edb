import { adaptPacking, dropEmptySheets, priceOf } from './adaptPacking.ts'
import { listPurchases } from './listPurchases.ts'
import type { PackedSheet } from './packedSheet.ts'
import { buildPartModel, countParts } from './partModel.ts'
import type { PlaceSearch } from './placeSearch.ts'
import { repackSheets, startRepacking } from './repackSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

const FEWEST_SHEETS = 3
const MOST_SHEETS = 12
/** Given to one purchase for one choice of sheets. */
const EFFORT_PER_TRY = 150_000
const EFFORT_PER_STEP = 50_000
/** A purchase that must be fuller than this is not tried. */
const MOST_FILL = 0.99

/**
 * For plans of many sheets: takes a few sheets at a time, drawn by lot and the emptier ones more often,
 * and searches for a cheaper purchase that takes their parts. Hands out each cheaper packing.
 */
export function* improveSubsets(
  model: SheetModel,
  search: PlaceSearch,
  start: Packing,
  mostEffort: number,
): Generator<Packing | undefined, void> {
  let best = start
  const until = search.effort + mostEffort
  while (search.effort < until) {
    search.effort += 1000
    const [chosen, kept] = drawSheets(best, search.random)
    const better = yield* repackChosen(model, search, chosen, kept)
    if (!better) continue
    best = { ...best, sheets: [...kept, ...better] }
    yield best
  }
}

function* repackChosen(
  model: SheetModel,
  search: PlaceSearch,
  chosen: readonly PackedSheet[],
  kept: readonly PackedSheet[],
): Generator<undefined, readonly PackedSheet[] | undefined> {
  const missing = countParts(model, chosen)
  const own = buildPartModel(model, missing, kept)
  const packing: Packing = { sheets: chosen, missing: missing.map(() => 0), missingArea: 0 }
  const area = chosen.reduce((sum, sheet) => sum + sheet.usedArea, 0)
  const cut = { holds: model.types.map((type) => type.area / area), name: 'area' }
  const purchases = listPurchases(own, [cut], priceOf(model, packing))
    .filter(({ fill }) => fill < MOST_FILL)
    .slice(0, 4)
  const purchase = purchases[Math.floor(search.random() * purchases.length)]
  if (!purchase) return undefined
  const repacking = startRepacking(adaptPacking(own, packing, purchase.counts))
  const until = search.effort + EFFORT_PER_TRY
  while (repacking.best.missingArea > 0 && search.effort < until) {
    repackSheets(own, search, repacking, EFFORT_PER_STEP)
    yield undefined
  }
  if (repacking.best.missingArea > 0) return undefined
  return dropEmptySheets(repacking.best).sheets.map((sheet) => ({
    ...sheet,
    type: model.types[sheet.type.stock] ?? sheet.type,
  }))
}

/** Some sheets, and all others. */
function drawSheets(
  packing: Packing,
  random: () => number,
): readonly [readonly PackedSheet[], readonly PackedSheet[]] {
  const most = Math.min(MOST_SHEETS, packing.sheets.length)
  const count = Math.min(most, FEWEST_SHEETS + Math.floor(random() * (most - FEWEST_SHEETS + 1)))
  const keyed = packing.sheets.map((sheet) => {
    const emptiness = 1 - sheet.usedArea / sheet.type.area
    return { sheet, key: random() ** (1 / (0.05 + emptiness)) }
  })
  const order = keyed.sort((a, b) => b.key - a.key).map(({ sheet }) => sheet)
  return [order.slice(0, count), order.slice(count)]
}
