import { createBranchCut, isHopelessBy, payInto } from './branchCuts.ts'
import { type DualCut, isCutOff } from './dualCut.ts'
import type { Problem } from './problem.ts'
import { walkPurchases } from './walkPurchases.ts'

const MOST_VISITS = 5_000_000

/**
 * Of the cuts, those that are enough to forbid every purchase below a cost; undefined when they are not,
 * or when there are too many purchases to look through. Takes another cut only where a purchase escapes
 * those taken so far.
 */
export function* trimCuts(
  { costs, limits }: Problem,
  cuts: readonly DualCut[],
  below: number,
): Generator<undefined, DualCut[] | undefined> {
  if (below <= 0) return []
  const order = costs
    .map((_, stock) => stock)
    .filter((stock) => (costs[stock] ?? 0) > 0)
    .sort((a, b) => (costs[b] ?? 0) - (costs[a] ?? 0))
  // Boards that cost nothing are all taken.
  const boards = costs.map((cost, stock) => (cost === 0 ? (limits[stock] ?? 0) : 0))
  const others = cuts
    .map((cut) => createBranchCut(cut, costs, { order, boards }))
    .sort((a, b) => b.leastMoney - a.leastMoney)
  const chosen = others.splice(0, 1)
  const isForbidden = yield* walkPurchases(
    { order, costs, limits, money: below - 1, places: Infinity, mostVisits: MOST_VISITS },
    {
      isHopeless: (branch) => chosen.some((cut) => isHopelessBy(cut, branch)),
      onTake: (depth, copies) => {
        const stock = order[depth] ?? 0
        boards[stock] = copies
        for (const cut of chosen) payInto(cut, depth, { stock, copies })
      },
      // Fewer boards hold no more.
      fewestLast: (most) => most,
      onPurchase: () => {
        if (chosen.some(({ cut }) => isCutOff(cut, boards))) return true
        const next = others.findIndex(({ cut }) => isCutOff(cut, boards))
        if (next < 0) return false
        const [taken] = others.splice(next, 1)
        if (taken === undefined) return false
        // It joins in the middle of the walk: what has been taken so far is paid in.
        order.forEach((stock, depth) => {
          payInto(taken, depth, { stock, copies: boards[stock] ?? 0 })
        })
        chosen.push(taken)
        return true
      },
    },
  )
  return isForbidden ? chosen.map(({ cut }) => cut) : undefined
}
