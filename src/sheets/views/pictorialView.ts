import type { PrismSolid, Solid } from '../../geometry/solid.ts'
import type { Vec3 } from '../../geometry/vector.ts'
import type { Hive } from '../../hive/hive.ts'
import type { Part } from '../../hive/part.ts'
import type { Drawing, DrawingItem, Tint } from '../drawing.ts'
import type { Size } from '../fitScale.ts'
import { toPaper, type View } from '../view.ts'
import { outlineItems } from './outlineView.ts'
import { fromCorner } from './projection.ts'
import { type Shape, type ShownFace, shapeOf } from './shape.ts'
import { sortBackToFront } from './sortBackToFront.ts'
import { visibleLines } from './visibleLines.ts'

const SEEN = fromCorner(-32, 24)

/**
 * The hive drawn from its left front corner with lid and covers lifted off, as large as the area allows
 * and to no stated scale: for the first sheet when there is no picture.
 */
export const pictorialView = (hive: Hive, area: Size): Drawing => {
  const shapes = hive.parts
    .filter((p) => p.group !== 'hardware')
    .flatMap((p) => p.solids.map((s) => shapeOf(p.id, move(s, liftOf(p, hive)), SEEN)))
  if (shapes.length === 0) return { ...area, items: [] }
  const u0 = Math.min(...shapes.map((s) => s.bounds.u0))
  const u1 = Math.max(...shapes.map((s) => s.bounds.u1))
  const v0 = Math.min(...shapes.map((s) => s.bounds.v0))
  const v1 = Math.max(...shapes.map((s) => s.bounds.v1))
  const inset = 1
  const scale = Math.min(
    (area.widthMm - 2 * inset) / (u1 - u0),
    (area.heightMm - 2 * inset) / (v1 - v0),
  )
  const view: View = {
    scale,
    origin: {
      x: area.widthMm / 2 - ((u0 + u1) / 2) * scale,
      y: area.heightMm / 2 + ((v0 + v1) / 2) * scale,
    },
  }
  const { lines, shown } = visibleLines(shapes, SEEN)
  return {
    ...area,
    items: [
      ...sortBackToFront(shown, SEEN).flatMap((s) => s.faces.map((f) => faceItem(s, f, view))),
      ...outlineItems({ lines, bounds: { u0, u1, v0, v1 } }, view).map((item) => ({
        ...item,
        weight: item.weight === 'thick' ? ('medium' as const) : ('thin' as const),
      })),
    ],
  }
}

/** How far a part stands above its place, mm. */
const liftOf = (part: Part, { dimensions: d }: Hive): Vec3 => {
  const share = part.motion === 'lid' ? 0.75 : part.motion === 'cover' ? 0.3 : 0
  const y = share * d.cavityHeight
  return { x: 0, y, z: 0 }
}

const move = (solid: Solid, by: Vec3): Solid => {
  if (solid.kind === 'box') {
    const b = solid.box
    return {
      kind: 'box',
      box: {
        x0: b.x0 + by.x,
        x1: b.x1 + by.x,
        y0: b.y0 + by.y,
        y1: b.y1 + by.y,
        z0: b.z0 + by.z,
        z1: b.z1 + by.z,
      },
    }
  }
  return movePrism(solid, by)
}

const movePrism = (solid: PrismSolid, by: Vec3): PrismSolid => {
  const [du, dv, along] = {
    x: [by.z, by.y, by.x],
    y: [by.x, by.z, by.y],
    z: [by.x, by.y, by.z],
  }[solid.axis] as [number, number, number]
  return {
    ...solid,
    polygon: solid.polygon.map((p) => ({ u: p.u + du, v: p.v + dv })),
    from: solid.from + along,
    to: solid.to + along,
  }
}

/** Light from above: upper sides stay paper, the front light grey, the ends darker. */
const tintOf = (normal: Vec3): Tint =>
  normal.y > 0.5 ? 'paper' : Math.abs(normal.z) > Math.abs(normal.x) ? 'light' : 'middle'

const faceItem = (shape: Shape, face: ShownFace, view: View): DrawingItem => ({
  kind: 'polygon',
  points: face.points.map((p) => toPaper(view, p)),
  stroke: undefined,
  tint: tintOf(face.normal),
  hatch: 'none',
  tag: shape.partId,
})
