/** A unit in which lengths are whole numbers, and whether they are so without rounding. */
export interface WholeUnit {
  readonly unitMm: number
  readonly isExact: boolean
}

/** Largest number of units in a length: areas of whole purchases then stay exact in 53 bits. */
const MOST_UNITS = 2 ** 24
/** Lengths are read to a millionth of a millimetre: 1/64 inch is 0.396875 mm. */
const FINEST_PER_MM = 1e6

/**
 * The largest unit of which all lengths are whole multiples, so a tenth of a millimetre or 1/32 inch is
 * found where a job is drawn in it. Where none gives fewer than 2^24 units, a rounding unit.
 */
export function findWholeUnit(lengthsMm: readonly number[]): WholeUnit {
  const longestMm = lengthsMm.reduce((most, length) => Math.max(most, length), 0)
  let common = 0
  for (const length of lengthsMm) {
    const fine = Math.round(length * FINEST_PER_MM)
    // A length between two steps has no exact unit here.
    if (Math.abs(fine - length * FINEST_PER_MM) > 1e-3) return roundingUnit(longestMm)
    common = greatestDivisor(common, fine)
  }
  if (common === 0) return { unitMm: 1, isExact: true }
  const unitMm = common / FINEST_PER_MM
  return longestMm / unitMm <= MOST_UNITS ? { unitMm, isExact: true } : roundingUnit(longestMm)
}

/** The smallest multiple of all prices' common unit that is not below a price, but for rounding. */
export function roundUpPrice(price: number, prices: readonly number[]): number {
  const unit = findWholeUnit(prices)
  if (!unit.isExact) return price
  return Math.ceil(price / unit.unitMm - 1e-6) * unit.unitMm
}

/** The length in whole units, never longer than it is. */
export function roundDown(lengthMm: number, unit: WholeUnit): number {
  const units = lengthMm / unit.unitMm
  return unit.isExact ? Math.round(units) : Math.floor(units + 1e-9)
}

/** The length in whole units, never shorter than it is. */
export function roundUp(lengthMm: number, unit: WholeUnit): number {
  const units = lengthMm / unit.unitMm
  return unit.isExact ? Math.round(units) : Math.ceil(units - 1e-9)
}

function roundingUnit(longestMm: number): WholeUnit {
  return { unitMm: Math.max(0.001, longestMm / MOST_UNITS), isExact: false }
}

function greatestDivisor(a: number, b: number): number {
  let [larger, smaller] = [a, b]
  while (smaller > 0) [larger, smaller] = [smaller, larger % smaller]
  return larger
}
