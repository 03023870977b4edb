import { type Missing, measureMissing } from './fillSheets.ts'
import { openSheet, type PackedSheet } from './packedSheet.ts'
import { pruneSheet } from './ruinSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

/** A packing moved to another set of sheets: the fullest stay, the others are emptied, new ones are empty. */
export function adaptPacking(
  model: SheetModel,
  packing: Packing,
  counts: readonly number[],
): Packing {
  const sheets: PackedSheet[] = []
  const missing: Missing = [...packing.missing]
  for (const type of model.types) {
    const old = packing.sheets
      .filter((sheet) => sheet.type.stock === type.stock)
      .sort((a, b) => b.usedArea - a.usedArea)
    const count = counts[type.stock] ?? 0
    sheets.push(...old.slice(0, count))
    for (const sheet of old.slice(count)) pruneSheet(sheet, missing, () => true)
    const [grid] = type.grids
    for (let added = old.length; added < count && grid; added++) sheets.push(openSheet(type, grid))
  }
  return { sheets, missing, missingArea: measureMissing(model.classes, missing) }
}

/** The packing without sheets from which nothing is cut. */
export function dropEmptySheets(packing: Packing): Packing {
  return { ...packing, sheets: packing.sheets.filter((sheet) => sheet.leaves > 0) }
}

/** What the sheets cost, summed by type so that equal purchases cost the same to the last bit. */
export function priceOf(model: SheetModel, packing: Packing): number {
  let price = 0
  for (const type of model.types) {
    const count = packing.sheets.filter((sheet) => sheet.type.stock === type.stock).length
    price += count * type.price
  }
  return price
}
