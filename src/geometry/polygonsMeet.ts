import type { Point2 } from './solid.ts'

/**
 * Whether two convex polygons reach into each other by more than `tolerance` mm (separating axis
 * theorem: they do not if some side of one has the whole other on its far side).
 */
export const polygonsMeet = (
  a: readonly Point2[],
  b: readonly Point2[],
  tolerance: number,
): boolean => !hasPartingSide(a, b, tolerance) && !hasPartingSide(b, a, tolerance)

const hasPartingSide = (
  sides: readonly Point2[],
  others: readonly Point2[],
  tolerance: number,
): boolean =>
  sides.some((from, i) => {
    const to = sides[(i + 1) % sides.length] ?? from
    const [nu, nv] = [to.v - from.v, from.u - to.u]
    const size = Math.hypot(nu, nv)
    if (size === 0) return false
    const along = ({ u, v }: Point2): number => ((u - from.u) * nu + (v - from.v) * nv) / size
    // The polygon itself lies wholly on one side of its edge; the winding says which.
    const own = extent(sides, along)
    const other = extent(others, along)
    return other.low > own.high - tolerance || other.high < own.low + tolerance
  })

const extent = (
  points: readonly Point2[],
  along: (p: Point2) => number,
): { readonly low: number; readonly high: number } => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const p of points) {
    const at = along(p)
    low = Math.min(low, at)
    high = Math.max(high, at)
  }
  return { low, high }
}
