import type { ModelPoint } from '../view.ts'

/** A stretch of a line from `a` to `b`, by parameter: 0 at `a`, 1 at `b`. */
export interface Interval {
  readonly from: number
  readonly to: number
}

export interface Bounds2 {
  readonly u0: number
  readonly u1: number
  readonly v0: number
  readonly v1: number
}

export const boundsOf = (points: readonly ModelPoint[]): Bounds2 => {
  const us = points.map((p) => p.u)
  const vs = points.map((p) => p.v)
  return { u0: Math.min(...us), u1: Math.max(...us), v0: Math.min(...vs), v1: Math.max(...vs) }
}

const cross = (o: ModelPoint, a: ModelPoint, b: ModelPoint): number =>
  (a.u - o.u) * (b.v - o.v) - (a.v - o.v) * (b.u - o.u)

/** Half of the hull, from the sorted points: keeps only turns to the left. */
const chain = (sorted: readonly ModelPoint[]): ModelPoint[] => {
  const hull: ModelPoint[] = []
  for (const p of sorted) {
    for (;;) {
      const [a, b] = [hull.at(-2), hull.at(-1)]
      if (a === undefined || b === undefined || cross(a, b, p) > 1e-9) break
      hull.pop()
    }
    hull.push(p)
  }
  return hull
}

/** The convex hull, anticlockwise, without points in line (Andrew's monotone chain, 1979). */
export const convexHull = (points: readonly ModelPoint[]): readonly ModelPoint[] => {
  const sorted = [...points].sort((p, q) => p.u - q.u || p.v - q.v)
  const lower = chain(sorted)
  const upper = chain(sorted.toReversed())
  return [...lower.slice(0, -1), ...upper.slice(0, -1)]
}

/**
 * The stretch of the line a-b that lies more than `margin` inside an anticlockwise convex polygon, or
 * nothing. A negative margin also takes what lies just outside (Cyrus and Beck 1978).
 */
export const stretchInside = (
  a: ModelPoint,
  b: ModelPoint,
  polygon: readonly ModelPoint[],
  margin: number,
): Interval | undefined => {
  let [from, to] = [0, 1]
  for (let i = 0; i < polygon.length; i += 1) {
    const p = polygon[i]
    const q = polygon[(i + 1) % polygon.length]
    if (p === undefined || q === undefined) return undefined
    const size = Math.hypot(q.u - p.u, q.v - p.v)
    if (size === 0) continue
    // Distance inside this edge's line, at both ends.
    const da = cross(p, q, a) / size - margin
    const db = cross(p, q, b) / size - margin
    if (da <= 0 && db <= 0) return undefined
    if (da < 0) from = Math.max(from, da / (da - db))
    else if (db < 0) to = Math.min(to, da / (da - db))
    if (from >= to) return undefined
  }
  return { from, to }
}

/** What is left of 0 to 1 without the given stretches, in order. */
export const withoutStretches = (taken: readonly Interval[]): readonly Interval[] => {
  const left: Interval[] = []
  let at = 0
  for (const t of [...taken].sort((p, q) => p.from - q.from)) {
    if (t.from > at) left.push({ from: at, to: t.from })
    at = Math.max(at, t.to)
  }
  if (at < 1) left.push({ from: at, to: 1 })
  return left
}

/** The place at parameter `t` on the line a-b. */
export const along = (a: ModelPoint, b: ModelPoint, t: number): ModelPoint => ({
  u: a.u + (b.u - a.u) * t,
  v: a.v + (b.v - a.v) * t,
})

/** Whether two convex polygons share an area wider than `margin` (separating axis theorem). */
export const polygonsOverlap = (
  a: readonly ModelPoint[],
  b: readonly ModelPoint[],
  margin: number,
): boolean => {
  const isApart = (p: readonly ModelPoint[], q: readonly ModelPoint[]): boolean =>
    p.some((s, i) => {
      const t = p[(i + 1) % p.length] ?? s
      const size = Math.hypot(t.u - s.u, t.v - s.v)
      return size > 0 && q.every((point) => cross(s, t, point) / size <= margin)
    })
  return !isApart(a, b) && !isApart(b, a)
}
