import type { Point2, PrismSolid, Solid } from '../../geometry/solid.ts'
import type { ModelPoint } from '../view.ts'

/** A plane square to the hive's length (x) or width (z), at a place along that axis, mm. */
export interface CutPlane {
  readonly axis: 'x' | 'z'
  readonly at: number
}

/** Which way a section is looked at: from the end with the larger or the smaller coordinate. */
export type SectionSide = 'from-plus' | 'from-minus'

const rectangle = (u0: number, u1: number, v0: number, v1: number): readonly ModelPoint[] => [
  { u: u0, v: v0 },
  { u: u1, v: v0 },
  { u: u1, v: v1 },
  { u: u0, v: v1 },
]

/** Whether the plane goes through a stretch; one that only touches the lower end counts, the upper not. */
const isWithin = (at: number, from: number, to: number): boolean => at >= from && at < to

/** The stretch in which a line at `at` along one coordinate crosses a convex polygon. */
const chord = (
  polygon: readonly Point2[],
  key: 'u' | 'v',
  at: number,
): readonly [number, number] | undefined => {
  const other = key === 'u' ? 'v' : 'u'
  const hits: number[] = []
  polygon.forEach((p, i) => {
    const q = polygon[(i + 1) % polygon.length] ?? p
    const [lo, hi] = p[key] <= q[key] ? [p, q] : [q, p]
    if (isWithin(at, lo[key], hi[key])) {
      const t = (at - lo[key]) / (hi[key] - lo[key])
      hits.push(lo[other] + t * (hi[other] - lo[other]))
    }
  })
  const [from, to] = [Math.min(...hits), Math.max(...hits)]
  return hits.length >= 2 && to > from ? [from, to] : undefined
}

/** Cuts across x: u is z, v is y. */
const cutPrismAcrossX = (solid: PrismSolid, at: number): readonly ModelPoint[] | undefined => {
  const { axis, polygon, from, to } = solid
  if (axis === 'x') return isWithin(at, from, to) ? polygon : undefined
  const cut = chord(polygon, 'u', at)
  if (cut === undefined) return undefined
  return axis === 'z' ? rectangle(from, to, ...cut) : rectangle(...cut, from, to)
}

/** Cuts across z: u is x, v is y. */
const cutPrismAcrossZ = (solid: PrismSolid, at: number): readonly ModelPoint[] | undefined => {
  const { axis, polygon, from, to } = solid
  if (axis === 'z') return isWithin(at, from, to) ? polygon : undefined
  const cut = axis === 'x' ? chord(polygon, 'u', at) : chord(polygon, 'v', at)
  if (cut === undefined) return undefined
  return axis === 'x' ? rectangle(from, to, ...cut) : rectangle(...cut, from, to)
}

/**
 * The face that a plane cuts through a solid, mm, seen from the plus end of its axis (v up; u is x for
 * a cut across z, and -z for one across x). Nothing where the plane misses. Exact for boxes and prisms.
 */
export const cutSolid = (
  solid: Solid,
  plane: CutPlane,
  side: SectionSide = 'from-plus',
): readonly ModelPoint[] | undefined => {
  const raw = cutRaw(solid, plane)
  // Looking along -x the front (+z) is at the left; looking along -z the left end is at the left.
  const mirrored = (plane.axis === 'x') === (side === 'from-plus')
  return raw && mirrored ? raw.map((p) => ({ u: -p.u, v: p.v })) : raw
}

const cutRaw = (solid: Solid, { axis, at }: CutPlane): readonly ModelPoint[] | undefined => {
  if (solid.kind === 'prism') {
    return axis === 'x' ? cutPrismAcrossX(solid, at) : cutPrismAcrossZ(solid, at)
  }
  const b = solid.box
  if (axis === 'x') {
    return isWithin(at, b.x0, b.x1) ? rectangle(b.z0, b.z1, b.y0, b.y1) : undefined
  }
  return isWithin(at, b.z0, b.z1) ? rectangle(b.x0, b.x1, b.y0, b.y1) : undefined
}
