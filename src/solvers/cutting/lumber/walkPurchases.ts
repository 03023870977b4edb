/** The tree of purchases: one depth for each stock of `order`, most copies first. */
export interface PurchaseTree {
  readonly order: readonly number[]
  readonly costs: readonly number[]
  readonly limits: readonly number[]
  /** To be spent, and boards to be bought, at most. */
  readonly money: number
  readonly places: number
  readonly mostVisits: number
}

/** Where a branch stands: what is left to spend and to buy on the stocks from `depth` on. */
export interface Branch {
  readonly depth: number
  readonly money: number
  readonly places: number
}

export interface PurchaseVisitor {
  /** True to leave a branch out. Called once for each branch that is not complete. */
  readonly isHopeless: (branch: Branch) => boolean
  /** So many copies of `order[depth]` are taken; what was taken deeper is void. */
  readonly onTake: (depth: number, copies: number) => void
  /** Fewest copies of the last stock that are of interest, of `most` that the money buys. */
  readonly fewestLast: (most: number, branch: Branch) => number
  /** All stocks have their copies. False to stop the walk. */
  readonly onPurchase: (money: number) => boolean
}

const VISITS_PER_PAUSE = 8000

/** Walks through all purchases; true when it came to the end. Pauses now and then. */
export function* walkPurchases(
  tree: PurchaseTree,
  visitor: PurchaseVisitor,
): Generator<undefined, boolean> {
  const { order, costs } = tree
  const last = order.length - 1
  if (last < 0) return visitor.onPurchase(tree.money)
  const branches: Branch[] = [{ depth: 0, money: tree.money, places: tree.places }]
  // Copies still to be tried at each depth, from the most down to the fewest.
  const copies = order.map(() => 0)
  const fewest = order.map(() => 0)

  /** Prepares a new branch; false when nothing of it is of interest. */
  const enter = (branch: Branch): boolean => {
    if (visitor.isHopeless(branch)) return false
    const most = mostCopies(tree, branch)
    copies[branch.depth] = most + 1
    fewest[branch.depth] = branch.depth === last ? visitor.fewestLast(most, branch) : 0
    return true
  }

  /** Takes the next number of copies at a depth; the depth to go on at, or nothing to stop. */
  const advance = (depth: number): number | undefined => {
    const next = (copies[depth] ?? 0) - 1
    copies[depth] = next
    const branch = branches[depth]
    if (branch === undefined || next < (fewest[depth] ?? 0)) return depth - 1
    visitor.onTake(depth, next)
    const money = branch.money - next * (costs[order[depth] ?? 0] ?? 0)
    if (depth === last) return visitor.onPurchase(money) ? depth : undefined
    const child = { depth: depth + 1, money, places: branch.places - next }
    branches[depth + 1] = child
    return enter(child) ? depth + 1 : depth
  }

  let depth = enter({ depth: 0, money: tree.money, places: tree.places }) ? 0 : -1
  for (let visits = 1; depth >= 0; visits++) {
    if (visits > tree.mostVisits) return false
    if (visits % VISITS_PER_PAUSE === 0) yield undefined
    const next = advance(depth)
    if (next === undefined) return false
    depth = next
  }
  return true
}

const mostCopies = ({ order, costs, limits }: PurchaseTree, branch: Branch): number => {
  const stock = order[branch.depth] ?? 0
  const cost = costs[stock] ?? 0
  const affordable = cost > 0 ? Math.floor(branch.money / cost) : Infinity
  return Math.max(-1, Math.min(limits[stock] ?? 0, branch.places, affordable))
}
