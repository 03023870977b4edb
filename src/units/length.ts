import { type Fraction, formatFraction, scaleFraction } from './fraction.ts'
import { formatTrimmed, NO_VALUE } from './number.ts'
import type { ParseFailure } from './parseFailure.ts'
import { explainQuantity, parseQuantity, type UnitSet } from './quantity.ts'

/** How lengths are shown and how a bare number is read. The document holds millimetres only. */
export type LengthUnit = 'mm' | 'in'

export interface LengthRead {
  readonly kind: 'ok'
  readonly mm: number
  /** What was understood, to show beside the field: `16 1/2 in (419.1 mm)`. */
  readonly understood: string
}

export type ParsedLength = LengthRead | ParseFailure

export interface LengthFormat {
  /** Adds ` mm` or ` in`. Without it the number stands alone, for fields, tables and drawings. */
  readonly withUnit?: boolean
  /** Inches only: the finest fraction shown. 32 unless told. */
  readonly denominator?: 16 | 32 | 64
  /** Millimetres only: the most decimals shown. 1 unless told. */
  readonly decimals?: number
}

/**
 * Reads a length as people write it: `418`, `41,8 cm`, `16 1/2`, `16-1/2"`, `1' 4 1/2"`, `½ in`.
 * A bare number is in `unit`. The result is the double nearest to the exact size, so a length gives
 * the same millimetres in whichever unit it was typed. May be negative; limits are the schema's.
 */
export function parseLength(text: string, unit: LengthUnit): ParsedLength {
  const read = parseQuantity(text, unit, LENGTH_UNITS)
  if (read.kind === 'error') return read
  const mm = scaleFraction(read.amount, MM_PER_UNIT[read.unit])
  return { kind: 'ok', mm, understood: explainLength(mm, unit, read.understood) }
}

/**
 * Shows a length: millimetres to 0.1 with no zeros at the end (`418`, `9.5`), inches to the nearest
 * 1/32 as a reduced fraction (`16 1/2`, `-3/4`); never feet. Rounds what is shown, never what is
 * stored. A value that is not finite gives `NO_VALUE`.
 */
export function formatLength(mm: number, unit: LengthUnit, options: LengthFormat = {}): string {
  if (!Number.isFinite(mm)) return NO_VALUE
  const { withUnit = false, denominator = 32, decimals = 1 } = options
  const text =
    unit === 'mm' ? formatTrimmed(mm, decimals) : formatFraction(nearestInches(mm, denominator))
  return withUnit ? `${text} ${unit}` : text
}

/** What an arrow key or a nudge adds, in mm: 1 mm, or 1/16 in (1.5875 mm). */
export function lengthStepMm(unit: LengthUnit): number {
  return unit === 'mm' ? 1 : 1.5875
}

// The inch is 25.4 mm and the foot 304.8 mm exactly (NIST SP 811, 2008, appendix B.8).
const MM_PER_UNIT = {
  mm: { numerator: 1, denominator: 1 },
  cm: { numerator: 10, denominator: 1 },
  m: { numerator: 1000, denominator: 1 },
  in: { numerator: 127, denominator: 5 },
  ft: { numerator: 1524, denominator: 5 },
} as const satisfies Record<string, Fraction>

const LENGTH_UNITS: UnitSet<keyof typeof MM_PER_UNIT> = {
  noun: 'a length',
  example: '418 mm, 41.8 cm, 16 1/2 in or 1\' 4 1/2"',
  unitBySuffix: new Map([
    ['mm', 'mm'],
    ['cm', 'cm'],
    ['m', 'm'],
    ['in', 'in'],
    ['inch', 'in'],
    ['inches', 'in'],
    ['"', 'in'],
    ['ft', 'ft'],
    ['foot', 'ft'],
    ['feet', 'ft'],
    ["'", 'ft'],
  ]),
  pair: { major: 'ft', minor: 'in', minorsPerMajor: 12 },
}

function nearestInches(mm: number, denominator: number): Fraction {
  // The small push makes every exact half go the same way, away from zero, despite binary noise.
  const parts = Math.round((Math.abs(mm) * 10 * denominator) / 254 + 1e-9)
  return { numerator: mm < 0 ? -parts : parts, denominator }
}

/** What was typed, then the size as it will be shown, then in mm; none of them twice. */
function explainLength(mm: number, unit: LengthUnit, typed: string): string {
  const others: string[] = []
  if (unit === 'in') {
    const shown = formatLength(mm, 'in', { withUnit: true })
    const parts = nearestInches(mm, 32)
    const offMm = mm - scaleFraction(parts, MM_PER_UNIT.in)
    if (shown !== typed) others.push(Math.abs(offMm) > 1e-9 ? `about ${shown}` : shown)
  }
  if (!typed.endsWith(' mm')) others.push(formatLength(mm, 'mm', { withUnit: true, decimals: 2 }))
  return explainQuantity(typed, others)
}
