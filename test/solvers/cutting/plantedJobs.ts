import { type RandomNumbers, shuffle, wholeBetween } from '../../../scripts/randomNumbers.ts'
import type { LumberJob, LumberStock } from '../../../src/solvers/cutting/lumber/lumberJob.ts'
import type { SheetJob, SheetStock } from '../../../src/solvers/cutting/sheets/sheetJob.ts'

/** A job that was made by cutting up boards or sheets, so it can be done at their price. */
export interface Planted<Job> {
  readonly job: Job
  /** What the boards or sheets cost that were cut up: the least price is this or below. */
  readonly price: number
}

interface PlantedLumber {
  readonly stocks: readonly LumberStock[]
  readonly kerfMm: number
  readonly trimMm: number
  readonly boards: number
  /** Pieces on each board. */
  readonly pieces: readonly [least: number, most: number]
  /** Left over at the end of each board at most; 0 for boards that end flush. */
  readonly slackMm: number
  /** Lengths are whole multiples of this; 0 for lengths that are whole in no unit. */
  readonly stepMm: number
}

export const plantLumber = (random: RandomNumbers, plan: PlantedLumber): Planted<LumberJob> => {
  const { stocks, kerfMm, trimMm } = plan
  const lengths: number[] = []
  const used = stocks.map(() => 0)
  for (let board = 0; board < plan.boards; board++) {
    const left = stocks.flatMap(({ count = Infinity }, i) => ((used[i] ?? 0) < count ? [i] : []))
    const stock = left[wholeBetween(random, 0, left.length - 1)] ?? 0
    used[stock] = (used[stock] ?? 0) + 1
    const pieces = wholeBetween(random, ...plan.pieces)
    const usable = (stocks[stock]?.lengthMm ?? 0) - trimMm - (pieces - 1) * kerfMm
    lengths.push(...split(random, usable - plan.slackMm * random(), pieces, plan.stepMm))
  }
  const price = stocks.reduce((sum, stock, i) => sum + stock.price * (used[i] ?? 0), 0)
  const counts = new Map<number, number>()
  for (const length of shuffle(random, lengths)) counts.set(length, (counts.get(length) ?? 0) + 1)
  const parts = [...counts].map(([lengthMm, count], i) => ({ id: `part-${i}`, lengthMm, count }))
  return { job: { stocks, kerfMm, trimMm, parts }, price }
}

/** Lengths that add up to the whole, or as near below it as the step allows. */
const split = (
  random: RandomNumbers,
  whole: number,
  pieces: number,
  stepMm: number,
): readonly number[] => {
  const shares = Array.from({ length: pieces }, () => 0.3 + random())
  const sum = shares.reduce((total, share) => total + share, 0)
  const lengths = shares.map((share) => (share / sum) * whole)
  if (stepMm === 0) return lengths
  const rounded = lengths.slice(1).map((length) => Math.floor(length / stepMm) * stepMm)
  const rest = whole - rounded.reduce((total, length) => total + length, 0)
  // The first takes what the others leave; counted in steps, so that no dust of sums makes it longer.
  return [Math.floor(rest / stepMm + 1e-9) * stepMm, ...rounded]
}

interface PlantedSheets {
  readonly stocks: readonly SheetStock[]
  readonly kerfMm: number
  readonly trimMm: number
  readonly sheets: number
  readonly stages: SheetJob['stages']
  /** Cuts to each sheet at most. */
  readonly cuts: number
  /** Share of the parts that are left out again. */
  readonly dropped: number
}

export const plantSheets = (random: RandomNumbers, plan: PlantedSheets): Planted<SheetJob> => {
  const { stocks, kerfMm, trimMm, stages } = plan
  const sizes: Size[] = []
  let price = 0
  for (let sheet = 0; sheet < plan.sheets; sheet++) {
    const stock = stocks[wholeBetween(random, 0, stocks.length - 1)]
    if (stock === undefined) throw new Error('There is a stock.')
    price += stock.price
    const whole = { length: stock.lengthMm - 2 * trimMm, width: stock.widthMm - 2 * trimMm }
    sizes.push(...cutUp(random, whole, plan))
  }
  const kept = sizes.filter((_, i) => i === 0 || random() >= plan.dropped)
  const parts = shuffle(random, kept).map(({ length, width }, i) => {
    const mayTurn = random() < 0.5
    const isTurned = mayTurn && random() < 0.5
    const [lengthMm, widthMm] = isTurned ? [width, length] : [length, width]
    return { id: `part-${i}`, lengthMm, widthMm, count: 1, mayTurn }
  })
  return { job: { stocks, kerfMm, trimMm, stages, parts }, price }
}

interface Size {
  readonly length: number
  readonly width: number
}

const SMALLEST_MM = 60

/** Cuts the largest piece that is left in two, again and again. */
const cutUp = (random: RandomNumbers, whole: Size, plan: PlantedSheets): readonly Size[] => {
  let pieces: readonly Size[] = [whole]
  for (let cut = 0; cut < plan.cuts; cut++) {
    const [largest, ...others] = pieces.toSorted((a, b) => b.length * b.width - a.length * a.width)
    if (largest === undefined) return pieces
    const isAcross = largest.length > largest.width
    const extent = isAcross ? largest.length : largest.width
    const most = extent - plan.kerfMm - SMALLEST_MM
    if (most < SMALLEST_MM) return pieces
    const first = wholeBetween(random, SMALLEST_MM, Math.floor(most))
    const halves = [first, extent - plan.kerfMm - first].map((size) =>
      isAcross ? { ...largest, length: size } : { ...largest, width: size },
    )
    pieces = [...others, ...halves]
  }
  return pieces
}
