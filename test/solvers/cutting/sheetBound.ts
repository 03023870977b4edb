import type { SheetJob, SheetStock } from '../../../src/solvers/cutting/sheets/sheetJob.ts'

/** Part of a sheet that rounding may add. */
const SLACK = 1e-9

/**
 * A price that no plan is below, by area and by pairs of dual feasible functions (Fekete & Schepers
 * 2001). The functions are superadditive, so what fits side by side into any length is worth no more
 * than the length (the area is the pair of the lengths themselves). Written apart from the solver's, to
 * see whether its bounds can be had by other hands too.
 */
export const sheetBound = (job: SheetJob): number => {
  const side = (mm: number): number => mm - 2 * job.trimMm + job.kerfMm
  const [longest, widest] = [
    Math.max(...job.stocks.map(({ lengthMm }) => side(lengthMm))),
    Math.max(...job.stocks.map(({ widthMm }) => side(widthMm))),
  ]
  const along = distinctTables(job, functionsOf(job, longest))
  const across = distinctTables(job, functionsOf(job, widest))
  const covers = along.flatMap((f) =>
    across.map((g): Cover => {
      let asked = 0
      job.parts.forEach(({ count, mayTurn }, i) => {
        const value = (f.lengths[i] ?? 0) * (g.widths[i] ?? 0)
        const turned = (f.widths[i] ?? 0) * (g.lengths[i] ?? 0)
        asked += count * (mayTurn ? Math.min(value, turned) : value)
      })
      const values = job.stocks.map((_, i) => (f.alongStocks[i] ?? 0) * (g.acrossStocks[i] ?? 0))
      return { asked, values, least: leastForShares(job.stocks, asked, values) }
    }),
  )
  // Whole sheets cost more than shares of them; to count them is slow, so for the best pairs only.
  const best = covers.toSorted((a, b) => b.least - a.least).slice(0, MOST_COUNTED)
  return Math.max(...best.map((cover) => leastForSheets(job.stocks, cover)))
}

const MOST_COUNTED = 60

/** What the parts are worth in all and each sheet is at most, and the price that this forces. */
interface Cover {
  readonly asked: number
  readonly values: readonly number[]
  readonly least: number
}

/** What a function gives for the sides of all parts, a kerf added, and of all sheets, trimmed. */
interface Table {
  readonly lengths: readonly number[]
  readonly widths: readonly number[]
  readonly alongStocks: readonly number[]
  readonly acrossStocks: readonly number[]
}

const distinctTables = (job: SheetJob, functions: readonly DualFunction[]): readonly Table[] => {
  const added = job.kerfMm - 2 * job.trimMm
  const tables = functions.map((dual) => ({
    lengths: job.parts.map(({ lengthMm }) => dual(lengthMm + job.kerfMm)),
    widths: job.parts.map(({ widthMm }) => dual(widthMm + job.kerfMm)),
    alongStocks: job.stocks.map(({ lengthMm }) => dual(lengthMm + added)),
    acrossStocks: job.stocks.map(({ widthMm }) => dual(widthMm + added)),
  }))
  return [...new Map(tables.map((table) => [JSON.stringify(table), table])).values()]
}

/** The price when parts of a sheet could be bought. */
const leastForShares = (
  stocks: readonly SheetStock[],
  asked: number,
  values: readonly number[],
): number => {
  let [missing, spent] = [asked, 0]
  for (const stock of byWorth(stocks, values)) {
    const bought = Math.min(missing / stock.value, stock.count)
    missing -= bought * stock.value
    spent += bought * stock.price
  }
  return missing > asked * SLACK ? Infinity : spent
}

/** The price of the cheapest whole sheets that are worth what is asked for. */
const leastForSheets = (stocks: readonly SheetStock[], { asked, values }: Cover): number => {
  const sheets = byWorth(stocks, values)
  let least = Infinity
  const buy = (index: number, missing: number, spent: number): void => {
    if (missing <= asked * SLACK) {
      least = Math.min(least, spent)
      return
    }
    const sheet = sheets[index]
    // What follows is worth no more for the money than this one.
    if (sheet === undefined || spent + (missing / sheet.value) * sheet.price >= least) return
    const enough = Math.ceil((missing / sheet.value) * (1 - SLACK))
    for (let bought = Math.min(enough, sheet.count); bought >= 0; bought--) {
      buy(index + 1, missing - bought * sheet.value, spent + bought * sheet.price)
    }
  }
  buy(0, asked, 0)
  return least
}

/** The most worth for the money first, so that a good purchase is found early. */
const byWorth = (stocks: readonly SheetStock[], values: readonly number[]) =>
  stocks
    .map(({ price, count = Infinity }, i) => ({ price, count, value: values[i] ?? 0 }))
    .filter(({ value }) => value > 0)
    .toSorted((a, b) => a.price / a.value - b.price / b.value)

/** All lengths and widths, a kerf added. */
const sizesOf = (job: SheetJob): readonly number[] => [
  ...new Set(job.parts.flatMap((p) => [p.lengthMm + job.kerfMm, p.widthMm + job.kerfMm])),
]

/** For sizes that fit side by side into the side, the values add up to 1 at most. */
type DualFunction = (size: number) => number

const MOST_SHARES = 24

/** u^(k), U^(ε) and φ^(ε) of Fekete & Schepers 2001, and f0 of Carlier, Clautiaux & Moukrim 2007. */
const functionsOf = (job: SheetJob, side: number): readonly DualFunction[] => {
  const steps = [...new Set(sizesOf(job).flatMap((size) => [size, side - size, side - size + 1]))]
  const shares = Array.from({ length: MOST_SHARES }, (_, i) => i + 1)
  return [
    (size) => size / side,
    ...shares.map(
      (k): DualFunction =>
        (size) => {
          const scaled = ((k + 1) * size) / side
          return Math.abs(scaled - Math.round(scaled)) < SLACK
            ? size / side
            : Math.floor(scaled) / k
        },
    ),
    ...steps
      .filter((step) => step > 0 && step <= side / 2)
      .flatMap((step): DualFunction[] => [
        (size) => (size > side - step ? 1 : size < step ? 0 : size / side),
        (size) => roundedTo(step, size, side),
        (size) => large(step, size, side),
      ]),
  ]
}

/** How many steps a size takes; what is above one half takes all that its rest leaves. */
const roundedTo = (step: number, size: number, side: number): number => {
  const whole = Math.floor(side / step)
  if (2 * size > side) return 1 - Math.floor((side - size) / step) / whole
  return 2 * size === side ? 0.5 : Math.floor(size / step) / whole
}

/** Small sizes count nothing, middling ones all alike. */
const large = (step: number, size: number, side: number): number => {
  const whole = Math.floor(side / step)
  if (2 * size > side) return 1 - Math.floor((side - size) / step) / whole
  return size >= step ? 1 / whole : 0
}
