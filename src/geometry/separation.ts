import { type Solid, solidBounds } from './solid.ts'
import { solidCorners } from './solidFrame.ts'
import type { Vec3 } from './vector.ts'

const AXES: readonly Vec3[] = [
  { x: 1, y: 0, z: 0 },
  { x: 0, y: 1, z: 0 },
  { x: 0, y: 0, z: 1 },
]

/** Unit normals of a prism's sloping sides; a box has none besides the axes. */
const slopingNormals = (solid: Solid): readonly Vec3[] => {
  if (solid.kind === 'box') return []
  return solid.polygon.flatMap((a, i) => {
    const b = solid.polygon[(i + 1) % solid.polygon.length] ?? a
    const [du, dv] = [b.u - a.u, b.v - a.v]
    const size = Math.hypot(du, dv)
    if (size === 0 || du === 0 || dv === 0) return []
    const [nu, nv] = [dv / size, -du / size]
    return solid.axis === 'x'
      ? [{ x: 0, y: nv, z: nu }]
      : solid.axis === 'y'
        ? [{ x: nu, y: 0, z: nv }]
        : [{ x: nu, y: nv, z: 0 }]
  })
}

const gapAlong = (axis: Vec3, a: readonly Vec3[], b: readonly Vec3[]): number => {
  const along = (p: Vec3) => p.x * axis.x + p.y * axis.y + p.z * axis.z
  const as = a.map(along)
  const bs = b.map(along)
  return Math.max(Math.min(...as) - Math.max(...bs), Math.min(...bs) - Math.max(...as))
}

/** Every direction that could part two solids: the axes and the normals of sloping sides. */
const partingAxes = (a: Solid, b: Solid): readonly Vec3[] => [
  ...AXES,
  ...slopingNormals(a),
  ...slopingNormals(b),
]

/** Signed gaps of two boxes along x, y, z, mm. */
const boundsGap = (a: Solid, b: Solid): number => {
  const [p, q] = [solidBounds(a), solidBounds(b)]
  return Math.max(p.x0 - q.x1, q.x0 - p.x1, p.y0 - q.y1, q.y0 - p.y1, p.z0 - q.z1, q.z0 - p.z1)
}

/**
 * How far two convex solids are apart, mm: the largest gap over the separating axes. Negative is the
 * depth to which they overlap. Exact for boxes and for prisms along one axis (separating axis theorem);
 * for prisms along different axes it may call a near miss an overlap, never the reverse, because the
 * edge-to-edge axes are left out.
 */
export const separation = (a: Solid, b: Solid): number => {
  if (a.kind === 'box' && b.kind === 'box') return boundsGap(a, b)
  const [cornersA, cornersB] = [solidCorners(a), solidCorners(b)]
  return Math.max(...partingAxes(a, b).map((axis) => gapAlong(axis, cornersA, cornersB)))
}

/**
 * Whether two solids share a patch of surface: no gap and no overlap beyond `tolerance`, and a common
 * face at least `patch` mm wide in the two other directions; an edge or a corner is not enough.
 */
export const touches = (a: Solid, b: Solid, tolerance: number, patch = 0.5): boolean => {
  const [cornersA, cornersB] = [solidCorners(a), solidCorners(b)]
  const gaps = partingAxes(a, b).map((axis) => ({ axis, gap: gapAlong(axis, cornersA, cornersB) }))
  const touching = gaps.reduce((widest, g) => (g.gap > widest.gap ? g : widest))
  if (Math.abs(touching.gap) > tolerance) return false
  // A face seen along an axis that leans from its normal looks as wide as its width times the sine.
  return gaps.every(({ axis, gap }) => gap <= tolerance - patch * sineBetween(axis, touching.axis))
}

const sineBetween = (p: Vec3, q: Vec3): number =>
  Math.hypot(p.y * q.z - p.z * q.y, p.z * q.x - p.x * q.z, p.x * q.y - p.y * q.x)
