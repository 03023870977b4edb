import type { Setting } from '../../reports/shop/setups/setUpReport.ts'
import { formatLength, type LengthUnit } from '../../units/length.ts'
import { formatTrimmed } from '../../units/number.ts'

/** A setting as it is read off a fence, a bevel gauge or a drill: `124 mm`, `4°`, `Ø 8 mm`. */
export const settingWords = (setting: Setting, unit: LengthUnit): string => {
  switch (setting.kind) {
    case 'length':
      return formatLength(setting.mm, unit, { withUnit: true })
    case 'angle':
      return `${formatTrimmed(setting.deg, 1)}°`
    case 'diameter':
      return `Ø ${formatLength(setting.mm, unit, { withUnit: true })}`
  }
}
