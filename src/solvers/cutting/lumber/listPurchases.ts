import { createBranchCut, isHopelessBy, payInto } from './branchCuts.ts'
import { type DualCut, isCutOff } from './dualCut.ts'
import { walkPurchases } from './walkPurchases.ts'

/** Boards by stock, and what they cost together. */
export interface Purchase {
  readonly boards: readonly number[]
  readonly cost: number
  readonly count: number
}

export interface PurchaseQuery {
  readonly costs: readonly number[]
  readonly limits: readonly number[]
  readonly cuts: readonly DualCut[]
  /** Cheapest cost of interest, and the first that is of none. */
  readonly from: number
  readonly below: number
  /** Set where the number of boards counts; else stocks of no price are always taken in full. */
  readonly boardsBelow?: number
  readonly mostVisits: number
}

export interface PurchaseList {
  readonly purchases: readonly Purchase[]
  /** False when there are too many to list: these are some of them. */
  readonly isComplete: boolean
}

const MOST_PURCHASES = 20_000
/** Cuts that are tried on whole branches; all of them are tried on a purchase. */
const MOST_BRANCH_CUTS = 8

/**
 * All purchases in a range of cost that no cut forbids, cheapest first and then fewest boards. A branch is left as soon as the money that remains can't buy enough
 * worth for one of the cuts, however it is spent.
 */
export function* listPurchases(query: PurchaseQuery): Generator<undefined, PurchaseList> {
  const { costs, limits, cuts, from, below, boardsBelow } = query
  const order = orderOf(query)
  const boards = costs.map((cost, stock) =>
    cost === 0 && boardsBelow === undefined ? (limits[stock] ?? 0) : 0,
  )
  const branchCuts = cuts
    .map((cut) => createBranchCut(cut, costs, { order, boards }))
    .sort((a, b) => b.leastMoney - a.leastMoney)
    .slice(0, MOST_BRANCH_CUTS)
  const found: Purchase[] = []
  const money = below - 1
  const isComplete = yield* walkPurchases(
    {
      order,
      costs,
      limits,
      money,
      places: (boardsBelow ?? Infinity) - 1,
      mostVisits: query.mostVisits,
    },
    {
      isHopeless: (branch) => branchCuts.some((cut) => isHopelessBy(cut, branch)),
      onTake: (depth, copies) => {
        const stock = order[depth] ?? 0
        boards[stock] = copies
        for (const cut of branchCuts) payInto(cut, depth, { stock, copies })
      },
      // The last stock has to make up what the cost of interest asks for.
      fewestLast: (_, branch) => {
        const cost = costs[order.at(-1) ?? 0] ?? 0
        const missing = from - (money - branch.money)
        if (missing <= 0) return 0
        return cost > 0 ? Math.ceil(missing / cost) : Infinity
      },
      onPurchase: (left) => {
        const cost = money - left
        if (cost < from || cuts.some((cut) => isCutOff(cut, boards))) return true
        const count = boards.reduce((sum, copies) => sum + copies, 0)
        found.push({ boards: [...boards], cost, count })
        return found.length <= MOST_PURCHASES
      },
    },
  )
  return { purchases: found.sort((a, b) => a.cost - b.cost || a.count - b.count), isComplete }
}

/** Free boards first where they count, then from dear to cheap. */
const orderOf = ({ costs, boardsBelow }: PurchaseQuery): number[] => {
  const stocks = costs.map((_, stock) => stock)
  const free = stocks.filter((stock) => costs[stock] === 0)
  const priced = stocks
    .filter((stock) => (costs[stock] ?? 0) > 0)
    .sort((a, b) => (costs[b] ?? 0) - (costs[a] ?? 0))
  return boardsBelow === undefined ? priced : [...free, ...priced]
}
