import { type Solid, solidBounds } from './solid.ts'
import type { Vec3 } from './vector.ts'

/** The corners of a convex solid. */
export const solidCorners = (solid: Solid): readonly Vec3[] => {
  if (solid.kind === 'box') {
    const { x0, x1, y0, y1, z0, z1 } = solid.box
    return [x0, x1].flatMap((x) => [y0, y1].flatMap((y) => [z0, z1].map((z) => ({ x, y, z }))))
  }
  return [solid.from, solid.to].flatMap((along) =>
    solid.polygon.map(({ u, v }) =>
      solid.axis === 'x'
        ? { x: along, y: v, z: u }
        : solid.axis === 'y'
          ? { x: u, y: along, z: v }
          : { x: u, y: v, z: along },
    ),
  )
}

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

/** The gap along each axis that could part two solids; negative where they reach into each other, mm. */
const gaps = (a: Solid, b: Solid): readonly number[] => {
  const [cornersA, cornersB] = [solidCorners(a), solidCorners(b)]
  return [...AXES, ...slopingNormals(a), ...slopingNormals(b)].map((axis) =>
    gapAlong(axis, cornersA, cornersB),
  )
}

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
export const separation = (a: Solid, b: Solid): number =>
  a.kind === 'box' && b.kind === 'box' ? boundsGap(a, b) : Math.max(...gaps(a, b))

/**
 * Whether two solids share a patch of surface: no gap and no overlap beyond `tolerance`, and a reach
 * over each other of at least `patch` mm in the two other directions.
 */
export const touches = (a: Solid, b: Solid, tolerance: number, patch = 0.5): boolean => {
  const all = gaps(a, b)
  const widest = Math.max(...all)
  if (Math.abs(widest) > tolerance) return false
  return all.filter((gap) => gap > -patch).every((gap) => Math.abs(gap - widest) <= tolerance * 2)
}
