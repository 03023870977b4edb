/** Lengths are read in whole nanometres, so that sums and comparisons are exact. */
const UNITS_PER_MM = 1e6

export const toNanometres = (mm: number): number => Math.round(mm * UNITS_PER_MM)

/** Dust of floating point sums, in nanometres: no reason to go to the next one. */
const DUST = 1e-3

/** Never more than the length: three thirds of a board must fit it, though a third has no last digit. */
export const nanometresWithin = (mm: number): number => Math.floor(mm * UNITS_PER_MM + DUST)

/** Never less than the length. */
export const nanometresAround = (mm: number): number => Math.ceil(mm * UNITS_PER_MM - DUST)

export const toMillimetres = (nanometres: number): number => nanometres / UNITS_PER_MM

/** Greatest common divisor of whole numbers; 0 for none. */
export const commonDivisor = (values: readonly number[]): number => {
  let divisor = 0
  for (const value of values) {
    let rest = Math.abs(value)
    while (rest > 0) {
      const next = divisor % rest
      divisor = rest
      rest = next
    }
  }
  return divisor
}

/** No finer grid is looked at: this many cells on the longest board. */
const FINEST_CELLS = 200_000

/**
 * A unit that divides `longest` into at most `mostCells`, as fine as can be: the smallest of 1, 5, 10,
 * 50, 100 … with at most 200 000 cells, times a whole number. What holds on such a grid with pieces
 * rounded down holds on the finer one that it is a multiple of.
 */
export const roundGrid = (longest: number, mostCells: number): number => {
  let fine = 1
  for (let isFive = false; longest / fine > FINEST_CELLS; isFive = !isFive) fine *= isFive ? 2 : 5
  return fine * Math.max(1, Math.ceil(longest / fine / mostCells))
}

/** Price units in one unit of money: hundredths, or the first finer power of ten that all are whole in. */
export const priceUnitsPerMoney = (prices: readonly number[]): number => {
  let units = 100
  while (units < 1e6 && !prices.every((price) => isWhole(price * units))) units *= 10
  return units
}

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= 1e-6
