import { type Fraction, scaleFraction } from './fraction.ts'
import { formatNumber, NO_VALUE } from './number.ts'
import { type ParseFailure, refuse } from './parseFailure.ts'
import { explainQuantity, parseQuantity, type UnitSet } from './quantity.ts'

/** How masses are shown and how a bare number is read. The document holds kilograms only. */
export type MassUnit = 'kg' | 'lb'

export interface MassRead {
  readonly kind: 'ok'
  readonly kg: number
  /** What was understood: `5 lb 4 oz (2.38 kg)`. */
  readonly understood: string
}

export type ParsedMass = MassRead | ParseFailure

export interface MassFormat {
  /** Without it, the decimals that keep about three figures: 0.045, 4.52, 45.2. */
  readonly decimals?: number
}

/** Reads a mass of 0 or more: `12.5`, `450 g`, `27 1/2 lb`, `5 lb 4 oz`. Bare numbers in `unit`. */
export function parseMass(text: string, unit: MassUnit): ParsedMass {
  const read = parseQuantity(text, unit, MASS_UNITS)
  if (read.kind === 'error') return read
  if (read.amount.numerator < 0) return refuse('A mass cannot be less than 0.')
  const kg = scaleFraction(read.amount, KG_PER_UNIT[read.unit])
  const others = new Set([formatMass(kg, unit), formatMass(kg, 'kg')])
  // What was typed in kg or lb need not be said again in it.
  if (read.unit === 'kg' || read.unit === 'lb') others.delete(formatMass(kg, read.unit))
  return { kind: 'ok', kg, understood: explainQuantity(read.understood, [...others]) }
}

/** `45.2 kg`, `4.52 kg`, `0.045 kg`, `99.6 lb`. Pounds are decimal; `NO_VALUE` if not finite. */
export function formatMass(kg: number, unit: MassUnit, options: MassFormat = {}): string {
  const amount = unit === 'kg' ? kg : kg / KG_PER_LB
  if (!Number.isFinite(amount)) return NO_VALUE
  return `${formatNumber(amount, options.decimals ?? usefulDecimals(amount))} ${unit}`
}

function usefulDecimals(amount: number): number {
  const size = Math.abs(amount)
  if (size === 0 || size >= 10) return 1
  return size >= 1 ? 2 : 3
}

// The avoirdupois pound is 0.453 592 37 kg exactly (NIST SP 811, 2008, appendix B.8); 16 oz to it.
const KG_PER_LB = 0.45359237

const KG_PER_UNIT = {
  kg: { numerator: 1, denominator: 1 },
  g: { numerator: 1, denominator: 1000 },
  lb: { numerator: 45_359_237, denominator: 100_000_000 },
  oz: { numerator: 45_359_237, denominator: 1_600_000_000 },
} as const satisfies Record<string, Fraction>

const MASS_UNITS: UnitSet<keyof typeof KG_PER_UNIT> = {
  noun: 'a mass',
  example: '12.5 kg, 450 g or 27 1/2 lb',
  unitBySuffix: new Map([
    ['kg', 'kg'],
    ['g', 'g'],
    ['lb', 'lb'],
    ['lbs', 'lb'],
    ['oz', 'oz'],
  ]),
  pair: { major: 'lb', minor: 'oz', minorsPerMajor: 16 },
}
