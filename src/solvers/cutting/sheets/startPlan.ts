import { fillSheets, type Missing, measureMissing } from './fillSheets.ts'
import { openSheet, type PackedSheet } from './packedSheet.ts'
import type { PlaceSearch } from './placeSearch.ts'
import type { PartClass, SheetModel, SheetType } from './sheetModel.ts'

/** Sheets that hold all parts but those that are missing. */
export interface Packing {
  readonly sheets: readonly PackedSheet[]
  readonly missing: Missing
  readonly missingArea: number
}

/** Between two pauses: some milliseconds. */
const EFFORT_PER_STEP = 30_000

/**
 * A first plan, sheet by sheet: each time that type is opened which takes the most part area for its
 * price, filled in the given order; once one sheet takes all that is left, the cheapest such. Some parts
 * stay missing where counted sheets run out. Pauses often.
 */
export function* startPlan(
  model: SheetModel,
  search: PlaceSearch,
  order: readonly PartClass[],
): Generator<undefined, Packing> {
  const missing: Missing = model.classes.map((part) => part.count)
  const sheets: PackedSheet[] = []
  const opened = new Map<SheetType, number>()
  let pause = search.effort + EFFORT_PER_STEP
  for (;;) {
    const before = measureMissing(model.classes, missing)
    if (before === 0) break
    const tries = model.types
      .filter((type) => (opened.get(type) ?? 0) < type.count)
      .flatMap((type) =>
        type.grids.map((grid) => {
          const own = [openSheet(type, grid)]
          const left = [...missing]
          fillSheets(search, own, left, order)
          return { type, sheet: own[0], left, after: measureMissing(model.classes, left) }
        }),
      )
      .filter(({ after }) => after < before)
      .sort((a, b) => rate(a, before) - rate(b, before))
    const done = tries.filter(({ after }) => after === 0)
    const cheapest = done.sort((a, b) => a.type.price - b.type.price)[0]
    const best = cheapest ?? tries[0]
    if (!best?.sheet) break
    sheets.push(best.sheet)
    opened.set(best.type, (opened.get(best.type) ?? 0) + 1)
    for (const [id, count] of best.left.entries()) missing[id] = count
    if (search.effort < pause) continue
    yield undefined
    pause = search.effort + EFFORT_PER_STEP
  }
  return { sheets, missing, missingArea: measureMissing(model.classes, missing) }
}

/** Money for the area placed; among free sheets the fullest. */
function rate(
  attempt: {
    readonly type: SheetType
    readonly after: number
    readonly sheet: PackedSheet | undefined
  },
  before: number,
): number {
  const placed = before - attempt.after
  if (attempt.type.price > 0) return attempt.type.price / placed
  return -placed / attempt.type.area
}
