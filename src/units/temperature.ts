import { formatNumber, NO_VALUE } from './number.ts'
import { type ParseFailure, refuse } from './parseFailure.ts'
import { plainText } from './plainText.ts'
import { explainQuantity, parseQuantity, type UnitSet } from './quantity.ts'

/** How temperatures are shown and how a bare number is read. The document holds °C only. */
export type TemperatureUnit = 'c' | 'f'

export interface TemperatureRead {
  readonly kind: 'ok'
  readonly celsius: number
  /** What was understood: `50 °F (10.0 °C)`. */
  readonly understood: string
}

export type ParsedTemperature = TemperatureRead | ParseFailure

export interface TemperatureFormat {
  /** 1 unless told. */
  readonly decimals?: number
}

/** Reads `-5`, `20 °C`, `68F`. A bare number is in `unit`. Refuses less than absolute zero. */
export function parseTemperature(text: string, unit: TemperatureUnit): ParsedTemperature {
  const withoutDegree = plainText(text).replace(/ ?° ?/, ' ')
  const read = parseQuantity(withoutDegree, NAME[unit], TEMPERATURE_UNITS)
  if (read.kind === 'error') return read
  const { numerator, denominator } = read.amount
  // °C = (°F - 32) * 5/9, exactly (NIST SP 811, 2008, appendix B.8), as one division.
  const celsius =
    read.unit === '°C'
      ? numerator / denominator
      : ((numerator - 32 * denominator) * 5) / (9 * denominator)
  if (celsius < ABSOLUTE_ZERO_C) {
    return refuse('Nothing can be colder than -273.15 °C (-459.67 °F).')
  }
  // Temperatures are shown in the preferred unit and held in °C: name each if not typed so.
  const others = new Set<TemperatureUnit>([unit, 'c'])
  others.delete(read.unit === '°C' ? 'c' : 'f')
  const shown = [...others].map((other) => formatTemperature(celsius, other))
  return { kind: 'ok', celsius, understood: explainQuantity(read.understood, shown) }
}

/** `-5.0 °C` or `23.0 °F`; `NO_VALUE` if not finite. */
export function formatTemperature(
  celsius: number,
  unit: TemperatureUnit,
  options: TemperatureFormat = {},
): string {
  const degrees = unit === 'c' ? celsius : (celsius * 9) / 5 + 32
  return withDegrees(degrees, unit, options)
}

/** A difference, such as a margin above the dew point: 3 K is `3.0 °C` or `5.4 °F`, with no 32. */
export function formatTemperatureDifference(
  kelvins: number,
  unit: TemperatureUnit,
  options: TemperatureFormat = {},
): string {
  return withDegrees(unit === 'c' ? kelvins : (kelvins * 9) / 5, unit, options)
}

function withDegrees(degrees: number, unit: TemperatureUnit, options: TemperatureFormat): string {
  if (!Number.isFinite(degrees)) return NO_VALUE
  return `${formatNumber(degrees, options.decimals ?? 1)} ${NAME[unit]}`
}

const ABSOLUTE_ZERO_C = -273.15

const NAME = { c: '°C', f: '°F' } as const

const TEMPERATURE_UNITS: UnitSet<'°C' | '°F'> = {
  noun: 'a temperature',
  example: '-5 °C or 23 °F',
  unitBySuffix: new Map([
    ['c', '°C'],
    ['f', '°F'],
  ]),
}
