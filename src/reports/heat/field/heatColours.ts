import type { TemperatureUnit } from '../../../units/temperature.ts'

/** A colour in sRGB, 0 to 255 each. */
export interface Rgb {
  readonly r: number
  readonly g: number
  readonly b: number
}

/** The colour of a temperature: `share` 0 is the air outside, 1 the air inside; clamped. */
export const heatColour = (_share: number): Rgb => ({ r: 0, g: 0, b: 0 })

/** One line of equal temperature. */
export interface HeatLevel {
  readonly celsius: number
  readonly share: number
}

/**
 * Round temperatures between outside and inside, for isotherms and the legend: every 5 K, or 2 K or
 * 10 K where that gives between 4 and 9 lines; in steps that are round in the unit shown.
 */
export const heatLevels = (
  _outsideC: number,
  _insideC: number,
  _unit: TemperatureUnit,
): readonly HeatLevel[] => []
