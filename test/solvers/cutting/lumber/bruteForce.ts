import type { LumberJob } from '../../../../src/solvers/cutting/lumber/lumberJob.ts'

export interface Optimum {
  readonly price: number
  readonly boards: number
}

/**
 * The least price and then the fewest boards, by looking at every state: which pieces are still wanted
 * and which boards are left. For a few small jobs only; undefined when there is no plan. Prices in
 * hundredths inside.
 */
export const bruteForce = (job: LumberJob): Optimum | undefined => {
  const known = new Map<string, number>()
  const pieces = job.parts.reduce((sum, { count }) => sum + count, 0)
  // One number for both: price first, then boards.
  const solve = (wanted: readonly number[], left: readonly number[]): number => {
    if (wanted.every((count) => count === 0)) return 0
    const key = `${wanted}|${left}`
    const before = known.get(key)
    if (before !== undefined) return before
    let best = Infinity
    job.stocks.forEach((stock, at) => {
      if ((left[at] ?? 0) === 0) return
      const fewer = left.map((count, other) => (other === at ? count - 1 : count))
      for (const cut of waysToCut(job, wanted, stock.lengthMm - job.trimMm)) {
        const rest = wanted.map((count, part) => count - (cut[part] ?? 0))
        best = Math.min(best, Math.round(stock.price * 100) * 1000 + 1 + solve(rest, fewer))
      }
    })
    known.set(key, best)
    return best
  }
  const boards = job.stocks.map(({ count }) => Math.min(count ?? pieces, pieces))
  const best = solve(
    job.parts.map(({ count }) => count),
    boards,
  )
  return best === Infinity
    ? undefined
    : { price: Math.floor(best / 1000) / 100, boards: best % 1000 }
}

/** All ways to cut one board that hold the first wanted part; n pieces take n − 1 saw cuts. */
const waysToCut = (job: LumberJob, wanted: readonly number[], lengthMm: number): number[][] => {
  const first = wanted.findIndex((count) => count > 0)
  const found: number[][] = []
  const extend = (part: number, room: number, cut: readonly number[]): void => {
    const { lengthMm: length } = job.parts[part] ?? {}
    if (length === undefined) {
      found.push([...cut])
      return
    }
    for (let count = part === first ? 1 : 0; count <= (wanted[part] ?? 0); count++) {
      const rest = room - count * (length + job.kerfMm)
      if (rest < -1e-9) return
      extend(part + 1, rest, [...cut, count])
    }
  }
  extend(0, lengthMm + job.kerfMm, [])
  return found
}
