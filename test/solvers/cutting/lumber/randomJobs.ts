import type { LumberJob, LumberStock } from '../../../../src/solvers/cutting/lumber/lumberJob.ts'
import { seededRandom } from '../../../../src/solvers/cutting/seededRandom.ts'

export type Draw = (from: number, to: number) => number

/** Whole numbers from a seed, both ends included. */
export const drawFrom = (seed: number): Draw => {
  const random = seededRandom(seed)
  return (from, to) => from + Math.floor(random() * (to - from + 1))
}

/** A few parts in small whole numbers, so that every plan can be looked at; stocks free, counted or not. */
export const smallJob = (seed: number): LumberJob => {
  const draw = drawFrom(seed)
  const stocks: LumberStock[] = Array.from({ length: draw(1, 3) }, (_, index) => ({
    id: `s${index}`,
    lengthMm: draw(18, 40),
    price: draw(0, 5) === 0 ? 0 : draw(100, 400) / 100,
    ...(draw(0, 2) === 0 ? { count: draw(0, 3) } : {}),
  }))
  const parts = Array.from({ length: draw(1, 4) }, (_, index) => ({
    id: `p${index}`,
    lengthMm: draw(4, 20),
    count: draw(0, 3),
  }))
  return { stocks, parts, kerfMm: draw(0, 2), trimMm: draw(0, 1) }
}

export interface Family {
  readonly pieces: number
  readonly kinds: number
  readonly stocks: number
}

const LENGTHS_MM = [1800, 2100, 2400, 2700, 3000, 3600, 4200, 4800]

/** Like a workshop's cut list: prices roughly in proportion to length, in whole hundredths. */
export const workshopJob = (seed: number, { pieces, kinds, stocks }: Family): LumberJob => {
  const draw = drawFrom(seed)
  const lengths = [...LENGTHS_MM]
  while (lengths.length > stocks) lengths.splice(draw(0, lengths.length - 1), 1)
  const counts = new Array<number>(kinds).fill(1)
  for (let piece = kinds; piece < pieces; piece++) {
    const kind = draw(0, kinds - 1)
    counts[kind] = (counts[kind] ?? 0) + 1
  }
  return {
    stocks: lengths.map((lengthMm) => ({
      id: `board-${lengthMm}`,
      lengthMm,
      price: Math.round((lengthMm * draw(180, 220)) / 1000) / 100,
    })),
    parts: counts.map((count, kind) => ({ id: `part-${kind}`, lengthMm: draw(100, 1000), count })),
    kerfMm: draw(2, 4),
    trimMm: draw(0, 1) * 20,
  }
}
