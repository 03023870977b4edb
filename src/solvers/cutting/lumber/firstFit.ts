import { type Bar, costOf, type Problem } from './problem.ts'

/**
 * First-fit decreasing: each piece, longest first, goes to the first board with room, else to a new
 * board of the first stock in `order` that takes it. Undefined where counted boards run out.
 */
export const firstFit = (problem: Problem, order: readonly number[]): Bar[] | undefined => {
  const open: { stock: number; room: number; counts: number[] }[] = []
  const left = [...problem.limits]
  for (let kind = 0; kind < problem.demand.length; kind++) {
    const weight = problem.weights[kind] ?? 0
    for (let piece = problem.demand[kind] ?? 0; piece > 0; piece--) {
      let bar = open.find(({ room }) => room >= weight)
      if (bar === undefined) {
        const stock = order.find((at) => (left[at] ?? 0) > 0 && (problem.caps[at] ?? 0) >= weight)
        if (stock === undefined) return undefined
        left[stock] = (left[stock] ?? 0) - 1
        const counts = new Array<number>(problem.demand.length).fill(0)
        bar = { stock, room: problem.caps[stock] ?? 0, counts }
        open.push(bar)
      }
      bar.room -= weight
      bar.counts[kind] = (bar.counts[kind] ?? 0) + 1
    }
  }
  return open.map(({ stock, counts }) => ({ stock, counts }))
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
