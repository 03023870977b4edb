import type { HeatLevel } from '../../reports/heat/field/heatColours.ts'
import { formatTemperature, type TemperatureUnit } from '../../units/temperature.ts'

/** The ticks stand close: the unit is named at the ends, and tenths only if any of them has some. */
export const tickWords = (
  levels: readonly HeatLevel[],
  unit: TemperatureUnit,
): readonly string[] => {
  const withTenths = levels.map(({ celsius }) =>
    formatTemperature(celsius, unit).replace(/ °[CF]$/, ''),
  )
  return withTenths.every((tick) => tick.endsWith('.0'))
    ? withTenths.map((tick) => tick.slice(0, -2))
    : withTenths
}

/** More figures than the bar has room for on a small screen; every other one has to go. */
export const areClose = (ticks: readonly string[]): boolean => ticks.join('').length > 28

/** `-10 °C`, `-8.5 °C`. */
export const degreesShort = (celsius: number, unit: TemperatureUnit): string =>
  formatTemperature(celsius, unit).replace('.0 ', ' ')
