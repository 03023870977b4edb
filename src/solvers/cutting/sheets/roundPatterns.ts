import { priceOf } from './adaptPacking.ts'
import type { Missing } from './fillSheets.ts'
import type { UsedPattern } from './generatePatterns.ts'
import { openSheet, type PackedSheet, swapCell } from './packedSheet.ts'
import { buildPartModel } from './partModel.ts'
import { orderParts, PLAIN_ORDERS } from './partOrders.ts'
import type { PlaceSearch } from './placeSearch.ts'
import { pruneSheet } from './ruinSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import { listParts } from './sliceTree.ts'
import { type Packing, startPlan } from './startPlan.ts'

/**
 * A packing from patterns in fractions: as many sheets as the whole number of times, and the rest sheet
 * by sheet.
 */
export function* roundPatterns(
  model: SheetModel,
  search: PlaceSearch,
  patterns: readonly UsedPattern[],
): Generator<undefined, Packing> {
  const missing: Missing = model.classes.map((part) => part.count)
  const sheets: PackedSheet[] = []
  for (const pattern of patterns) {
    for (let time = 1; time <= pattern.times + 1e-6; time++) {
      const sheet = cutPattern(model, pattern, missing)
      if (sheet) sheets.push(sheet)
    }
  }
  const rest = buildPartModel(model, missing, sheets)
  let best: Packing | undefined
  for (let order = 0; order < PLAIN_ORDERS; order++) {
    const plan = yield* startPlan(rest, search, orderParts(rest.classes, order))
    const isBetter = best && priceOf(model, plan) >= priceOf(model, best)
    if (!isBetter && plan.missingArea === 0) best = plan
  }
  if (!best) return { sheets, missing, missingArea: Number.POSITIVE_INFINITY }
  return { ...best, sheets: [...sheets, ...best.sheets.map((sheet) => ownType(model, sheet))] }
}

/** A sheet cut by the pattern, without the parts that are not wanted any more. */
function cutPattern(
  model: SheetModel,
  { stock, cell }: UsedPattern,
  missing: Missing,
): PackedSheet | undefined {
  const type = model.types[stock]
  const [grid] = type?.grids ?? []
  if (!type || !grid || !cell.root) return undefined
  const isSpare = listParts(cell.root).map((part) => {
    const left = missing[part.id] ?? 0
    missing[part.id] = Math.max(0, left - 1)
    return left <= 0
  })
  const spare: Missing = model.classes.map(() => 0)
  const sheet = pruneSheet(
    swapCell(openSheet(type, grid), 0, cell),
    spare,
    (leaf) => isSpare[leaf] ?? false,
  )
  return sheet.leaves > 0 ? sheet : undefined
}

/** The sheet with the whole model's own type, whose count is that of all. */
function ownType(model: SheetModel, sheet: PackedSheet): PackedSheet {
  return { ...sheet, type: model.types[sheet.type.stock] ?? sheet.type }
}
