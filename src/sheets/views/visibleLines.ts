import type { Vec3 } from '../../geometry/vector.ts'
import type { ModelPoint } from '../view.ts'
import { mergeLines, type VisibleLine } from './mergeLines.ts'
import {
  along,
  type Bounds2,
  boundsOf,
  type Interval,
  stretchInside,
  withoutStretches,
} from './polygon2.ts'
import { dot, type Projection } from './projection.ts'
import { compareDepth, type Shape, type ShownFace } from './shape.ts'

/** Lines nearer than this fall together, model mm; far below what a saw or a pen can show. */
const SLACK = 0.02

/** What of a view can be seen: its lines, and the shapes that show any line of their own. */
export interface SeenShapes {
  readonly lines: readonly VisibleLine[]
  readonly shown: readonly Shape[]
}

/**
 * The lines of a view with the hidden ones left out: exact, by cutting each edge at the outlines of the
 * solids before it. Where solids of one part lie flush there is no line. O(n²) in the solids, with most
 * pairs dropped by their bounds.
 */
export const visibleLines = (shapes: readonly Shape[], { toViewer }: Projection): SeenShapes => {
  const seen = shapes
    .filter((s) => !isCovered(s, shapes, toViewer))
    .map((shape) => ({ shape, lines: linesOf(shape, shapes, toViewer) }))
    .filter(({ lines }) => lines.length > 0)
  return { lines: mergeLines(seen.flatMap((s) => s.lines)), shown: seen.map((s) => s.shape) }
}

const linesOf = (
  shape: Shape,
  shapes: readonly Shape[],
  toViewer: Vec3,
): readonly VisibleLine[] => {
  const near = shapes.filter((s) => s !== shape && boundsMeet(s.bounds, shape.bounds))
  const before = near.filter((s) => compareDepth(s, shape, toViewer) > 0)
  const flush = near.filter((s) => s.partId === shape.partId).flatMap((s) => s.faces)
  return shape.faces.flatMap((face) =>
    edgesOf(face.points).flatMap(([a, b]) => {
      const taken = [
        ...before.map((s) => stretchInside(a, b, s.hull, SLACK)),
        ...flushStretches(a, b, face, flush),
      ].filter((t) => t !== undefined)
      return withoutStretches(taken).flatMap((left) =>
        splitBySilhouette(along(a, b, left.from), along(a, b, left.to), [shape, ...near]).map(
          (line) => ({ ...line, partId: shape.partId }),
        ),
      )
    }),
  )
}

const edgesOf = (points: readonly ModelPoint[]): readonly (readonly [ModelPoint, ModelPoint])[] =>
  points.map((p, i) => [p, points[(i + 1) % points.length] ?? p] as const)

const boundsMeet = (a: Bounds2, b: Bounds2): boolean =>
  a.u0 <= b.u1 + SLACK && b.u0 <= a.u1 + SLACK && a.v0 <= b.v1 + SLACK && b.v0 <= a.v1 + SLACK

/** Whether one solid alone hides all of this one; most frames are behind one lining. */
const isCovered = (shape: Shape, shapes: readonly Shape[], toViewer: Vec3): boolean =>
  shapes.some(
    (s) =>
      s !== shape &&
      s.bounds.u0 <= shape.bounds.u0 &&
      s.bounds.u1 >= shape.bounds.u1 &&
      s.bounds.v0 <= shape.bounds.v0 &&
      s.bounds.v1 >= shape.bounds.v1 &&
      compareDepth(s, shape, toViewer) > 0 &&
      shape.hull.every((p) => stretchInside(p, p, s.hull, -SLACK) !== undefined),
  )

/** The edge moved a little out of its own face, to feel what lies beside it. */
const outside = (a: ModelPoint, b: ModelPoint): readonly [ModelPoint, ModelPoint] => {
  const size = Math.hypot(b.u - a.u, b.v - a.v) || 1
  // Faces run anticlockwise, so their outside is to the right of each edge.
  const [du, dv] = [((b.v - a.v) / size) * SLACK, (-(b.u - a.u) / size) * SLACK]
  return [
    { u: a.u + du, v: a.v + dv },
    { u: b.u + du, v: b.v + dv },
  ]
}

/** Where another side of the same part goes on in the same plane. */
const flushStretches = (
  a: ModelPoint,
  b: ModelPoint,
  face: ShownFace,
  others: readonly ShownFace[],
): readonly (Interval | undefined)[] => {
  const [p, q] = outside(a, b)
  return others
    .filter(
      (o) => dot(o.normal, face.normal) > 1 - 1e-9 && Math.abs(o.offset - face.offset) < SLACK,
    )
    .map((o) => stretchInside(p, q, o.points, 0))
}

const splitBySilhouette = (
  a: ModelPoint,
  b: ModelPoint,
  near: readonly Shape[],
): readonly Omit<VisibleLine, 'partId'>[] => {
  if (Math.hypot(b.u - a.u, b.v - a.v) < SLACK) return []
  const [p, q] = outside(a, b)
  const bounds = boundsOf([p, q])
  const backed = near
    .filter((s) => boundsMeet(s.bounds, bounds))
    .map((s) => stretchInside(p, q, s.hull, 0))
    .filter((t) => t !== undefined)
  const bare = withoutStretches(backed)
  const withBack = withoutStretches(bare)
  const piece = (kind: VisibleLine['kind']) => (t: Interval) => ({
    a: along(a, b, t.from),
    b: along(a, b, t.to),
    kind,
  })
  return [...bare.map(piece('silhouette')), ...withBack.map(piece('edge'))]
}
