import type { Hive } from '../hive/hive.ts'
import { formatLength } from '../units/length.ts'
import type { UnitPreferences } from '../units/preferences.ts'
import type { ViewDrawing } from './view.ts'
import { fitView, type ViewSpec } from './views/composeView.ts'
import { cutParts } from './views/cutParts.ts'
import type { CutPlane } from './views/cutSolid.ts'
import { boundsOf } from './views/polygon2.ts'
import { sectionItems } from './views/sectionItems.ts'

/** A sheet of the proportions of a screen. */
const AREA = { widthMm: 400, heightMm: 280 }

/**
 * The hive cut anywhere across (x, seen from the right-hand end) or along (z, seen from the front), with
 * its inside sizes: the stand-in for the 3D view where there is none. `at` is in model mm; where the
 * plane misses the hive, the drawing is empty but for its title. Items carry the ids of their parts.
 */
export const sectionDrawing = (
  hive: Hive,
  plane: CutPlane,
  units: UnitPreferences,
): ViewDrawing => {
  const d = hive.dimensions
  const cuts = cutParts(hive.parts, plane)
  const corners = cuts.flatMap((c) => c.faces.flat())
  const bounds = corners.length > 0 ? boundsOf(corners) : { u0: 0, u1: 0, v0: 0, v1: 0 }
  const isAcross = plane.axis === 'x'
  const inside = isAcross ? d.cavityWidth : d.cavityLength
  const from = isAcross ? -inside / 2 : 0
  const show = (mm: number) => formatLength(mm, units.length)
  const dimensions: Pick<ViewSpec, 'below' | 'left'> =
    cuts.length === 0
      ? { below: [], left: [] }
      : {
          below: [
            {
              name: isAcross ? 'cavityWidth' : 'cavityLength',
              value: show(inside),
              note: 'inside',
              u0: from,
              u1: from + inside,
            },
          ],
          left: [
            {
              name: 'restHeight',
              value: show(d.restHeight),
              note: 'floor to rest',
              v0: 0,
              v1: d.restHeight,
            },
            {
              name: 'coverLedgeHeight',
              value: show(d.coverLedgeHeight),
              note: 'floor to cover ledge',
              v0: 0,
              v1: d.coverLedgeHeight,
            },
          ],
        }
  const spec: ViewSpec = {
    title: isAcross ? 'Section across the hive' : 'Section along the hive',
    outline: { lines: [], bounds },
    fill: (view) => sectionItems(cuts, view),
    ...dimensions,
    right: [],
  }
  return fitView(spec, AREA)
}
