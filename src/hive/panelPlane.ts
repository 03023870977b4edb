import type { Box } from '../geometry/box.ts'
import type { Rect } from '../geometry/rect.ts'
import type { Axis, Vec3 } from '../geometry/vector.ts'
import type { HiveDimensions } from './dimensions.ts'
import { BACKWARD, DOWN, FORWARD, LEFT, RIGHT, UP } from './directions.ts'

export type PanelId = 'front-wall' | 'back-wall' | 'left-wall' | 'right-wall' | 'lid' | 'floor'

/**
 * The plane of a panel's inner face. u and v lie in the plane, n counts outwards from the inner face:
 * walls have u along the wall and v up; floor and lid have u = x and v = z.
 */
export interface PanelPlane {
  readonly id: PanelId
  readonly uAxis: Axis
  readonly vAxis: Axis
  readonly normal: Axis
  /** Where the inner face lies on the normal axis, and which way is out. */
  readonly at: number
  readonly out: 1 | -1
  readonly outward: Vec3
  /** What the panel bounds of the cavity: its outline on the inner face. */
  readonly cavity: Rect
}

/** The planes of all six panels. */
export const panelPlanes = (d: HiveDimensions): Readonly<Record<PanelId, PanelPlane>> => {
  const [halfWidth, height] = [d.cavityWidth / 2, d.coverLedgeHeight]
  const long: Rect = { u0: 0, u1: d.cavityLength, v0: 0, v1: height }
  const end: Rect = { u0: -halfWidth, u1: halfWidth, v0: 0, v1: height }
  const flat: Rect = { u0: 0, u1: d.cavityLength, v0: -halfWidth, v1: halfWidth }
  const wall = { vAxis: 'y' } as const
  const slab = { uAxis: 'x', vAxis: 'z', normal: 'y' } as const
  return {
    'front-wall': {
      id: 'front-wall',
      ...wall,
      uAxis: 'x',
      normal: 'z',
      at: halfWidth,
      out: 1,
      outward: FORWARD,
      cavity: long,
    },
    'back-wall': {
      id: 'back-wall',
      ...wall,
      uAxis: 'x',
      normal: 'z',
      at: -halfWidth,
      out: -1,
      outward: BACKWARD,
      cavity: long,
    },
    'left-wall': {
      id: 'left-wall',
      ...wall,
      uAxis: 'z',
      normal: 'x',
      at: 0,
      out: -1,
      outward: LEFT,
      cavity: end,
    },
    'right-wall': {
      id: 'right-wall',
      ...wall,
      uAxis: 'z',
      normal: 'x',
      at: d.cavityLength,
      out: 1,
      outward: RIGHT,
      cavity: end,
    },
    floor: { id: 'floor', ...slab, at: 0, out: -1, outward: DOWN, cavity: flat },
    lid: { id: 'lid', ...slab, at: d.wallTop, out: 1, outward: UP, cavity: flat },
  }
}

/** The box over a rectangle of the plane, from `n0` to `n1` outwards. */
export const boxOn = (plane: PanelPlane, r: Rect, n0: number, n1: number): Box => {
  const a = plane.at + plane.out * n0
  const b = plane.at + plane.out * n1
  const [lo, hi] = [Math.min(a, b), Math.max(a, b)]
  switch (plane.normal) {
    case 'x':
      return { x0: lo, x1: hi, y0: r.v0, y1: r.v1, z0: r.u0, z1: r.u1 }
    case 'y':
      return { x0: r.u0, x1: r.u1, y0: lo, y1: hi, z0: r.v0, z1: r.v1 }
    case 'z':
      return { x0: r.u0, x1: r.u1, y0: r.v0, y1: r.v1, z0: lo, z1: hi }
  }
}
