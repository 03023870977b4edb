import type { Hive } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import type { ViewDrawing } from '../view.ts'
import { composeView, type ViewSpec } from './composeView.ts'
import { cutParts } from './cutParts.ts'
import { boundsOf } from './polygon2.ts'
import { sectionItems } from './sectionItems.ts'
import { sectionPlace } from './sectionPlace.ts'

/** A section as a view: its dimension lines, and how to fill it once the scale is known. */
export interface SectionSpec extends ViewSpec {
  readonly compose: (scaleDenominator: number) => ViewDrawing
}

/**
 * Across the hive, seen from the right-hand end, without the stand: inside width and heights measured
 * from the floor. Only what the plane cuts is drawn.
 */
export const crossSection = (hive: Hive, units: UnitPreferences): SectionSpec => {
  const d = hive.dimensions
  const parts = hive.parts.filter((p) => p.group !== 'stand' && p.group !== 'hardware')
  const cuts = cutParts(parts, { axis: 'x', at: sectionPlace(hive) })
  const bounds = boundsOf(cuts.flatMap((c) => c.faces.flat()))
  const show = (mm: number) => formatLength(mm, units.length)
  const height = (name: string, top: number, note: string) => ({
    name,
    value: show(top),
    note,
    v0: 0,
    v1: top,
  })
  const spec: ViewSpec = {
    title: 'Section across the hive',
    outline: { lines: [], bounds },
    below: [
      {
        name: 'cavityWidth',
        value: show(d.cavityWidth),
        note: 'inside',
        u0: -d.cavityWidth / 2,
        u1: d.cavityWidth / 2,
      },
      {
        name: 'outerWidth',
        value: show(d.outerWidth),
        note: 'over the walls',
        u0: -d.outerWidth / 2,
        u1: d.outerWidth / 2,
      },
    ],
    left: [
      height('restHeight', d.restHeight, 'floor to rest'),
      height('coverLedgeHeight', d.coverLedgeHeight, 'floor to cover ledge'),
      height('wallTop', d.wallTop, 'floor to wall top'),
    ],
    right: [],
  }
  return {
    ...spec,
    compose: (scaleDenominator) => {
      const base = composeView(spec, scaleDenominator)
      return { ...base, items: [...sectionItems(cuts, base.view), ...base.items] }
    },
  }
}
