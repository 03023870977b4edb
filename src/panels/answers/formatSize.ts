import { formatLength, type LengthUnit } from '../../units/length.ts'

interface Size {
  readonly lengthMm: number
  readonly widthMm: number
  readonly thicknessMm: number
}

/** `1040 × 420 × 12`, as it is written on a cut list. */
export const formatSize = (size: Size, unit: LengthUnit): string =>
  [size.lengthMm, size.widthMm, size.thicknessMm].map((mm) => formatLength(mm, unit)).join(' × ')
