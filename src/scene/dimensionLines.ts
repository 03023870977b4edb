import type { Box } from '../geometry/box.ts'
import { type Vec3, vec3 } from '../geometry/vector.ts'
import type { HiveDimensions } from '../hive/dimensions.ts'
import { dot, minus, plus, scaled, unit } from './vectors.ts'

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

/** Lines nearer than this to the line of sight are too short to read: the cosine between them. */
const END_ON = 0.97
/** Below this rise of the eye, rows on the ground would fall together; they hang down instead. */
const LEVEL = 0.3

/** What of the eye's place the lines depend on; equal keys give equal lines. */
export const dimensionKey = (towardsEye: Vec3): string => {
  const u = unit(towardsEye)
  const ends = [u.x, u.y, u.z].map((c) => (Math.abs(c) > END_ON ? 'e' : '.')).join('')
  return `${u.x < 0 ? '-' : '+'}${u.z < 0 ? '-' : '+'}${Math.abs(u.y) < LEVEL ? 'l' : '.'}${ends}`
}

/**
 * Overall and inside length, width and height of the closed hive, in two rows outside it, on the
 * sides that face the eye; height at the outline. `bounds` is the box around the closed hive.
 * What would be seen end-on is left out.
 */
export const dimensionLines = (
  d: HiveDimensions,
  bounds: Box,
  towardsEye: Vec3,
): readonly DimensionLine[] => {
  const row = ROW_SHARE * Math.min(d.outerWidth, d.outerLength)
  const eye = unit(towardsEye)
  const isLevel = Math.abs(eye.y) < LEVEL
  const [sideX, sideZ] = [eye.x < 0 ? -1 : 1, eye.z < 0 ? -1 : 1]
  const [nearX, farX] = sideX < 0 ? [bounds.x0, bounds.x1] : [bounds.x1, bounds.x0]
  const nearZ = sideZ < 0 ? bounds.z0 : bounds.z1
  const down = vec3(0, -1, 0)
  // From straight above, the roof would cover what lies on the ground.
  const y = eye.y > END_ON ? bounds.y1 : bounds.y0
  const along = (name: DimensionLine['name'], [x0, x1, n]: readonly [number, number, number]) =>
    measured(name, {
      from: vec3(x0, y, nearZ),
      to: vec3(x1, y, nearZ),
      outward: isLevel ? down : vec3(0, 0, sideZ),
      offset: n * row,
    })
  const across = (name: DimensionLine['name'], [z0, z1, n]: readonly [number, number, number]) =>
    measured(name, {
      from: vec3(nearX, y, z0),
      to: vec3(nearX, y, z1),
      outward: isLevel ? down : vec3(sideX, 0, 0),
      offset: n * row,
    })
  const upright = (name: DimensionLine['name'], [y0, y1, n]: readonly [number, number, number]) =>
    measured(name, {
      from: vec3(farX, y0, nearZ),
      to: vec3(farX, y1, nearZ),
      // Seen along x, what stands out along x would hide the line behind its own end.
      outward: Math.abs(eye.x) > Math.abs(eye.z) ? vec3(0, 0, sideZ) : vec3(-sideX, 0, 0),
      offset: n * row,
    })
  const lines = [
    along('inside-length', [0, d.cavityLength, 1]),
    along('length', [bounds.x0, bounds.x1, 2]),
    across('inside-width', [-d.cavityWidth / 2, d.cavityWidth / 2, 1]),
    across('width', [bounds.z0, bounds.z1, 2]),
    upright('inside-height', [0, d.cavityHeight, 1]),
    upright('height', [bounds.y0, bounds.y1, 2]),
  ]
  return lines.filter(({ from, to }) => Math.abs(dot(unit(minus(to, from)), eye)) <= END_ON)
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
