import type { FastenerSize, HardwareItem } from '../../reports/shop/fasteners/fastenerReport.ts'
import { formatLength, type LengthUnit } from '../../units/length.ts'
import { formatTrimmed } from '../../units/number.ts'

const KIND: Readonly<Record<FastenerSize['kind'], string>> = {
  screw: 'Screw',
  nail: 'Nail',
  peg: 'Peg',
  staple: 'Staple',
}

/**
 * `Screw 4 × 50, stainless steel`. Diameters stay metric, as they are marked; the length is said in
 * inches too where those are read.
 */
export const fastenerWords = (size: FastenerSize, unit: LengthUnit): string => {
  const metric = `${formatTrimmed(size.diameterMm, 1)} × ${formatTrimmed(size.lengthMm, 0)} mm`
  const inches = unit === 'in' ? ` (${formatLength(size.lengthMm, 'in', { withUnit: true })})` : ''
  return `${KIND[size.kind]} ${metric}${inches}, ${size.finish}`
}

const UNIT_WORDS: Readonly<Record<HardwareItem['unit'], string>> = {
  each: '',
  pair: ' pairs',
  m: ' m',
  m2: ' m²',
}

/** `2`, `3 pairs`, `1.8 m`. */
export const hardwareCount = ({ count, unit }: Pick<HardwareItem, 'count' | 'unit'>): string =>
  `${formatTrimmed(count, 1)}${unit === 'pair' && count === 1 ? ' pair' : UNIT_WORDS[unit]}`
