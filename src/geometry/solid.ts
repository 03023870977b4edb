import { type Box, boxVolume } from './box.ts'
import type { Axis } from './vector.ts'

/** A point in the plane across a prism's axis. For axis x: u = z, v = y; axis z: u = x, v = y; axis y: u = x, v = z. */
export interface Point2 {
  readonly u: number
  readonly v: number
}

/** A box standing square to the axes. */
export interface BoxSolid {
  readonly kind: 'box'
  readonly box: Box
}

/** A convex polygon pushed along an axis from `from` to `to`, mm; for sloping and tapered parts. */
export interface PrismSolid {
  readonly kind: 'prism'
  readonly axis: Axis
  readonly polygon: readonly Point2[]
  readonly from: number
  readonly to: number
}

export type Solid = BoxSolid | PrismSolid

export const boxSolid = (b: Box): BoxSolid => ({ kind: 'box', box: b })

/** Area of a simple polygon by the shoelace formula, mm²; the winding does not matter. */
export const polygonArea = (polygon: readonly Point2[]): number => {
  let twice = 0
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a
    twice += a.u * b.v - b.u * a.v
  })
  return Math.abs(twice) / 2
}

/** Volume, mm³. */
export const solidVolume = (solid: Solid): number =>
  solid.kind === 'box' ? boxVolume(solid.box) : polygonArea(solid.polygon) * (solid.to - solid.from)

/** The box around a solid. */
export const solidBounds = (solid: Solid): Box => {
  if (solid.kind === 'box') return solid.box
  const us = solid.polygon.map((p) => p.u)
  const vs = solid.polygon.map((p) => p.v)
  const [u0, u1, v0, v1] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)]
  const { from, to } = solid
  switch (solid.axis) {
    case 'x':
      return { x0: from, x1: to, y0: v0, y1: v1, z0: u0, z1: u1 }
    case 'y':
      return { x0: u0, x1: u1, y0: from, y1: to, z0: v0, z1: v1 }
    case 'z':
      return { x0: u0, x1: u1, y0: v0, y1: v1, z0: from, z1: to }
  }
}
