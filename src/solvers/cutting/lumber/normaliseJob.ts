import type { LumberJob } from './lumberJob.ts'
import type { Problem } from './problem.ts'
import {
  commonDivisor,
  nanometresAround,
  nanometresWithin,
  priceUnitsPerMoney,
  roundGrid,
  toMillimetres,
} from './wholeUnits.ts'

/** Steps of one knapsack table, capacities × lots, that still take only a few milliseconds. */
const MOST_EXACT_STEPS = 4e6
/** Less where a finer grid is no more exact. */
const MOST_ROUND_STEPS = 2e6

/**
 * Merges parts of equal length and turns everything into whole units: the greatest that is exact, or,
 * where that is too fine to be quick, a coarser one with pieces rounded up for plans and down for
 * bounds. Leaves out boards that are of no use. Expects a job that `checkJob` has let pass.
 */
export const normaliseJob = (job: LumberJob): Problem => {
  const kinds = mergeParts(job)
  const kerf = nanometresWithin(job.kerfMm)
  const sizes = kinds.map(({ length }) => length + kerf)
  const shortest = sizes.at(-1) ?? 0
  const pieces = kinds.reduce((sum, { count }) => sum + count, 0)
  const unitsPerMoney = priceUnitsPerMoney(job.stocks.map(({ price }) => price))
  const boards = job.stocks
    .map((stock, index) => ({
      index,
      size: nanometresAround(stock.lengthMm) - nanometresWithin(job.trimMm) + kerf,
      cost: Math.round(stock.price * unitsPerMoney),
      limit: Math.min(stock.count ?? pieces, pieces),
    }))
    .filter(({ size, limit }) => size >= shortest && limit > 0)
  const useful = boards
    .filter((board) => !boards.some((other) => isBeaten(board, other, pieces)))
    .sort((a, b) => b.size - a.size || a.cost - b.cost)
  const longest = useful[0]?.size ?? 0

  // 1. The greatest unit in which all pieces are whole; boards may then be rounded down at no loss.
  const exact = Math.max(1, commonDivisor(sizes))
  const lots = kinds.reduce((sum, { count }) => sum + Math.ceil(Math.log2(count + 1)), 0)
  const isExact = (longest / exact) * lots <= MOST_EXACT_STEPS
  // 2. Otherwise a grid: what fits with pieces rounded up fits, what does not with them rounded down
  //    never does.
  const unit = isExact ? exact : roundGrid(longest, Math.max(2000, MOST_ROUND_STEPS / lots))
  const caps = useful.map(({ size }) => Math.floor(size / unit))
  const lowWeights = sizes.map((size) => Math.floor(size / unit))
  // A piece that fills the longest board to less than one unit stays possible, alone on its board.
  const weights = isExact
    ? lowWeights
    : sizes.map((size) => Math.min(Math.ceil(size / unit), caps[0] ?? 0))

  return {
    weights,
    lowWeights,
    demand: kinds.map(({ count }) => count),
    members: kinds.map(({ parts }) => parts),
    caps,
    costs: useful.map(({ cost }) => cost),
    limits: useful.map(({ limit }) => limit),
    stocks: useful.map(({ index }) => index),
    unitsPerMoney,
    costStep: Math.max(1, commonDivisor(useful.map(({ cost }) => cost))),
    unitMm: toMillimetres(unit),
    kerf: Math.ceil(kerf / unit),
  }
}

interface Merged {
  readonly length: number
  readonly count: number
  readonly parts: readonly number[]
}

const mergeParts = (job: LumberJob): Merged[] => {
  const byLength = new Map<number, number[]>()
  job.parts.forEach(({ lengthMm, count }, index) => {
    if (count === 0) return
    const length = nanometresWithin(lengthMm)
    byLength.set(length, [...(byLength.get(length) ?? []), index])
  })
  return [...byLength]
    .map(([length, parts]) => ({
      length,
      parts,
      count: parts.reduce((sum, part) => sum + (job.parts[part]?.count ?? 0), 0),
    }))
    .sort((a, b) => b.length - a.length)
}

interface Board {
  readonly index: number
  readonly size: number
  readonly cost: number
  readonly limit: number
}

/** Another board is at least as long, costs no more, and there are enough of it. */
const isBeaten = (board: Board, other: Board, pieces: number): boolean => {
  if (other.index === board.index || other.limit < pieces) return false
  if (other.size < board.size || other.cost > board.cost) return false
  const isTwin = other.size === board.size && other.cost === board.cost && board.limit >= pieces
  return !isTwin || other.index < board.index
}
