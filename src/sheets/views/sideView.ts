import type { Hive } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import type { ViewSpec } from './composeView.ts'
import { outlineOf } from './outlineView.ts'
import { FROM_LEFT, FROM_RIGHT } from './projection.ts'

/**
 * The closed hive from one end. Third-angle projection sets the right-hand end at the right of the front
 * view, first-angle the left-hand end. Widths below; heights of the ledges above the ground at the right.
 */
export const sideView = (hive: Hive, units: UnitPreferences, end: 'left' | 'right'): ViewSpec => {
  const d = hive.dimensions
  const show = (mm: number) => formatLength(mm, units.length)
  const across = (name: string, width: number, note: string, shortNote: string) => ({
    name,
    value: show(width),
    note,
    shortNote,
    u0: -width / 2,
    u1: width / 2,
  })
  const height = (name: string, top: number, note: string, shortNote: string) => ({
    name,
    value: show(top - d.groundHeight),
    note,
    shortNote,
    v0: d.groundHeight,
    v1: top,
  })
  return {
    title: end === 'left' ? 'View from the left end' : 'View from the right end',
    outline: outlineOf(hive.parts, end === 'left' ? FROM_LEFT : FROM_RIGHT),
    ground: d.groundHeight,
    below: [
      across('cavityWidth', d.cavityWidth, 'inside', 'inside'),
      across('outerWidth', d.outerWidth, 'over the walls', 'walls'),
      across('roofWidth', d.roofWidth, 'over the roof', 'roof'),
    ],
    left: [],
    right: [
      height('restHeight', d.restHeight, 'to the frame rest', 'rest'),
      height('coverLedgeHeight', d.coverLedgeHeight, 'to the cover ledge', 'ledge'),
    ],
  }
}
