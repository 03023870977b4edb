import { adaptPacking, dropEmptySheets, priceOf } from './adaptPacking.ts'
import type { CoverCut } from './coverCuts.ts'
import { listPurchases, type Purchase } from './listPurchases.ts'
import type { PlaceSearch } from './placeSearch.ts'
import { type Repacking, repackSheets, startRepacking } from './repackSheets.ts'
import type { SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

/** Purchases that are tried at a time. */
const MOST_ATTEMPTS = 6
/** Between two pauses: some milliseconds. */
const EFFORT_PER_STEP = 50_000

/**
 * Cheaper and cheaper packings: for each purchase below the best price that no rule excludes, a search
 * on just these sheets for a way to place all parts. The purchase with the least area missing gets most
 * of the effort. Hands out each cheaper packing, undefined while it works, and ends when no purchase is
 * left or the effort is spent.
 */
export function* improvePrice(
  model: SheetModel,
  search: PlaceSearch,
  cuts: readonly CoverCut[],
  start: Packing,
  mostEffort: number,
): Generator<Packing | undefined, void> {
  const attempts = new Map<string, Repacking>()
  const until = search.effort + mostEffort
  let best = start
  while (search.effort < until) {
    const purchases = listPurchases(model, cuts, priceOf(model, best)).slice(0, MOST_ATTEMPTS)
    if (purchases.length === 0) return
    const found = yield* tryPurchases(purchases)
    if (!found) return
    best = dropEmptySheets(found)
    yield best
  }

  function* tryPurchases(
    purchases: readonly Purchase[],
  ): Generator<undefined, Packing | undefined> {
    const tries = purchases.map((purchase) => {
      const key = purchase.counts.join(' ')
      const old = attempts.get(key) ?? startRepacking(adaptPacking(model, best, purchase.counts))
      attempts.set(key, old)
      return old
    })
    for (let turn = 0; search.effort < until; turn++) {
      const attempt = pickAttempt(tries, turn)
      repackSheets(model, search, attempt, EFFORT_PER_STEP)
      if (attempt.best.missingArea === 0) return attempt.best
      yield undefined
    }
    return undefined
  }
}

/** Every third turn the one least worked on, else the one that comes nearest. */
function pickAttempt(tries: readonly Repacking[], turn: number): Repacking {
  const [first] = tries
  if (!first) throw new Error('no purchase to try')
  const isWorse = (a: Repacking, b: Repacking) =>
    turn % 3 === 0 ? a.effort > b.effort : a.best.missingArea > b.best.missingArea
  return tries.reduce((chosen, each) => (isWorse(chosen, each) ? each : chosen), first)
}
