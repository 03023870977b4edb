import { seededRandom } from '../seededRandom.ts'
import { priceOf } from './adaptPacking.ts'
import { boundByArea, boundByCuts, boundPrice, type PriceBound } from './boundPrice.ts'
import { buildLayouts } from './buildLayouts.ts'
import { checkSheetJob } from './checkSheetJob.ts'
import { findStart } from './findStart.ts'
import { createPatternSource, generatePatterns } from './generatePatterns.ts'
import { improveOffcuts } from './improveOffcuts.ts'
import { improvePrice } from './improvePrice.ts'
import { improveSubsets } from './improveSubsets.ts'
import { SAME_MONEY } from './listPurchases.ts'
import { createPlaceSearch, type PlaceSearch } from './placeSearch.ts'
import { refuseTooFew } from './refuseTooFew.ts'
import { roundPatterns } from './roundPatterns.ts'
import type { SheetAnswer, SheetJob, SheetResult } from './sheetJob.ts'
import { buildSheetModel, type SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

const SEED = 1
/** Places that a search overlooks on purpose. */
const BLINK = 0.01
/** Some two seconds on one core: about 12 000 nodes of trees are looked at in a millisecond. */
const PRICE_EFFORT = 28_000_000
const OFFCUT_EFFORT = 3_000_000
/** For plans of many sheets, once all sheets together do not get any cheaper. */
const LAST_EFFORT = 6_000_000
const MANY_SHEETS = 15
const MANY_COPIES = 8

interface Progress {
  readonly job: SheetJob
  readonly model: SheetModel
  /** The same job, rounded the other way. */
  readonly boundModel: SheetModel
  readonly search: PlaceSearch
  best: Packing
  bound: PriceBound
}

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
  const progress: Progress = {
    job,
    model,
    boundModel,
    search: createPlaceSearch(model.stages, seededRandom(SEED)),
    best: { sheets: [], missing: [], missingArea: 0 },
    bound: boundByArea(boundModel),
  }
  const { search } = progress
  progress.best = yield* tell(progress, findStart(model, search))
  progress.bound = yield* boundPrice(boundModel)
  if (progress.best.missingArea > 0) {
    return refuseTooFew(job, model, progress.best, progress.bound.isImpossible)
  }
  yield buildAnswer(progress)
  search.blink = BLINK
  yield* improve(progress)
  yield* tell(progress, improveOffcuts(model, search, progress.best, OFFCUT_EFFORT))
  return buildAnswer(progress)
}

/** The long part of the work: cheaper plans until none is left or the effort is spent. */
function* improve(progress: Progress): Generator<SheetAnswer | undefined, void> {
  const { model, search } = progress
  const hasManySheets = progress.best.sheets.length >= MANY_SHEETS
  const hasManyCopies = hasManySheets && model.parts >= MANY_COPIES * model.classes.length
  if (hasManyCopies || model.stages === 2) yield* tryPatterns(progress)
  if (!hasManyCopies) {
    const { best, bound } = progress
    yield* tell(progress, improvePrice(model, search, bound.cuts, best, PRICE_EFFORT))
  }
  if (hasManySheets && !buildAnswer(progress).proven) {
    const effort = hasManyCopies ? PRICE_EFFORT : LAST_EFFORT
    yield* tell(progress, improveSubsets(model, search, progress.best, effort))
  }
}

/** A plan from linear programming over two-stage patterns, and its bound where all plans are such. */
function* tryPatterns(progress: Progress): Generator<SheetAnswer | undefined, void> {
  const { model, boundModel, search, bound } = progress
  const source = createPatternSource(model)
  if (!source) return
  const plan = yield* generatePatterns(model, search, source)
  if (plan.cut && model.stages === 2 && model.isExact) {
    progress.bound = boundByCuts(boundModel, [...bound.cuts, plan.cut])
  }
  const rounded = yield* roundPatterns(model, search, source, plan.patterns)
  const isCheaper = priceOf(model, rounded) < priceOf(model, progress.best)
  if (rounded.missingArea === 0 && isCheaper) progress.best = rounded
  yield buildAnswer(progress)
}

/** Passes on better packings as answers. */
function* tell<T>(
  progress: Progress,
  packings: Generator<Packing | undefined, T>,
): Generator<SheetAnswer | undefined, T> {
  for (;;) {
    const step = packings.next()
    if (step.done) return step.value
    if (step.value) progress.best = step.value
    yield step.value && buildAnswer(progress)
  }
}

function buildAnswer({ job, model, best, bound }: Progress): SheetAnswer {
  const price = priceOf(model, best)
  const proven = price - bound.price <= SAME_MONEY * Math.max(1, price)
  return {
    kind: 'plan',
    layouts: buildLayouts(job, best.sheets),
    price,
    bound: proven ? price : bound.price,
    proven,
    boundBy: bound.by,
    sheets: best.sheets.length,
  }
}
