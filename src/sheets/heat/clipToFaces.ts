import type { ModelPoint } from '../view.ts'
import { along, type Bounds2, boundsOf, type Interval, stretchInside } from '../views/polygon2.ts'

/** A face of a section: convex, anticlockwise. */
export type Face = readonly ModelPoint[]

/** Lines that run along the joint of two faces belong to both, model mm. */
const SLACK = 0.02

/** The stretches of lines that lie in any of the faces; a line goes on over the joint of two faces. */
export const clipLines = (
  lines: readonly (readonly ModelPoint[])[],
  faces: readonly Face[],
): readonly (readonly ModelPoint[])[] => {
  const bounded = faces.map((face) => ({ face, bounds: boundsOf(face) }))
  return lines.flatMap((line) => clipLine(line, bounded))
}

interface BoundedFace {
  readonly face: Face
  readonly bounds: Bounds2
}

const clipLine = (
  line: readonly ModelPoint[],
  faces: readonly BoundedFace[],
): readonly (readonly ModelPoint[])[] => {
  const kept: ModelPoint[][] = []
  let isOpen = false
  line.slice(1).forEach((b, i) => {
    const a = line[i] ?? b
    const stretches = joinStretches(stretchesIn(a, b, faces))
    stretches.forEach(({ from, to }, k) => {
      const goesOn = k === 0 && isOpen && from === 0
      if (!goesOn) kept.push([along(a, b, from)])
      kept.at(-1)?.push(along(a, b, to))
    })
    isOpen = stretches.at(-1)?.to === 1
  })
  return kept
}

const stretchesIn = (
  a: ModelPoint,
  b: ModelPoint,
  faces: readonly BoundedFace[],
): readonly Interval[] =>
  faces
    .filter(({ bounds }) => touches(a, b, bounds))
    .map(({ face }) => stretchInside(a, b, face, -SLACK))
    .filter((t) => t !== undefined)

const touches = (a: ModelPoint, b: ModelPoint, bounds: Bounds2): boolean =>
  Math.max(a.u, b.u) >= bounds.u0 - SLACK &&
  Math.min(a.u, b.u) <= bounds.u1 + SLACK &&
  Math.max(a.v, b.v) >= bounds.v0 - SLACK &&
  Math.min(a.v, b.v) <= bounds.v1 + SLACK

/** Stretches that overlap or meet, made one; in order. */
const joinStretches = (stretches: readonly Interval[]): readonly Interval[] => {
  const joined: Interval[] = []
  for (const s of [...stretches].sort((p, q) => p.from - q.from)) {
    const last = joined.at(-1)
    if (last === undefined || s.from > last.to) joined.push(s)
    else if (s.to > last.to) joined[joined.length - 1] = { from: last.from, to: s.to }
  }
  return joined
}

/**
 * The part of a loop that lies in a convex face (Sutherland and Hodgman 1974). A loop that is parted
 * comes back as one, its parts joined along the face's edge: right to fill, not to outline. Keeps the way
 * it runs; nothing when they do not meet.
 */
export const clipLoop = (loop: readonly ModelPoint[], face: Face): readonly ModelPoint[] => {
  let points = loop
  face.forEach((p, i) => {
    const q = face[(i + 1) % face.length] ?? p
    // Twice the area that a point spans with this edge: above 0 inside.
    const inside = (r: ModelPoint) => (q.u - p.u) * (r.v - p.v) - (q.v - p.v) * (r.u - p.u)
    points = points.flatMap((a, k) => {
      const b = points[(k + 1) % points.length] ?? a
      const [da, db] = [inside(a), inside(b)]
      const kept = da >= 0 ? [a] : []
      return da >= 0 === db >= 0 ? kept : [...kept, along(a, b, da / (da - db))]
    })
  })
  return points.length > 2 ? points : []
}
