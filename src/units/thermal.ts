import { type Fraction, scaleFraction } from './fraction.ts'
import { formatNumber, NO_VALUE } from './number.ts'
import { type ParseFailure, refuse } from './parseFailure.ts'
import { plainText } from './plainText.ts'
import { explainQuantity, parseQuantity, type UnitSet } from './quantity.ts'

/** How resistance to heat is shown and a bare number read. The document holds m²·K/W only. */
export type ThermalUnit = 'rsi' | 'us'

export interface ResistanceRead {
  readonly kind: 'ok'
  readonly m2KPerW: number
  /** What was understood: `R 9.2 (RSI 1.62)`. */
  readonly understood: string
}

export type ParsedResistance = ResistanceRead | ParseFailure

/**
 * Reads a thermal resistance of 0 or more: `1.62`, `RSI 1.62`, `R 9.2`, `R-13`, `1.62 m²·K/W`,
 * `9.2 h·ft²·°F/Btu`. A bare number is in `unit`; R always means the US value, as it does on every
 * page of ours, and the text understood shows both.
 */
export function parseResistance(text: string, unit: ThermalUnit): ParsedResistance {
  const read = parseQuantity(numberFirst(text), NAME[unit], RESISTANCE_UNITS)
  if (read.kind === 'error') return read
  if (read.amount.numerator < 0) {
    return refuse('A resistance cannot be less than 0.')
  }
  const m2KPerW = scaleFraction(read.amount, RSI_PER_UNIT[read.unit])
  const amount = read.understood.slice(0, -read.unit.length - 1)
  const other = formatResistance(m2KPerW, read.unit === 'R' ? 'rsi' : 'us')
  const understood = explainQuantity(`${read.unit} ${amount}`, [other])
  return { kind: 'ok', m2KPerW, understood }
}

/** `RSI 1.62` (m²·K/W) or `R 9.2` (h·ft²·°F/Btu); `NO_VALUE` if not finite. */
export function formatResistance(rsiM2KPerW: number, unit: ThermalUnit): string {
  if (!Number.isFinite(rsiM2KPerW)) return NO_VALUE
  return unit === 'rsi'
    ? `RSI ${formatNumber(rsiM2KPerW, 2)}`
    : `R ${formatNumber(rsiM2KPerW * US_R_PER_RSI, 1)}`
}

/**
 * Heat lost for each degree, of a whole hive or a panel: `1.83 W/K` or `3.5 Btu/(h·°F)`, with these
 * decimals or with the two and one that are usual.
 */
export function formatConductance(wPerK: number, unit: ThermalUnit, decimals?: number): string {
  if (!Number.isFinite(wPerK)) return NO_VALUE
  return unit === 'rsi'
    ? `${formatNumber(wPerK, decimals ?? 2)} W/K`
    : `${formatNumber(wPerK * BTU_PER_H_F_PER_W_PER_K, decimals ?? 1)} Btu/(h·°F)`
}

/**
 * A certain band of conductance, rounded outwards to hundredths so that what is shown still holds the
 * truth: `1.22 and 1.25 W/K`.
 */
export function formatConductanceBand(
  lowerWPerK: number,
  upperWPerK: number,
  unit: ThermalUnit,
): string {
  const scale = unit === 'rsi' ? 1 : BTU_PER_H_F_PER_W_PER_K
  // A narrow band would be lost in hundredths.
  const decimals = (upperWPerK - lowerWPerK) * scale < 0.015 ? 3 : 2
  const whole = 10 ** decimals
  // A last digit that is met but for binary noise stays.
  const down = Math.floor(lowerWPerK * scale * whole + 1e-9) / whole
  const up = Math.ceil(upperWPerK * scale * whole - 1e-9) / whole
  const name = unit === 'rsi' ? 'W/K' : 'Btu/(h·°F)'
  return `${formatNumber(down, decimals)} and ${formatNumber(up, decimals)} ${name}`
}

/** A conductance with as many decimals as it needs: `1.23 W/K`, `0.043 W/K`. */
export function formatFineConductance(wPerK: number, unit: ThermalUnit): string {
  return formatConductance(wPerK, unit, Math.abs(wPerK) < 0.0995 ? 3 : 2)
}

/** Heat lost for each degree and area: `0.62 W/(m²·K)` or `0.109 Btu/(h·ft²·°F)`. */
export function formatUValue(wPerM2K: number, unit: ThermalUnit): string {
  if (!Number.isFinite(wPerM2K)) return NO_VALUE
  return unit === 'rsi'
    ? `${formatNumber(wPerM2K, 2)} W/(m²·K)`
    : `${formatNumber(wPerM2K / US_R_PER_RSI, 3)} Btu/(h·ft²·°F)`
}

// Exact definitions (NIST SP 811, 2008, appendix B.8 and its footnotes): lb = 0.453 592 37 kg,
// Btu (International Table) = 4186.8 J/(kg·K) * lb * 5/9 K = 1055.055 852 62 J, ft = 0.3048 m.
const J_PER_BTU = 1055.05585262
const S_PER_H = 3600
const M2_PER_FT2 = 0.09290304
const K_PER_F = 5 / 9

// 1 m²·K/W in h·ft²·°F/Btu = Btu / (h · ft² · 5/9 K) = 1055.055 852 62 / 185.806 08 = 5.678 263 341.
const US_R_PER_RSI = J_PER_BTU / (S_PER_H * M2_PER_FT2 * K_PER_F)

// 1 W/K in Btu/(h·°F) = 3600 s · 5/9 K / 1055.055 852 62 J = 1.895 634 241.
const BTU_PER_H_F_PER_W_PER_K = (S_PER_H * K_PER_F) / J_PER_BTU

const RSI_PER_UNIT = {
  RSI: { numerator: 1, denominator: 1 },
  // 185.806 08 / 1055.055 852 62, both times 10^8.
  R: { numerator: 18_580_608_000, denominator: 105_505_585_262 },
} as const satisfies Record<string, Fraction>

const NAME = { rsi: 'RSI', us: 'R' } as const

const RESISTANCE_UNITS: UnitSet<keyof typeof RSI_PER_UNIT> = {
  noun: 'a resistance',
  example: 'RSI 1.62 or R 9.2',
  unitBySuffix: new Map([
    ['rsi', 'RSI'],
    ['r', 'R'],
  ]),
}

/** Turns `R-9.2` and `9.2 h·ft²·°F/Btu` into `9.2 r`, the form that the common reader takes. */
function numberFirst(text: string): string {
  const plain = plainText(text)
    .replace(/ ?m[2²][·⋅* ]?k ?\/ ?w$/, ' rsi')
    .replace(/ ?(?:(?:hr?|ft[2²]|°?f)[·⋅* ]?){3} ?\/ ?btu$/, ' r')
  const named = /^(rsi|r)(?: ?- ?| )?([^a-z].*)$/.exec(plain)
  return named ? `${named[2]} ${named[1]}` : plain
}
