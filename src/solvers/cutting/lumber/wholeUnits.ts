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

/**
 * The smallest of 1, 5, 10, 50, 100 … that divides `longest` into at most `mostCells`. Each divides the
 * next, so that what holds on a coarse grid with pieces rounded down holds on a finer one.
 */
export const roundGrid = (longest: number, mostCells: number): number => {
  let grid = 1
  let isFive = false
  while (longest / grid > mostCells) {
    grid *= isFive ? 2 : 5
    isFive = !isFive
  }
  return grid
}

/** Price units in one unit of money: hundredths, or the first finer power of ten that all are whole in. */
export const priceUnitsPerMoney = (prices: readonly number[]): number => {
  let units = 100
  while (units < 1e6 && !prices.every((price) => isWhole(price * units))) units *= 10
  return units
}

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= 1e-6
