import { priceOf } from './adaptPacking.ts'
import type { Missing } from './fillSheets.ts'
import { generatePatterns, type PatternSource, type UsedPattern } from './generatePatterns.ts'
import { openSheet, type PackedSheet, swapCell } from './packedSheet.ts'
import { buildPartModel } from './partModel.ts'
import { orderParts, PLAIN_ORDERS } from './partOrders.ts'
import type { PlaceSearch } from './placeSearch.ts'
import { pruneSheet } from './ruinSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import { listParts } from './sliceTree.ts'
import { type Packing, startPlan } from './startPlan.ts'

/** With so few sheets left, sheet by sheet is better than patterns. */
const FEW_SHEETS = 3

/**
 * A packing from patterns in fractions by diving (Sadykov et al. 2019): as many sheets as the whole
 * number of times, or one of the pattern with the largest fraction; then the linear programme again for
 * the parts that are left, and the last few sheets one by one.
 */
export function* roundPatterns(
  model: SheetModel,
  search: PlaceSearch,
  source: PatternSource,
  first: readonly UsedPattern[],
): Generator<undefined, Packing> {
  const missing: Missing = model.classes.map((part) => part.count)
  const sheets: PackedSheet[] = []
  let patterns = first
  for (;;) {
    const times = patterns.reduce((sum, pattern) => sum + pattern.times, 0)
    if (times <= FEW_SHEETS) break
    const before = sheets.length
    for (const pattern of roundTimes(patterns)) {
      const sheet = cutPattern(model, pattern, missing)
      if (sheet) sheets.push(sheet)
    }
    if (sheets.length === before) break
    const rest = buildPartModel(model, missing, sheets)
    if (rest.parts === 0) break
    patterns = (yield* generatePatterns(rest, search, source)).patterns
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

/** Each pattern as often as its whole number of times; where all are below 1, the most used one once. */
function roundTimes(patterns: readonly UsedPattern[]): readonly UsedPattern[] {
  const whole = patterns.flatMap((pattern) =>
    new Array<UsedPattern>(Math.floor(pattern.times + 1e-6)).fill(pattern),
  )
  if (whole.length > 0) return whole
  const [most] = [...patterns].sort((a, b) => b.times - a.times)
  return most ? [most] : []
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
