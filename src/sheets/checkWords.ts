import type { Check, CheckQuantity } from '../reports/checks/runChecks.ts'
import { formatEntranceArea } from '../units/area.ts'
import { formatLength } from '../units/length.ts'
import { formatMass } from '../units/mass.ts'
import { formatTrimmed } from '../units/number.ts'
import type { UnitPreferences } from '../units/preferences.ts'
import { formatResistance } from '../units/thermal.ts'

/** A check's value in the person's units. Lengths are mm, areas mm² in the report. */
export const formatMeasured = (
  quantity: CheckQuantity,
  value: number,
  units: UnitPreferences,
): string => {
  switch (quantity) {
    case 'length':
      return formatLength(value, units.length, { withUnit: true })
    case 'area':
      return formatEntranceArea(value / MM2_PER_M2, units.length)
    case 'resistance':
      return formatResistance(value, units.thermal)
    case 'mass':
      return formatMass(value, units.mass)
    case 'angle':
      return `${formatTrimmed(value, 1)}°`
    case 'count':
      return formatTrimmed(value, 0)
    case 'ratio':
    case 'none':
      return formatTrimmed(value, 2)
  }
}

/** The limits in words: `at least 6 mm and at most 10 mm`; empty when there are none. */
export const formatLimits = (check: Check, units: UnitPreferences): string => {
  const { low, high } = check.limits
  const show = (value: number) => formatMeasured(check.quantity, value, units)
  if (low !== undefined && high !== undefined) {
    return low === high ? show(low) : `${show(low)} to ${show(high)}`
  }
  if (low !== undefined) return `at least ${show(low)}`
  return high === undefined ? '' : `at most ${show(high)}`
}

const MM2_PER_M2 = 1e6
