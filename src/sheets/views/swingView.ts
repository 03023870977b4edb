import type { Hinge, Hive } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import type { ModelPoint } from '../view.ts'
import type { ViewSpec } from './composeView.ts'
import { outlineOf } from './outlineView.ts'
import { convexHull } from './polygon2.ts'
import { FROM_RIGHT, project } from './projection.ts'
import { shapeOf } from './shape.ts'

/** Turns a place on the paper about the hinge by its whole opening angle. */
const turnOpen = (p: ModelPoint, hinge: Hinge): ModelPoint => {
  const centre = project(FROM_RIGHT, hinge.point)
  // Seen from +x, a right-handed turn about +x runs anticlockwise.
  const angle = (hinge.sense * hinge.openDeg * Math.PI) / 180
  const [du, dv] = [p.u - centre.u, p.v - centre.v]
  return {
    u: centre.u + du * Math.cos(angle) - dv * Math.sin(angle),
    v: centre.v + du * Math.sin(angle) + dv * Math.cos(angle),
  }
}

/**
 * The hive from the right-hand end with lid and floor open, drawn as chain lines round each: what room
 * they need above, behind and below.
 */
export const swingView = (hive: Hive, units: UnitPreferences): ViewSpec => {
  const d = hive.dimensions
  const closed = outlineOf(hive.parts, FROM_RIGHT)
  const ghosts = hive.hinges.map((hinge) => {
    const corners = hive.parts
      .filter((p) => p.motion === hinge.motion)
      .flatMap((p) => p.solids.flatMap((s) => shapeOf(p.id, s, FROM_RIGHT).hull))
    return convexHull(corners.map((p) => turnOpen(p, hinge)))
  })
  const points = ghosts.flat()
  const b = closed.bounds
  const bounds = {
    u0: Math.min(b.u0, ...points.map((p) => p.u)),
    u1: Math.max(b.u1, ...points.map((p) => p.u)),
    v0: Math.min(b.v0, ...points.map((p) => p.v)),
    v1: Math.max(b.v1, ...points.map((p) => p.v)),
  }
  const show = (mm: number) => formatLength(mm, units.length, { decimals: 0 })
  return {
    title: 'Lid and floor open',
    outline: { lines: closed.lines, bounds },
    ghosts,
    ground: d.groundHeight,
    below: [
      {
        name: 'swingWidth',
        value: show(bounds.u1 - bounds.u0),
        note: 'to keep clear',
        u0: bounds.u0,
        u1: bounds.u1,
      },
    ],
    left: [],
    right: [
      {
        name: 'swingHeight',
        value: show(bounds.v1 - d.groundHeight),
        note: 'with the lid open',
        v0: d.groundHeight,
        v1: bounds.v1,
      },
    ],
  }
}
