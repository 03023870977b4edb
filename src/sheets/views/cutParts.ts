import type { Part } from '../../hive/part.ts'
import type { ModelPoint } from '../view.ts'
import { type CutPlane, cutSolid, type SectionSide } from './cutSolid.ts'
import {
  along,
  type Bounds2,
  boundsOf,
  convexHull,
  stretchInside,
  withoutStretches,
} from './polygon2.ts'

export interface CutEdge {
  readonly a: ModelPoint
  readonly b: ModelPoint
  /** True where the window cuts the drawing off, not the part itself. */
  readonly isBreak: boolean
}

/** One part as a plane cuts it: convex faces that touch, and the edges around them all. */
export interface CutPart {
  readonly part: Part
  readonly faces: readonly (readonly ModelPoint[])[]
  readonly edges: readonly CutEdge[]
  readonly bounds: Bounds2
}

export interface CutOptions {
  readonly side?: SectionSide
  /** Only what lies in this part of the plane, model mm. */
  readonly window?: Bounds2
}

const SLACK = 0.02

/** The parts that a plane goes through, in the order of the hive. */
export const cutParts = (
  parts: readonly Part[],
  plane: CutPlane,
  { side, window }: CutOptions = {},
): readonly CutPart[] =>
  parts.flatMap((part) => {
    const faces = part.solids
      .map((s) => cutSolid(s, plane, side))
      .filter((f) => f !== undefined)
      .map((f) => convexHull(window ? clipToWindow(f, window) : f))
      .filter((f) => f.length >= 3)
    if (faces.length === 0) return []
    const edges = faces.flatMap((f) => edgesOfFace(f, faces, window))
    return [{ part, faces, edges, bounds: boundsOf(faces.flat()) }]
  })

/** A face's edges without the stretches where another face of the part goes on. */
const edgesOfFace = (
  face: readonly ModelPoint[],
  faces: readonly (readonly ModelPoint[])[],
  window: Bounds2 | undefined,
): readonly CutEdge[] =>
  face.flatMap((a, i) => {
    const b = face[(i + 1) % face.length] ?? a
    const size = Math.hypot(b.u - a.u, b.v - a.v) || 1
    const [du, dv] = [((b.v - a.v) / size) * SLACK, (-(b.u - a.u) / size) * SLACK]
    const flush = faces
      .filter((other) => other !== face)
      .map((other) =>
        stretchInside({ u: a.u + du, v: a.v + dv }, { u: b.u + du, v: b.v + dv }, other, 0),
      )
      .filter((t) => t !== undefined)
    const isBreak = window !== undefined && isOnBorder(a, b, window)
    return withoutStretches(flush)
      .filter((t) => (t.to - t.from) * size > SLACK)
      .map((t) => ({ a: along(a, b, t.from), b: along(a, b, t.to), isBreak }))
  })

const isOnBorder = (a: ModelPoint, b: ModelPoint, w: Bounds2): boolean => {
  const both = (key: 'u' | 'v', at: number) =>
    Math.abs(a[key] - at) < 1e-6 && Math.abs(b[key] - at) < 1e-6
  return both('u', w.u0) || both('u', w.u1) || both('v', w.v0) || both('v', w.v1)
}

/** Cuts a convex face along the window's four sides in turn (Sutherland and Hodgman 1974). */
const clipToWindow = (face: readonly ModelPoint[], w: Bounds2): readonly ModelPoint[] =>
  (
    [
      ['u', w.u0, 1],
      ['u', w.u1, -1],
      ['v', w.v0, 1],
      ['v', w.v1, -1],
    ] as const
  ).reduce<readonly ModelPoint[]>(
    (points, [key, at, sense]) => clipBySide(points, key, at, sense),
    face,
  )

const clipBySide = (
  points: readonly ModelPoint[],
  key: 'u' | 'v',
  at: number,
  sense: 1 | -1,
): readonly ModelPoint[] =>
  points.flatMap((p, i) => {
    const q = points[(i + 1) % points.length] ?? p
    const [dp, dq] = [(p[key] - at) * sense, (q[key] - at) * sense]
    const kept = dp >= 0 ? [p] : []
    if (dp >= 0 === dq >= 0) return kept
    const cut = along(p, q, dp / (dp - dq))
    // Exactly on the border, so that the edge along it is known again.
    return [...kept, key === 'u' ? { u: at, v: cut.v } : { u: cut.u, v: at }]
  })
