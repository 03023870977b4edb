import { seededRandom } from '../lumber/seededRandom.ts'
import { priceOf } from './adaptPacking.ts'
import { boundByArea, boundPrice, type PriceBound } from './boundPrice.ts'
import { buildLayouts } from './buildLayouts.ts'
import { checkSheetJob } from './checkSheetJob.ts'
import { createPlaceSearch } from './findPlace.ts'
import { findStart } from './findStart.ts'
import { improveOffcuts } from './improveOffcuts.ts'
import { improvePrice } from './improvePrice.ts'
import { SAME_MONEY } from './listPurchases.ts'
import { refuseTooFew } from './refuseTooFew.ts'
import type { SheetAnswer, SheetJob, SheetResult } from './sheetJob.ts'
import { buildSheetModel, type SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

const SEED = 1
/** Places that a search overlooks on purpose. */
const BLINK = 0.01
/** Some two seconds on one core: about 12 000 nodes of trees are looked at in a millisecond. */
const PRICE_EFFORT = 24_000_000
const OFFCUT_EFFORT = 3_000_000

/**
 * Cuts parts from sheets for the least price known, with cuts from edge to edge; of equal prices the one
 * that leaves the largest usable offcut. Each `next()` takes some milliseconds; a result is handed out
 * when it is better than the one before, else undefined. The bound holds for every plan, whatever its
 * stages. Stages are counted within each piece that is carried: carry cuts come before them, and one
 * that runs the same way as the first stage belongs to it. The same job always gives the same results.
 */
export function* solveSheets(job: SheetJob): Generator<SheetResult | undefined, SheetResult> {
  const refusal = checkSheetJob(job)
  if (refusal) return refusal
  const model = buildSheetModel(job, 'plan')
  const boundModel = model.isExact ? model : buildSheetModel(job, 'bound')
  const search = createPlaceSearch(model.stages, seededRandom(SEED))
  let bound = boundByArea(boundModel)
  const show = (packing: Packing) => buildAnswer(job, model, packing, bound)

  const starts = findStart(model, search)
  let step = starts.next()
  for (; !step.done; step = starts.next()) yield step.value && show(step.value)
  let best = step.value
  bound = yield* boundPrice(boundModel)
  if (best.missingArea > 0) return refuseTooFew(job, model, best, bound.isImpossible)
  yield show(best)

  search.blink = BLINK
  for (const better of improvePrice(model, search, bound.cuts, best, PRICE_EFFORT)) {
    best = better ?? best
    yield better && show(better)
  }
  for (const better of improveOffcuts(model, search, best, OFFCUT_EFFORT)) {
    best = better ?? best
    yield better && show(better)
  }
  return show(best)
}

function buildAnswer(
  job: SheetJob,
  model: SheetModel,
  packing: Packing,
  bound: PriceBound,
): SheetAnswer {
  const price = priceOf(model, packing)
  const proven = price - bound.price <= SAME_MONEY * Math.max(1, price)
  return {
    kind: 'plan',
    layouts: buildLayouts(job, packing.sheets),
    price,
    bound: proven ? price : bound.price,
    proven,
    boundBy: bound.by,
    sheets: packing.sheets.length,
  }
}
