import type { NumberField } from '../../design/field.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { readNumber, showWithUnit, stepOf } from './numberShown.ts'

/** What became of a typed number, with the sentence that tells it. */
export type Commit =
  | { readonly kind: 'set'; readonly value: number; readonly note: string }
  | { readonly kind: 'error'; readonly note: string }

/**
 * Reads a typed number and brings it into the field's range. The note says what was understood and,
 * when the value had to be changed, why; it is empty when there is nothing to say.
 */
export const commitNumber = (
  field: NumberField,
  text: string,
  context: { readonly stored: number; readonly units: UnitPreferences },
): Commit => {
  const read = readNumber(field, text, context)
  if (read.kind === 'error') return { kind: 'error', note: read.message }
  const value = bringIntoRange(field, read.value)
  const show = (v: number) => showWithUnit(field, v, context.units)
  if (value === read.value) {
    const isPlain = read.understood === text.trim() || read.understood === show(value)
    return { kind: 'set', value, note: isPlain ? '' : `Read as ${read.understood}.` }
  }
  if (read.value > field.max) {
    return {
      kind: 'set',
      value,
      note: `${show(read.value)} is too much: set to ${show(value)}, the most.`,
    }
  }
  if (read.value < field.min) {
    return {
      kind: 'set',
      value,
      note: `${show(read.value)} is too little: set to ${show(value)}, the least.`,
    }
  }
  return { kind: 'set', value, note: `Set to ${show(value)}: only whole numbers here.` }
}

/** The nearest value that the field may hold. */
export const bringIntoRange = (field: NumberField, value: number): number => {
  const whole = field.whole ? Math.round(value) : value
  return Math.min(field.max, Math.max(field.min, whole))
}

/** The value `steps` presses away, on round values of the unit shown, inside the range. */
export const stepNumber = (
  field: NumberField,
  value: number,
  by: { readonly steps: number; readonly units: UnitPreferences },
): number => {
  const step = stepOf(field, by.units)
  // A value between two round ones goes to the next round one, not a whole step past it.
  const place = value / step
  const from = by.steps > 0 ? Math.floor(place + SLACK) : Math.ceil(place - SLACK)
  return bringIntoRange(field, tidy((from + by.steps) * step))
}

/** The round value nearest to `value`, for a drag. */
export const snapNumber = (field: NumberField, value: number, units: UnitPreferences): number => {
  const step = stepOf(field, units)
  return bringIntoRange(field, tidy(Math.round(value / step) * step))
}

/** Binary noise of the division, far below any step. */
const SLACK = 1e-6

/** 0.30000000000000004 is 0.3; twelve figures keep every 1/32 inch exact. */
const tidy = (value: number): number => Number(value.toPrecision(12))
