import type { Drawing, DrawingItem, PaperPoint } from './drawing.ts'

/** A place in the plane of a view, model mm: u to the right, v up. */
export interface ModelPoint {
  readonly u: number
  readonly v: number
}

/** How the model lies on the paper. */
export interface View {
  /** Paper mm for each model mm: 0.1 is a scale of 1:10. */
  readonly scale: number
  /** Where the model's u = 0, v = 0 lies on the paper. */
  readonly origin: PaperPoint
}

/** A drawing of the model that knows its scale, so that views can be set in line with each other. */
export interface ViewDrawing extends Drawing {
  readonly view: View
  /** The N of the stated scale 1:N. */
  readonly scaleDenominator: number
}

/** The place on the paper of a place in the model. */
export const toPaper = (view: View, p: ModelPoint): PaperPoint => ({
  x: view.origin.x + p.u * view.scale,
  y: view.origin.y - p.v * view.scale,
})

const movePoint = (p: PaperPoint, dx: number, dy: number): PaperPoint => ({
  x: p.x + dx,
  y: p.y + dy,
})

/** The same item moved by `dx` to the right and `dy` down, mm. */
const moveItem = (item: DrawingItem, dx: number, dy: number): DrawingItem => {
  switch (item.kind) {
    case 'line':
      return { ...item, from: movePoint(item.from, dx, dy), to: movePoint(item.to, dx, dy) }
    case 'polyline':
    case 'polygon':
      return { ...item, points: item.points.map((p) => movePoint(p, dx, dy)) }
    case 'colour':
      return { ...item, loops: item.loops.map((l) => l.map((p) => movePoint(p, dx, dy))) }
    case 'text':
    case 'image':
      return { ...item, at: movePoint(item.at, dx, dy) }
  }
}

/** The items of a drawing, set down on a larger sheet with its top left corner at `at`. */
export const placeDrawing = (drawing: Drawing, at: PaperPoint): readonly DrawingItem[] =>
  drawing.items.map((item) => moveItem(item, at.x, at.y))
