import { type Bar, costOf, type Problem } from './problem.ts'

/**
 * First-fit decreasing: each piece, longest first, goes to the first board with room, else to a new
 * board of the first stock in `order` that takes it. Undefined where counted boards run out.
 */
export const firstFit = (problem: Problem, order: readonly number[]): Bar[] | undefined => {
  const { weights, demand, caps, limits } = problem
  const open: OpenBar[] = []
  const left = [...limits]
  for (let kind = 0; kind < demand.length; kind++) {
    const weight = weights[kind] ?? 0
    // Pieces of one kind fill one open board after the other.
    let rest = demand[kind] ?? 0
    for (const bar of open) rest -= put(bar, { kind, weight, most: rest })
    while (rest > 0) {
      const stock = order.find((at) => (left[at] ?? 0) > 0 && (caps[at] ?? 0) >= weight)
      if (stock === undefined) return undefined
      left[stock] = (left[stock] ?? 0) - 1
      const bar = { stock, room: caps[stock] ?? 0, counts: demand.map(() => 0) }
      rest -= put(bar, { kind, weight, most: rest })
      open.push(bar)
    }
  }
  return open.map(({ stock, counts }) => ({ stock, counts }))
}

interface OpenBar {
  readonly stock: number
  room: number
  readonly counts: number[]
}

interface Pieces {
  readonly kind: number
  readonly weight: number
  readonly most: number
}

/** Puts as many pieces on a board as it takes; says how many. */
const put = (bar: OpenBar, { kind, weight, most }: Pieces): number => {
  const copies = weight === 0 ? most : Math.min(most, Math.floor(bar.room / weight))
  bar.room -= copies * weight
  bar.counts[kind] = (bar.counts[kind] ?? 0) + copies
  return copies
}

/** What first-fit decreasing costs on the one length where that is least; undefined if none does alone. */
export const plainCost = (problem: Problem): number | undefined => {
  let least: number | undefined
  for (let stock = 0; stock < problem.caps.length; stock++) {
    const bars = firstFit(problem, [stock])
    if (bars === undefined) continue
    const cost = costOf(problem, bars)
    if (least === undefined || cost < least) least = cost
  }
  return least
}
