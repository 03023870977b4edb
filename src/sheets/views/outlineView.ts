import type { Part } from '../../hive/part.ts'
import { type LineItem, solidLine } from '../drawing.ts'
import { toPaper, type View } from '../view.ts'
import type { VisibleLine } from './mergeLines.ts'
import type { Bounds2 } from './polygon2.ts'
import type { Projection } from './projection.ts'
import { shapeOf } from './shape.ts'
import { visibleLines } from './visibleLines.ts'

/** The lines of a view with its extent on the paper's plane, in model mm. */
export interface Outline {
  readonly lines: readonly VisibleLine[]
  readonly bounds: Bounds2
}

/** Parts seen in a projection, hidden lines left out. No parts give no lines and a point at the origin. */
export const outlineOf = (parts: readonly Part[], projection: Projection): Outline => {
  const shapes = parts.flatMap((p) => p.solids.map((s) => shapeOf(p.id, s, projection)))
  if (shapes.length === 0) return { lines: [], bounds: { u0: 0, u1: 0, v0: 0, v1: 0 } }
  return {
    lines: visibleLines(shapes, projection).lines,
    bounds: {
      u0: Math.min(...shapes.map((s) => s.bounds.u0)),
      u1: Math.max(...shapes.map((s) => s.bounds.u1)),
      v0: Math.min(...shapes.map((s) => s.bounds.v0)),
      v1: Math.max(...shapes.map((s) => s.bounds.v1)),
    },
  }
}

/** An outline on the paper: silhouettes thick, other edges medium, or thin where they lie close together. */
export const outlineItems = (outline: Outline, view: View): readonly LineItem[] =>
  outline.lines.map((line) =>
    solidLine(
      line.kind === 'silhouette' ? 'thick' : view.scale < 0.08 ? 'thin' : 'medium',
      toPaper(view, line.a),
      toPaper(view, line.b),
      line.partId,
    ),
  )
