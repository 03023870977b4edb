import type { HiveDimensions } from '../hive/dimensions.ts'
import { formatLength, type LengthUnit } from '../units/length.ts'

/** The outside of the closed hive as length × width × height: `1040 × 560 × 520 mm`. */
export const outsideSize = (dimensions: HiveDimensions, unit: LengthUnit): string => {
  const { outerLength, outerWidth, outerHeight } = dimensions
  // A whole millimetre or sixteenth is as near as anyone measures a finished hive.
  const show = (mm: number) =>
    formatLength(mm, unit, unit === 'mm' ? { decimals: 0 } : { denominator: 16 })
  return `${[outerLength, outerWidth, outerHeight].map(show).join(' × ')} ${unit}`
}
