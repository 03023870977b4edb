import type { Hive } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import type { ViewSpec } from './composeView.ts'
import { outlineOf } from './outlineView.ts'
import { FROM_FRONT } from './projection.ts'

/** The closed hive from the front, with its lengths below and its heights above the ground at the left. */
export const frontView = (hive: Hive, units: UnitPreferences): ViewSpec => {
  const d = hive.dimensions
  const outline = outlineOf(hive.parts, FROM_FRONT)
  const middle = d.cavityLength / 2
  const show = (mm: number) => formatLength(mm, units.length)
  const across = (name: string, length: number, note: string, shortNote: string) => ({
    name,
    value: show(length),
    note,
    shortNote,
    u0: middle - length / 2,
    u1: middle + length / 2,
  })
  const height = (name: string, top: number, note: string, shortNote: string) => ({
    name,
    value: show(top - d.groundHeight),
    note,
    shortNote,
    v0: d.groundHeight,
    v1: top,
  })
  const wholeHeight = formatLength(d.roofTop - d.groundHeight, units.length, { decimals: 0 })
  return {
    title: 'Front view',
    outline,
    ground: d.groundHeight,
    below: [
      across('cavityLength', d.cavityLength, 'inside', 'inside'),
      across('outerLength', d.outerLength, 'over the walls', 'walls'),
      across('roofLength', d.roofLength, 'over the roof', 'roof'),
    ],
    left: [
      height('workingHeight', d.frameTop, 'to the top bars', 'top bars'),
      height('wallTopHeight', d.wallTop, 'to the wall top', 'wall top'),
      // No one measures a roof to a tenth of a millimetre.
      { ...height('roofTopHeight', d.roofTop, 'in all', 'in all'), value: wholeHeight },
    ],
    right: [],
  }
}
