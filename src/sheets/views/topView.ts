import type { Hive } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import type { ViewSpec } from './composeView.ts'
import { outlineOf } from './outlineView.ts'
import { FROM_ABOVE } from './projection.ts'

/** The closed hive from above; the front is at the foot. */
export const topView = (hive: Hive, units: UnitPreferences): ViewSpec => {
  const d = hive.dimensions
  const middle = d.cavityLength / 2
  return {
    title: 'Top view',
    outline: outlineOf(hive.parts, FROM_ABOVE),
    below: [
      {
        name: 'roofLength',
        value: formatLength(d.roofLength, units.length),
        note: 'over the roof',
        shortNote: 'roof',
        u0: middle - d.roofLength / 2,
        u1: middle + d.roofLength / 2,
      },
    ],
    left: [
      {
        name: 'roofWidth',
        value: formatLength(d.roofWidth, units.length),
        note: 'over the roof',
        shortNote: 'roof',
        v0: -d.roofWidth / 2,
        v1: d.roofWidth / 2,
      },
    ],
    right: [],
  }
}

/** The hive from above with lid and covers off: the row of frames, with the inside sizes. */
export const openTopView = (hive: Hive, units: UnitPreferences): ViewSpec => {
  const d = hive.dimensions
  const show = (mm: number) => formatLength(mm, units.length)
  const open = hive.parts.filter((p) => p.motion !== 'lid' && p.motion !== 'cover')
  return {
    title: 'Top view, lid and covers off',
    shortTitle: 'Frames from above',
    outline: outlineOf(open, FROM_ABOVE),
    below: [
      {
        name: 'cavityLength',
        value: show(d.cavityLength),
        note: 'inside',
        u0: 0,
        u1: d.cavityLength,
      },
      {
        name: 'outerLength',
        value: show(d.outerLength),
        note: 'over the walls',
        shortNote: 'walls',
        u0: d.cavityLength / 2 - d.outerLength / 2,
        u1: d.cavityLength / 2 + d.outerLength / 2,
      },
    ],
    left: [
      {
        name: 'cavityWidth',
        value: show(d.cavityWidth),
        note: 'inside',
        v0: -d.cavityWidth / 2,
        v1: d.cavityWidth / 2,
      },
      {
        name: 'outerWidth',
        value: show(d.outerWidth),
        note: 'over the walls',
        shortNote: 'walls',
        v0: -d.outerWidth / 2,
        v1: d.outerWidth / 2,
      },
    ],
    right: [],
  }
}
