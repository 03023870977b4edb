import type { Box } from '../geometry/box.ts'
import { type Vec3, vec3 } from '../geometry/vector.ts'
import type { HiveDimensions } from '../hive/dimensions.ts'
import { dot, minus, plus, scaled } from './vectors.ts'

/** One dimension as a draughtsman draws it: the measured line and what leads from the object to it. */
export interface DimensionLine {
  readonly name: 'length' | 'width' | 'height' | 'inside-length' | 'inside-width' | 'inside-height'
  readonly valueMm: number
  readonly from: Vec3
  readonly to: Vec3
  /** Extension lines from just off the object to just past the dimension line. */
  readonly extensions: readonly (readonly [Vec3, Vec3])[]
  /** The way the extension lines run, unit; ticks lie between it and the line. */
  readonly outward: Vec3
}

/** Distance of the first row from the object, between the rows, and of the gaps at the ends, mm. */
const ROW_SHARE = 0.13
const GAP = 8
const PAST = 14

/**
 * Overall and inside length, width and height of the closed hive, in two rows outside it: length
 * along the front, width along the right end, height at the right front corner. `bounds` is the box
 * around the closed hive.
 */
export const dimensionLines = (d: HiveDimensions, bounds: Box): readonly DimensionLine[] => {
  const row = ROW_SHARE * Math.min(d.outerWidth, d.outerLength)
  const y = bounds.y0
  const along = (name: DimensionLine['name'], [x0, x1, n]: readonly [number, number, number]) =>
    measured(name, {
      from: vec3(x0, y, bounds.z1),
      to: vec3(x1, y, bounds.z1),
      outward: vec3(0, 0, 1),
      offset: n * row,
    })
  const across = (name: DimensionLine['name'], [z0, z1, n]: readonly [number, number, number]) =>
    measured(name, {
      from: vec3(bounds.x1, y, z0),
      to: vec3(bounds.x1, y, z1),
      outward: vec3(1, 0, 0),
      offset: n * row,
    })
  const upright = (name: DimensionLine['name'], [y0, y1, n]: readonly [number, number, number]) =>
    measured(name, {
      from: vec3(bounds.x0, y0, bounds.z1),
      to: vec3(bounds.x0, y1, bounds.z1),
      outward: vec3(-1, 0, 0),
      offset: n * row,
    })
  return [
    along('inside-length', [0, d.cavityLength, 1]),
    along('length', [bounds.x0, bounds.x1, 2]),
    across('inside-width', [-d.cavityWidth / 2, d.cavityWidth / 2, 1]),
    across('width', [bounds.z0, bounds.z1, 2]),
    upright('inside-height', [0, d.cavityHeight, 1]),
    upright('height', [bounds.y0, bounds.y1, 2]),
  ]
}

interface Measured {
  readonly from: Vec3
  readonly to: Vec3
  readonly outward: Vec3
  readonly offset: number
}

const measured = (name: DimensionLine['name'], m: Measured): DimensionLine => {
  const out = (p: Vec3, way: number): Vec3 => plus(p, scaled(m.outward, way))
  const way = minus(m.to, m.from)
  return {
    name,
    valueMm: Math.sqrt(dot(way, way)),
    from: out(m.from, m.offset),
    to: out(m.to, m.offset),
    extensions: [m.from, m.to].map((p) => [out(p, GAP), out(p, m.offset + PAST)] as const),
    outward: m.outward,
  }
}
