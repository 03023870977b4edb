import type { Box } from '../geometry/box.ts'
import type { PrismSolid, Solid } from '../geometry/solid.ts'
import type { Vec3 } from '../geometry/vector.ts'
import type { Part } from '../hive/part.ts'
import { type PartPose, undoPose, undoPoseDirection } from './pose.ts'
import type { SectionPlane } from './sectionCaps.ts'
import { plus, scaled } from './vectors.ts'

export interface Ray {
  readonly origin: Vec3
  readonly direction: Vec3
}

/** What a ray meets, and where: the point's place in the closed hive. */
export interface Hit {
  readonly part: Part
  readonly closedPoint: Vec3
}

/** Where along a ray it is inside something: from `enter` to `leave`, in lengths of the direction. */
interface Span {
  readonly enter: number
  readonly leave: number
}

/**
 * The part that the ray meets first, or undefined. What the section plane cuts away can't be hit;
 * a cut face can. Exact, and the same whatever is on the screen. Linear in the number of solids.
 */
export const pickPart = (
  posed: readonly { readonly part: Part; readonly pose: PartPose }[],
  ray: Ray,
  plane?: SectionPlane,
): Hit | undefined => {
  const kept = plane === undefined ? EVERYWHERE : keptSpan(ray, plane)
  let nearest = Number.POSITIVE_INFINITY
  let found: Hit | undefined
  for (const { part, pose } of posed) {
    if (pose.hidden) continue
    const local = {
      origin: undoPose(pose, ray.origin),
      direction: undoPoseDirection(pose, ray.direction),
    }
    for (const solid of part.solids) {
      const span = overlap(solidSpan(solid, local), kept)
      if (span.enter <= span.leave && span.enter < nearest) {
        nearest = span.enter
        const closedPoint = plus(local.origin, scaled(local.direction, span.enter))
        found = { part, closedPoint }
      }
    }
  }
  return found
}

const EVERYWHERE: Span = { enter: 0, leave: Number.POSITIVE_INFINITY }
const NOWHERE: Span = { enter: Number.POSITIVE_INFINITY, leave: Number.NEGATIVE_INFINITY }

const overlap = (a: Span, b: Span): Span => ({
  enter: Math.max(a.enter, b.enter),
  leave: Math.min(a.leave, b.leave),
})

/** The part of the ray ahead of the eye on the side of the plane that is kept. */
const keptSpan = (ray: Ray, { axis, at }: SectionPlane): Span =>
  overlap(EVERYWHERE, below(ray.origin[axis] - at, ray.direction[axis]))

/** Where `value + t * rate` is not above 0. */
const below = (value: number, rate: number): Span => {
  if (rate === 0) return value <= 0 ? ANYWHERE : NOWHERE
  const t = -value / rate
  return rate > 0
    ? { enter: Number.NEGATIVE_INFINITY, leave: t }
    : { enter: t, leave: Number.POSITIVE_INFINITY }
}

const ANYWHERE: Span = { enter: Number.NEGATIVE_INFINITY, leave: Number.POSITIVE_INFINITY }

const solidSpan = (solid: Solid, ray: Ray): Span =>
  solid.kind === 'box' ? boxSpan(solid.box, ray) : prismSpan(solid, ray)

const slab = (o: number, d: number, [lo, hi]: readonly [number, number]): Span =>
  overlap(below(lo - o, -d), below(o - hi, d))

const boxSpan = (b: Box, { origin: o, direction: d }: Ray): Span =>
  overlap(
    slab(o.x, d.x, [b.x0, b.x1]),
    overlap(slab(o.y, d.y, [b.y0, b.y1]), slab(o.z, d.z, [b.z0, b.z1])),
  )

/** Between the end planes and on the inner side of every edge of the convex polygon. */
const prismSpan = (prism: PrismSolid, { origin: o, direction: d }: Ray): Span => {
  const [u, v] = PLANE_AXES[prism.axis]
  const n = prism.polygon.length
  let span = slab(o[prism.axis], d[prism.axis], [prism.from, prism.to])
  const winding = Math.sign(signedArea(prism))
  prism.polygon.forEach((a, i) => {
    const b = prism.polygon[(i + 1) % n] ?? a
    // The outward normal of an edge of an anticlockwise polygon is (dv, -du).
    const [nu, nv] = [winding * (b.v - a.v), -winding * (b.u - a.u)]
    span = overlap(span, below(nu * (o[u] - a.u) + nv * (o[v] - a.v), nu * d[u] + nv * d[v]))
  })
  return span
}

/** The axes that a prism's u and v run along. */
const PLANE_AXES = { x: ['z', 'y'], y: ['x', 'z'], z: ['x', 'y'] } as const

const signedArea = (prism: PrismSolid): number =>
  prism.polygon.reduce((sum, a, i) => {
    const b = prism.polygon[(i + 1) % prism.polygon.length] ?? a
    return sum + a.u * b.v - b.u * a.v
  }, 0)
