import type { NumberField } from '../../design/field.ts'
import { formatLength, lengthStepMm, parseLength } from '../../units/length.ts'
import { formatMass, parseMass } from '../../units/mass.ts'
import { formatTrimmed, parseNumber } from '../../units/number.ts'
import type { ParseFailure } from '../../units/parseFailure.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { formatTemperature, parseTemperature } from '../../units/temperature.ts'
import { formatResistance, parseResistance } from '../../units/thermal.ts'

/** A typed number as the document would hold it, and what was understood. */
export type ReadNumber =
  | { readonly kind: 'ok'; readonly value: number; readonly understood: string }
  | ParseFailure

/** The value as it stands in its field, without its unit: `16 1/2`, `1.6`, `35`. */
export const showNumber = (field: NumberField, value: number, units: UnitPreferences): string =>
  splitUnit(showWithUnit(field, value, units)).figure

/** The unit's name beside the field; empty for a count. */
export const unitName = (field: NumberField, units: UnitPreferences): string =>
  splitUnit(showWithUnit(field, field.default, units)).unit

/** The least and the most that a field takes: `30 to 55 mm`, `RSI 0.2 to 8`. */
export const showRange = (field: NumberField, units: UnitPreferences): string => {
  const low = field.quantity === 'resistance' ? showWithUnit : showNumber
  const high = field.quantity === 'resistance' ? showNumber : showWithUnit
  return `${low(field, field.min, units)} to ${high(field, field.max, units)}`
}

/** The value with its unit, for sentences and for screen readers. */
export const showWithUnit = (field: NumberField, value: number, units: UnitPreferences): string => {
  switch (field.quantity) {
    case 'length':
      return formatLength(value, units.length, { withUnit: true, decimals: 2 })
    case 'mass':
      return trimZeros(formatMass(value, units.mass, { decimals: 2 }))
    case 'temperature':
      return trimZeros(formatTemperature(value, units.temperature, { decimals: 1 }))
    case 'resistance':
      return trimZeros(formatResistance(value, units.thermal))
    case 'angle':
      return `${formatTrimmed(value, 1)}°`
    case 'percent':
      return `${formatTrimmed(value, 1)} %`
    case 'count':
      return formatTrimmed(value, 0)
    case 'money':
      return formatTrimmed(value, 2)
  }
}

/**
 * Reads what was typed. Text that still stands as it was shown gives back the stored number itself,
 * so that walking through the fields in inches moves nothing.
 */
export const readNumber = (
  field: NumberField,
  text: string,
  context: { readonly stored: number; readonly units: UnitPreferences },
): ReadNumber => {
  const { stored, units } = context
  const shown = showNumber(field, stored, units)
  const read = parseTyped(field, text, units)
  return read.kind === 'ok' && text.trim() === shown ? { ...read, value: stored } : read
}

/** One press of a step button, in the stored unit but round in the unit shown. */
export const stepOf = (field: NumberField, units: UnitPreferences): number => {
  const { quantity, step } = field
  if (quantity === 'length' && units.length === 'in') return lengthStepMm('in') * sixteenths(step)
  if (quantity === 'mass' && units.mass === 'lb')
    return storedOr(parseMass('1 lb', 'lb'), 'kg', step)
  if (quantity === 'resistance' && units.thermal === 'us') {
    return storedOr(parseResistance('R 0.5', 'us'), 'm2KPerW', step)
  }
  // One degree Fahrenheit; zero °C is a whole number of them, so steps meet whole degrees.
  if (quantity === 'temperature' && units.temperature === 'f') return (step * 5) / 9
  return step
}

const sixteenths = (stepMm: number): number => {
  if (stepMm < 1) return 0.5
  if (stepMm < 5) return 1
  if (stepMm < 10) return 4
  return stepMm < 100 ? 8 : 64
}

const storedOr = <K extends string>(
  read: ({ readonly kind: 'ok' } & Readonly<Record<K, number>>) | ParseFailure,
  key: K,
  otherwise: number,
): number => (read.kind === 'ok' ? read[key] : otherwise)

const parseTyped = (field: NumberField, text: string, units: UnitPreferences): ReadNumber => {
  switch (field.quantity) {
    case 'length': {
      const read = parseLength(text, units.length)
      return read.kind === 'ok' ? { ...read, value: read.mm } : read
    }
    case 'mass': {
      const read = parseMass(text, units.mass)
      return read.kind === 'ok' ? { ...read, value: read.kg } : read
    }
    case 'temperature': {
      const read = parseTemperature(text, units.temperature)
      return read.kind === 'ok' ? { ...read, value: read.celsius } : read
    }
    case 'resistance': {
      const read = parseResistance(text, units.thermal)
      return read.kind === 'ok' ? { ...read, value: read.m2KPerW } : read
    }
    case 'angle':
      return parsePlain(text.replace(/\s*(°|º|deg(rees?)?)\s*$/i, ''), '°')
    case 'percent':
      return parsePlain(text.replace(/\s*(%|per ?cent)\s*$/i, ''), ' %')
    case 'count':
    case 'money':
      return parsePlain(text, '')
  }
}

const parsePlain = (text: string, unit: string): ReadNumber => {
  const read = parseNumber(text)
  return read.kind === 'ok'
    ? { kind: 'ok', value: read.value, understood: `${read.understood}${unit}` }
    : read
}

/** `RSI 1.62` and `45.2 kg` as figure and unit; the figure is the part that starts with a digit. */
export const splitUnit = (shown: string): { readonly figure: string; readonly unit: string } => {
  const named = /^([A-Z]+) (.*)$/.exec(shown)
  if (named) return { figure: named[2] ?? '', unit: named[1] ?? '' }
  const found = /^([-–\d./ ]*[\d–])\s*(.*)$/.exec(shown)
  return { figure: found?.[1] ?? shown, unit: found?.[2] ?? '' }
}

const trimZeros = (shown: string): string =>
  shown.replace(/(\.\d*?)0+(?=\D|$)/, '$1').replace(/\.(?=\D|$)/, '')
