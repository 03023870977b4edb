import type { Hive } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import type { UprightSpec, ViewSpec } from './composeView.ts'
import { cutParts } from './cutParts.ts'
import type { CutPlane } from './cutSolid.ts'
import { boundsOf } from './polygon2.ts'
import { sectionItems } from './sectionItems.ts'
import { sectionPlace } from './sectionPlace.ts'

/**
 * Across the hive, seen from the right-hand end, without the stand: inside width and heights measured
 * from the floor. Only what the plane cuts is drawn.
 */
export const crossSection = (hive: Hive, units: UnitPreferences): ViewSpec => {
  const d = hive.dimensions
  const across = (name: string, width: number, note: string) => ({
    name,
    value: formatLength(width, units.length),
    note,
    u0: -width / 2,
    u1: width / 2,
  })
  return {
    title: 'Section across the hive',
    ...cutOf(hive, { axis: 'x', at: sectionPlace(hive) }),
    below: [
      across('cavityWidth', d.cavityWidth, 'inside'),
      across('outerWidth', d.outerWidth, 'over the walls'),
    ],
    left: heightsFromFloor(hive, units),
    right: [],
  }
}

/** Along the hive through the middle of the frames, seen from the front: the row of frames and boards. */
export const lengthSection = (hive: Hive, units: UnitPreferences): ViewSpec => {
  const d = hive.dimensions
  return {
    title: 'Section along the hive',
    shortTitle: 'Section along',
    ...cutOf(hive, { axis: 'z', at: 0 }),
    below: [
      {
        name: 'cavityLength',
        value: formatLength(d.cavityLength, units.length),
        note: 'inside',
        u0: 0,
        u1: d.cavityLength,
      },
    ],
    left: [
      {
        name: 'coverLedgeHeight',
        value: formatLength(d.coverLedgeHeight, units.length),
        note: 'to the covers',
        shortNote: 'covers',
        v0: 0,
        v1: d.coverLedgeHeight,
      },
    ],
    right: [],
  }
}

const cutOf = (hive: Hive, plane: CutPlane): Pick<ViewSpec, 'outline' | 'fill'> => {
  const parts = hive.parts.filter((p) => p.group !== 'stand' && p.group !== 'hardware')
  const cuts = cutParts(parts, plane)
  const corners = cuts.flatMap((c) => c.faces.flat())
  const bounds = corners.length > 0 ? boundsOf(corners) : { u0: 0, u1: 0, v0: 0, v1: 0 }
  return { outline: { lines: [], bounds }, fill: (view) => sectionItems(cuts, view) }
}

const heightsFromFloor = (
  { dimensions: d }: Hive,
  units: UnitPreferences,
): readonly UprightSpec[] =>
  (
    [
      ['restHeight', d.restHeight, 'floor to rest'],
      ['coverLedgeHeight', d.coverLedgeHeight, 'floor to cover ledge'],
      ['wallTop', d.wallTop, 'floor to wall top'],
    ] as const
  ).map(([name, v1, note]) => ({ name, value: formatLength(v1, units.length), note, v0: 0, v1 }))
