import type { LumberCertificate, LumberJob } from './lumberJob.ts'

/** Steps of knapsack tables and of the walk through purchases before the answer is "not shown". */
const MOST_STEPS = 1.5e9
const STEPS_PER_PAUSE = 3e6
/** Longer tables than this are made on a coarser grid, pieces rounded down. */
const MOST_CELLS = 200_000
const NANOMETRES = 1e6
const DUST = 1e-3

/**
 * True when the certificate shows, in whole numbers, that no purchase of boards cheaper than `price`
 * holds all parts: for each there is a weighting of the parts (a dual vector) by which the parts are
 * worth more than the boards can carry. False when it does not, when it makes no sense, or when looking
 * would take too long; false says nothing about the plan. See Farley 1990, Alves & Valério de Carvalho
 * 2008.
 */
export const verifyCertificate = (
  job: LumberJob,
  price: number,
  certificate: LumberCertificate,
): boolean => {
  const steps = verifyInSteps(job, price, certificate)
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
  }
}

/** The same with pauses of a few milliseconds. */
export function* verifyInSteps(
  job: LumberJob,
  price: number,
  certificate: LumberCertificate,
): Generator<undefined, boolean> {
  if (!isSound(job, certificate)) return false
  const scale = moneyScale(job)
  const { priceUnits, duals } = certificate
  if (!(Math.abs(price * scale - priceUnits) < 1e-4)) return false
  // Nothing costs less than nothing.
  if (priceUnits === 0) return true
  const boards = readBoards(job, scale)
  const pieces = readPieces(job, boards)
  const meter = { left: MOST_STEPS, sincePause: 0 }
  const rules: Rule[] = []
  for (const dual of duals) {
    const rule = yield* makeRule(pieces, boards, { dual, meter })
    if (rule === undefined) return false
    rules.push(rule)
  }
  return yield* isAllForbidden(boards, rules, { money: priceUnits - 1, meter })
}

interface Meter {
  left: number
  sincePause: number
}

interface Board {
  /** Usable length and one saw cut, in nanometres. */
  readonly size: number
  readonly cost: number
  readonly most: number
}

interface Pieces {
  /** Of a length and one saw cut, in cells of the grid, rounded down. */
  readonly sizes: readonly number[]
  readonly counts: readonly number[]
  readonly cell: number
}

/** What each board can carry by one weighting, and what all parts are worth. */
interface Rule {
  readonly carry: readonly number[]
  readonly worth: number
}

const isSound = (job: LumberJob, { priceUnits, duals }: LumberCertificate): boolean =>
  isNatural(priceUnits) &&
  isLength(job.kerfMm) &&
  isLength(job.trimMm) &&
  job.parts.every(({ lengthMm, count }) => isLength(lengthMm) && isNatural(count)) &&
  job.stocks.every(
    ({ lengthMm, price, count }) =>
      isLength(lengthMm) && price >= 0 && price <= 1e9 && (count === undefined || isNatural(count)),
  ) &&
  Array.isArray(duals) &&
  duals.every(
    (dual) => Array.isArray(dual) && dual.length === job.parts.length && dual.every(isNatural),
  )

const isNatural = (value: number): boolean => Number.isSafeInteger(value) && value >= 0

const isLength = (mm: number): boolean => mm >= 0 && mm <= 1e6

/** Hundredths, or as many decimals up to six as the prices have. */
const moneyScale = (job: LumberJob): number => {
  for (let decimals = 2; decimals < 6; decimals++) {
    const scale = 10 ** decimals
    const units = job.stocks.map(({ price }) => price * scale)
    if (units.every((value) => Math.abs(value - Math.round(value)) < 1e-6)) return scale
  }
  return 1e6
}

const readBoards = (job: LumberJob, scale: number): Board[] => {
  const pieces = job.parts.reduce((sum, { count }) => sum + count, 0)
  return job.stocks.map(({ lengthMm, price, count }) => ({
    size: atMost(lengthMm) + atLeast(job.kerfMm) - atLeast(job.trimMm),
    cost: Math.round(price * scale),
    most: count === undefined ? pieces : Math.min(count, pieces),
  }))
}

/** Nanometres that a length surely has; the dust of sums is no reason to lose one. */
const atLeast = (mm: number): number => Math.floor(mm * NANOMETRES + DUST)

/** Nanometres that a length has at most. Boards rounded up and pieces down only make the claim harder. */
const atMost = (mm: number): number => Math.ceil(mm * NANOMETRES - DUST)

const readPieces = (job: LumberJob, boards: readonly Board[]): Pieces => {
  const sizes = job.parts.map(({ lengthMm }) => atLeast(lengthMm) + atLeast(job.kerfMm))
  const longest = boards.reduce((most, { size }) => Math.max(most, size), 1)
  // The largest exact cell, or else a round one: rounding pieces down only makes the claim harder.
  let cell = 0
  for (const size of sizes) cell = euclid(cell, size)
  cell = Math.max(1, cell)
  if (longest / cell > MOST_CELLS) {
    cell = 1
    for (let turn = 0; longest / cell > MOST_CELLS; turn++) cell *= turn % 2 === 0 ? 5 : 2
  }
  return {
    sizes: sizes.map((size) => Math.floor(size / cell)),
    counts: job.parts.map(({ count }) => count),
    cell,
  }
}

const euclid = (a: number, b: number): number => (b === 0 ? a : euclid(b, a % b))

/** Undefined when numbers get too large to be exact, or the work too much. */
function* makeRule(
  { sizes, counts, cell }: Pieces,
  boards: readonly Board[],
  { dual, meter }: { readonly dual: readonly number[]; readonly meter: Meter },
): Generator<undefined, Rule | undefined> {
  const worth = counts.reduce((sum, count, part) => sum + count * (dual[part] ?? 0), 0)
  // Then so is whatever boards carry, times any number of boards.
  const pieces = counts.reduce((sum, count) => sum + count, 0)
  if (!Number.isSafeInteger(worth * (pieces + 1))) return undefined
  const rooms = boards.map(({ size }) => Math.max(-1, Math.floor(size / cell)))
  const most = rooms.reduce((longest, room) => Math.max(longest, room), 0)
  // table[room]: the most that pieces within that room are worth.
  const table = new Float64Array(most + 1)
  for (let part = 0; part < sizes.length; part++) {
    const size = sizes[part] ?? 0
    const value = dual[part] ?? 0
    const fits = size === 0 ? Infinity : Math.floor(most / size)
    let left = value === 0 ? 0 : Math.min(counts[part] ?? 0, fits)
    for (let bundle = 1; left > 0; bundle *= 2) {
      const copies = Math.min(bundle, left)
      left -= copies
      addBundle(table, copies * size, copies * value)
      meter.left -= most
      meter.sincePause += most
      if (meter.left < 0) return undefined
      if (meter.sincePause < STEPS_PER_PAUSE) continue
      meter.sincePause = 0
      yield undefined
    }
  }
  return { worth, carry: rooms.map((room) => (room < 0 ? 0 : (table[room] ?? 0))) }
}

const addBundle = (table: Float64Array, size: number, value: number): void => {
  for (let room = table.length - 1; room >= size; room--) {
    const sum = (table[room - size] ?? 0) + value
    if (sum > (table[room] ?? 0)) table[room] = sum
  }
}

/** Compares products of whole numbers without rounding. */
const isLarger = (one: readonly [number, number], other: readonly [number, number]): boolean => {
  const [a, b] = [one[0] * one[1], other[0] * other[1]]
  if (Number.isSafeInteger(a) && Number.isSafeInteger(b)) return a > b
  return BigInt(one[0]) * BigInt(one[1]) > BigInt(other[0]) * BigInt(other[1])
}

/**
 * Goes through the purchases that `money` allows. Boards that cost nothing are all taken: more boards
 * carry no less. A rule forbids a whole branch when the parts are worth more than what is taken carries
 * and the rest of the money could carry at the best rate.
 */
function* isAllForbidden(
  boards: readonly Board[],
  rules: readonly Rule[],
  { money, meter }: { readonly money: number; readonly meter: Meter },
): Generator<undefined, boolean> {
  const priced = boards.flatMap(({ cost }, board) => (cost > 0 ? [board] : []))
  const owed = rules.map(({ worth, carry }) =>
    boards.reduce(
      (left, { cost, most }, board) => (cost > 0 ? left : left - most * (carry[board] ?? 0)),
      worth,
    ),
  )

  /** Exact: the rate's fraction is multiplied out. */
  const isForbiddenBy = (rule: Rule, owing: number, from: number, left: number): boolean => {
    if (owing <= 0) return false
    for (let at = from; at < priced.length; at++) {
      const board = priced[at] ?? 0
      const cost = boards[board]?.cost ?? 0
      if (!isLarger([owing, cost], [left, rule.carry[board] ?? 0])) return false
    }
    return true
  }

  const isBranchForbidden = (from: number, left: number, owing: readonly number[]): boolean => {
    meter.left -= rules.length + 1
    meter.sincePause += 10 * (rules.length + 1)
    return rules.some((rule, at) => isForbiddenBy(rule, owing[at] ?? 0, from, left))
  }

  /** Of a branch that is not forbidden as a whole. */
  function* walk(
    from: number,
    left: number,
    owing: readonly number[],
  ): Generator<undefined, boolean> {
    const board = priced[from]
    if (board === undefined) return false
    const { cost = 1, most = 0 } = boards[board] ?? {}
    const affordable = Math.min(most, Math.floor(left / cost))
    // Of the last kind of board, fewer carry no more.
    const fewest = from === priced.length - 1 ? affordable : 0
    for (let copies = affordable; copies >= fewest; copies--) {
      if (meter.left < 0) return false
      if (meter.sincePause > STEPS_PER_PAUSE) {
        meter.sincePause = 0
        yield undefined
      }
      const rest = rules.map(({ carry }, at) => (owing[at] ?? 0) - copies * (carry[board] ?? 0))
      const kept = left - copies * cost
      if (isBranchForbidden(from + 1, kept, rest)) continue
      if (!(yield* walk(from + 1, kept, rest))) return false
    }
    return true
  }
  if (isBranchForbidden(0, money, owed)) return true
  return yield* walk(0, money, owed)
}
