import { type CoverCut, listCoverCuts, SAFE } from './coverCuts.ts'
import type { SheetModel, SheetType } from './sheetModel.ts'
import { roundUpPrice } from './wholeUnits.ts'

/** A price that no plan can be below. */
export interface PriceBound {
  readonly price: number
  /** How it was found, for a person. */
  readonly by: string
  readonly cuts: readonly CoverCut[]
  /** The rules exclude every purchase: the counted sheets do not suffice. */
  readonly isImpossible: boolean
}

/**
 * The cheapest whole numbers of sheets that obey all rules of `listCoverCuts`: every plan obeys them, so
 * none is cheaper. With very many combinations the rules are taken one by one and sheets in fractions,
 * which is lower but still a bound. Pauses often.
 */
export function* boundPrice(model: SheetModel): Generator<undefined, PriceBound> {
  return boundByCuts(model, yield* listCoverCuts(model))
}

/** The bound that these rules give. */
export function boundByCuts(model: SheetModel, cuts: readonly CoverCut[]): PriceBound {
  if (cuts.length === 0) return { price: 0, by: 'area', cuts, isImpossible: false }
  const whole = findCheapestCover(model.types, cuts, MOST_NODES)
  const isImpossible = whole === Number.POSITIVE_INFINITY
  const byArea = boundByArea(model)
  const prices = model.types.map((type) => type.price)
  const price =
    whole ?? Math.max(roundUpPrice(coverInFractions(model.types, cuts), prices), byArea.price)
  const by = byArea.price >= price * (1 - 1e-12) ? 'area' : nameStrictest(model, cuts)
  return { price, by, cuts, isImpossible }
}

/** The cheapest sheets that have the parts' area; quick, and never above the full bound. */
export function boundByArea(model: SheetModel): PriceBound {
  const area = model.classes.reduce((sum, part) => sum + part.area * part.count, 0)
  if (area === 0) return { price: 0, by: 'area', cuts: [], isImpossible: false }
  const cut = { holds: model.types.map((type) => (type.area / area) * SAFE), name: 'area' }
  const whole = findCheapestCover(model.types, [cut], FEW_NODES)
  const isImpossible = whole === Number.POSITIVE_INFINITY
  return {
    price: whole ?? coverInFractions(model.types, [cut]),
    by: 'area',
    cuts: [cut],
    isImpossible,
  }
}

/** Combinations tried before sheets are taken in fractions. */
const MOST_NODES = 6000
const FEW_NODES = 3000

/** Undefined when there are too many combinations, infinite when none obeys the rules. */
function findCheapestCover(
  types: readonly SheetType[],
  cuts: readonly CoverCut[],
  mostNodes: number,
): number | undefined {
  // Free sheets first: all of them help and cost nothing; then the best value by area.
  const order = [...types].sort((a, b) => a.price / a.area - b.price / b.area)
  // The cheapest share of each rule that the types from here on can give.
  const rates = order.map((_, from) =>
    cuts.map((cut) =>
      order
        .slice(from)
        .reduce(
          (least, type) => Math.min(least, type.price / (cut.holds[type.stock] ?? 0)),
          Infinity,
        ),
    ),
  )
  let best = Number.POSITIVE_INFINITY
  let nodes = 0
  const search = (at: number, cost: number, needs: readonly number[]): void => {
    if (needs.every((need) => need <= 0)) {
      best = Math.min(best, cost)
      return
    }
    const type = order[at]
    if (!type || nodes++ > mostNodes) return
    let least = cost
    for (const [index, need] of needs.entries()) {
      if (need > 0) least = Math.max(least, cost + need * (rates[at]?.[index] ?? 0))
    }
    if (least >= best) return
    const most = mostNeeded(type, cuts, needs)
    for (let count = most; count >= (type.price === 0 ? most : 0); count--) {
      const rest = needs.map((need, index) => need - count * (cuts[index]?.holds[type.stock] ?? 0))
      search(at + 1, cost + count * type.price, rest)
    }
  }
  search(
    0,
    0,
    cuts.map(() => 1),
  )
  return nodes > mostNodes ? undefined : best
}

/** As many as any rule still asks for, or all that there are. */
function mostNeeded(type: SheetType, cuts: readonly CoverCut[], needs: readonly number[]): number {
  let most = 0
  for (const [index, need] of needs.entries()) {
    const holds = cuts[index]?.holds[type.stock] ?? 0
    if (need > 0 && holds > 0) most = Math.max(most, Math.ceil(need / holds))
  }
  return Math.min(most, type.count)
}

/** The dearest single rule, sheets in fractions. */
function coverInFractions(types: readonly SheetType[], cuts: readonly CoverCut[]): number {
  let price = 0
  for (const cut of cuts) {
    const rateOf = (type: SheetType) => type.price / (cut.holds[type.stock] ?? 0)
    const order = types
      .filter((type) => (cut.holds[type.stock] ?? 0) > 0)
      .sort((a, b) => rateOf(a) - rateOf(b))
    let need = 1
    let cost = 0
    for (const type of order) {
      const count = Math.min(type.count, need / (cut.holds[type.stock] ?? 1))
      cost += count * type.price
      need -= count * (cut.holds[type.stock] ?? 0)
      if (need <= 0) break
    }
    price = Math.max(price, cost)
  }
  return price
}

/** The rule that alone asks for the highest price. */
function nameStrictest(model: SheetModel, cuts: readonly CoverCut[]): string {
  let name = 'area'
  let highest = 0
  for (const cut of cuts) {
    const price = coverInFractions(model.types, [cut])
    if (price > highest) [highest, name] = [price, cut.name]
  }
  return name
}
