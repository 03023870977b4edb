import type { CoverCut } from './coverCuts.ts'
import type { SheetModel, SheetType } from './sheetModel.ts'

/** How many sheets of each of the model's types. */
export interface Purchase {
  readonly counts: readonly number[]
  readonly price: number
  /** How full the rules say it would be, 1 at most. */
  readonly fill: number
}

/** Money that is nothing: prices are sums in floating point. */
export const SAME_MONEY = 1e-9

/** Combinations looked at and kept at most. */
const MOST_NODES = 200_000
const MOST_KEPT = 4000

/**
 * The purchases below a price that no rule excludes and to which no sheet can be added for that price,
 * the emptiest first: whatever fits into a smaller purchase fits into one of these.
 */
export function listPurchases(
  model: SheetModel,
  cuts: readonly CoverCut[],
  below: number,
): readonly Purchase[] {
  const { types, parts } = model
  const limit = below - SAME_MONEY * Math.max(1, below)
  const mostOf = (type: SheetType, money: number) => {
    const affordable = type.price > 0 ? Math.floor(money / type.price) : parts
    return Math.min(type.count, parts, affordable)
  }
  const order = [...types].sort((a, b) => b.price - a.price)
  const found: Purchase[] = []
  let nodes = 0
  const search = (at: number, counts: readonly number[], cost: number): void => {
    if (nodes++ > MOST_NODES || found.length >= MOST_KEPT) return
    const type = order[at]
    if (!type) {
      const canAdd = types.some(
        (each) =>
          (counts[each.stock] ?? 0) < Math.min(each.count, parts) && cost + each.price < limit,
      )
      const fill = measureFill(cuts, counts)
      if (!canAdd && fill <= 1) found.push({ counts, price: cost, fill })
      return
    }
    const most = mostOf(type, limit - cost)
    const isLast = at === order.length - 1
    for (let count = most; count >= (isLast ? most : 0); count--) {
      const next = counts.map((old, stock) => (stock === type.stock ? count : old))
      search(at + 1, next, cost + count * type.price)
    }
  }
  if (limit >= 0) {
    search(
      0,
      types.map(() => 0),
      0,
    )
  }
  return found.sort((a, b) => a.fill - b.fill || a.price - b.price)
}

function measureFill(cuts: readonly CoverCut[], counts: readonly number[]): number {
  let fill = 0
  for (const cut of cuts) {
    let held = 0
    for (const [stock, count] of counts.entries()) held += count * (cut.holds[stock] ?? 0)
    fill = Math.max(fill, held > 0 ? 1 / held : Number.POSITIVE_INFINITY)
  }
  return fill
}
