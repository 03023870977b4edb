import type { LengthUnit } from '../units/length.ts'
import { formatNumber, formatTrimmed } from '../units/number.ts'
import type { CsvNumber } from './csvText.ts'

const MM_PER_IN = 25.4

/** Lengths for spreadsheets: inches are decimal, because `1/2` is taken for a date. */
export const csvLength =
  (unit: LengthUnit) =>
  (mm: number): CsvNumber => ({
    number: unit === 'mm' ? formatTrimmed(mm, 1) : formatTrimmed(mm / MM_PER_IN, 4),
  })

export const csvCount = (count: number): CsvNumber => ({ number: formatTrimmed(count, 3) })

/** Money, with two places as tills have it. */
export const csvMoney = (price: number): CsvNumber => ({ number: formatNumber(price, 2) })
