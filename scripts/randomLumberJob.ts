import type { LumberJob } from '../src/solvers/cutting/lumber/lumberJob.ts'
import { type RandomNumbers, randomNumbers, shuffle, wholeBetween } from './randomNumbers.ts'

/** Lengths that yards sell, mm (common practice). */
const LENGTHS_MM = [1800, 2400, 3000, 3600, 4200, 4800]

const CENTS_PER_MM = 0.2

/**
 * A job such as a workshop has: 60 to 150 parts of 8 to 30 lengths from 2 to 5 lengths of board, each
 * with a price of its own within 15 % of that by length; kerf 2 to 4 mm, trim none or 20 mm.
 */
export const randomLumberJob = (seed: number): LumberJob => {
  const random = randomNumbers(seed)
  const lengths = shuffle(random, LENGTHS_MM)
    .slice(0, wholeBetween(random, 2, 5))
    .toSorted((a, b) => a - b)
  const trimMm = random() < 0.5 ? 0 : 20
  const longest = Math.max(...lengths) - trimMm
  const distinct = wholeBetween(random, 8, 30)
  const parts = Array.from({ length: distinct }, () => partLength(random, longest))
  const counts = parts.map(() => 1)
  const all = wholeBetween(random, 60, 150)
  for (let copy = distinct; copy < all; copy++) {
    // Some lengths are asked for more often than others.
    const lucky = Math.floor(distinct * random() ** 2)
    counts[lucky] = (counts[lucky] ?? 0) + 1
  }
  return {
    stocks: lengths.map((lengthMm) => ({
      id: `board-${lengthMm}`,
      lengthMm,
      price: Math.round(lengthMm * CENTS_PER_MM * (0.85 + 0.3 * random())),
    })),
    kerfMm: wholeBetween(random, 2, 4),
    trimMm,
    parts: parts.map((lengthMm, i) => ({ id: `part-${i}`, lengthMm, count: counts[i] ?? 0 })),
  }
}

/** Mostly rails and legs, one in five longer. */
const partLength = (random: RandomNumbers, longest: number): number =>
  random() < 0.8
    ? wholeBetween(random, 120, 900)
    : wholeBetween(random, 900, Math.min(1800, longest))
