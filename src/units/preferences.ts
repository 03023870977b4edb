import type { LengthUnit } from './length.ts'
import type { MassUnit } from './mass.ts'
import type { TemperatureUnit } from './temperature.ts'
import type { ThermalUnit } from './thermal.ts'

/** The units a person reads and types in. They change what is shown, never what is stored. */
export interface UnitPreferences {
  readonly length: LengthUnit
  readonly thermal: ThermalUnit
  readonly mass: MassUnit
  readonly temperature: TemperatureUnit
}

export const METRIC: UnitPreferences = {
  length: 'mm',
  thermal: 'rsi',
  mass: 'kg',
  temperature: 'c',
}

/** US workshop practice. */
export const INCH: UnitPreferences = { length: 'in', thermal: 'us', mass: 'lb', temperature: 'f' }
