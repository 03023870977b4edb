import { formatNumber } from '../../units/number.ts'
import type { TemperatureUnit } from '../../units/temperature.ts'

/** A temperature without its unit, whole where it is whole: `-5`, `12.5`. */
export const temperatureNumber = (celsius: number, unit: TemperatureUnit): string => {
  const degrees = unit === 'c' ? celsius : (celsius * 9) / 5 + 32
  const isWhole = Math.abs(degrees - Math.round(degrees)) < 1e-6
  return formatNumber(degrees, isWhole ? 0 : 1)
}

export const degreeSign = (unit: TemperatureUnit): string => (unit === 'c' ? '°C' : '°F')
