import type {
  BarPattern,
  LumberAnswer,
  LumberJob,
} from '../../../src/solvers/cutting/lumber/lumberJob.ts'

/** Lengths that differ by less are alike, mm: far below what any saw does. */
const EVEN_MM = 1e-6

/** Prices that differ by less are alike. */
const EVEN_PRICE = 1e-6

/**
 * What is wrong with a plan, one sentence a fault; none for a plan that can be sawn as it is printed.
 * Looks only at the job and the answer, and shares nothing with the solver.
 */
export const checkLumberPlan = (job: LumberJob, answer: LumberAnswer): readonly string[] => [
  ...answer.patterns.flatMap((pattern, i) =>
    checkPattern(job, pattern).map((fault) => `pattern ${i}: ${fault}`),
  ),
  ...checkCopies(job, answer),
  ...checkPurchase(job, answer),
  ...checkClaims(job, answer),
]

const checkPattern = (job: LumberJob, pattern: BarPattern): readonly string[] => {
  const stock = job.stocks[pattern.stock]
  if (stock === undefined) return [`there is no stock ${pattern.stock}`]
  const start = job.trimMm / 2
  const end = stock.lengthMm - job.trimMm / 2
  const placed = pattern.pieces.toSorted((a, b) => a.fromMm - b.fromMm)
  const faults: string[] = []
  if (!isCount(pattern.count)) faults.push(`${pattern.count} boards`)
  if (placed.length === 0) faults.push('a board without a piece')

  // Each piece must begin behind the saw cut that frees the one before it.
  let free = start
  for (const { part, fromMm, lengthMm } of placed) {
    const asked = job.parts[part]?.lengthMm
    if (asked === undefined) faults.push(`there is no part ${part}`)
    else if (!isEven(asked, lengthMm)) faults.push(`part ${part} is ${lengthMm}, not ${asked}`)
    if (!(fromMm >= free - EVEN_MM)) faults.push(`part ${part} at ${fromMm} begins before ${free}`)
    free = fromMm + lengthMm + job.kerfMm
  }
  const lastEnd = free - job.kerfMm
  if (placed.length > 0 && !(lastEnd <= end + EVEN_MM)) faults.push(`${lastEnd} is beyond ${end}`)

  // The same again without places: n pieces that end flush take n - 1 cuts.
  const sum = placed.reduce((total, { lengthMm }) => total + lengthMm, 0)
  const needed = sum + Math.max(0, placed.length - 1) * job.kerfMm + job.trimMm
  if (!(needed <= stock.lengthMm + EVEN_MM)) faults.push(`${needed} on ${stock.lengthMm}`)

  const left = Math.max(0, end - free)
  if (!isEven(left, pattern.offcutMm))
    faults.push(`offcut ${pattern.offcutMm}, but ${left} is left`)
  const isSorted = pattern.pieces.every(
    ({ lengthMm }, i) => i === 0 || lengthMm <= (pattern.pieces[i - 1]?.lengthMm ?? 0) + EVEN_MM,
  )
  if (!isSorted) faults.push('longest not first')
  return faults
}

const checkCopies = (job: LumberJob, { patterns }: LumberAnswer): readonly string[] =>
  job.parts.flatMap(({ count }, part) => {
    const made = patterns.reduce(
      (sum, p) => sum + p.count * p.pieces.filter((piece) => piece.part === part).length,
      0,
    )
    return made === count ? [] : [`part ${part} is cut ${made} times, not ${count}`]
  })

const checkPurchase = (job: LumberJob, answer: LumberAnswer): readonly string[] => {
  const bought = job.stocks.map((_, stock) =>
    answer.patterns.reduce((sum, p) => sum + (p.stock === stock ? p.count : 0), 0),
  )
  const price = job.stocks.reduce((sum, stock, i) => sum + stock.price * (bought[i] ?? 0), 0)
  const boards = answer.patterns.reduce((sum, { count }) => sum + count, 0)
  return [
    ...job.stocks.flatMap(({ count = Infinity }, i) =>
      (bought[i] ?? 0) > count ? [`${bought[i]} of stock ${i}, but there are ${count}`] : [],
    ),
    ...(isSamePrice(price, answer.price) ? [] : [`price ${answer.price}, not ${price}`]),
    ...(boards === answer.boards ? [] : [`${answer.boards} boards, not ${boards}`]),
  ]
}

const checkClaims = (job: LumberJob, answer: LumberAnswer): readonly string[] => {
  const { price, bound, proven, certificate, plainPrice } = answer
  const isCounted = job.stocks.some(({ count }) => count !== undefined)
  return [
    ...(bound <= price + EVEN_PRICE && bound >= 0 ? [] : [`bound ${bound}, price ${price}`]),
    ...(proven && !isSamePrice(bound, price) ? [`proven, but bound ${bound} of ${price}`] : []),
    ...(proven && certificate === undefined ? ['proven without a certificate'] : []),
    // Plain cutting of counted boards may need more than there are, so it may be cheaper.
    ...(isCounted || plainPrice >= price - EVEN_PRICE ? [] : [`plain cutting costs ${plainPrice}`]),
  ]
}

const isCount = (value: number): boolean => Number.isInteger(value) && value > 0

const isEven = (a: number, b: number): boolean => Math.abs(a - b) <= EVEN_MM

const isSamePrice = (a: number, b: number): boolean => Math.abs(a - b) <= EVEN_PRICE
