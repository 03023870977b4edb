import { type Solid, solidBounds } from '../../geometry/solid.ts'
import { solidCorners } from '../../geometry/solidFrame.ts'
import type { Vec3 } from '../../geometry/vector.ts'
import type { ModelPoint } from '../view.ts'
import { type Bounds2, boundsOf, convexHull } from './polygon2.ts'
import { dot, type Projection, project } from './projection.ts'

/** One side of a solid that can be seen, as it lies on the paper. */
export interface ShownFace {
  /** Anticlockwise on the paper. */
  readonly points: readonly ModelPoint[]
  readonly normal: Vec3
  /** Distance of its plane from the origin along the normal. */
  readonly offset: number
}

/** A convex solid of a part as a projection sees it. */
export interface Shape {
  readonly partId: string
  readonly solid: Solid
  readonly corners: readonly Vec3[]
  /** Unit normals of all sides. */
  readonly normals: readonly Vec3[]
  readonly faces: readonly ShownFace[]
  /** Outline on the paper, anticlockwise. */
  readonly hull: readonly ModelPoint[]
  readonly bounds: Bounds2
}

const subtract = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z })

/** Unit normal of a flat loop of corners by Newell's method, turned away from `inside`. */
const outwardNormal = (loop: readonly Vec3[], inside: Vec3): Vec3 => {
  let [x, y, z] = [0, 0, 0]
  loop.forEach((p, i) => {
    const q = loop[(i + 1) % loop.length] ?? p
    x += (p.y - q.y) * (p.z + q.z)
    y += (p.z - q.z) * (p.x + q.x)
    z += (p.x - q.x) * (p.y + q.y)
  })
  const size = Math.hypot(x, y, z) || 1
  const normal = { x: x / size, y: y / size, z: z / size }
  const first = loop[0] ?? inside
  return dot(normal, subtract(first, inside)) >= 0
    ? normal
    : { x: -normal.x, y: -normal.y, z: -normal.z }
}

/** The sides of a solid as loops of corners. */
const sidesOf = (solid: Solid): readonly (readonly Vec3[])[] => {
  if (solid.kind === 'box') {
    const { x0, x1, y0, y1, z0, z1 } = solid.box
    const polygon = [
      { u: x0, v: y0 },
      { u: x1, v: y0 },
      { u: x1, v: y1 },
      { u: x0, v: y1 },
    ]
    return sidesOf({ kind: 'prism', axis: 'z', polygon, from: z0, to: z1 })
  }
  const corners = solidCorners(solid)
  const n = solid.polygon.length
  const [near, far] = [corners.slice(0, n), corners.slice(n)]
  const around = near.map((p, i) => {
    const next = (i + 1) % n
    return [p, near[next] ?? p, far[next] ?? p, far[i] ?? p]
  })
  return [near, far, ...around]
}

const middleOf = (points: readonly Vec3[]): Vec3 => {
  const n = points.length
  return {
    x: points.reduce((s, p) => s + p.x, 0) / n,
    y: points.reduce((s, p) => s + p.y, 0) / n,
    z: points.reduce((s, p) => s + p.z, 0) / n,
  }
}

/** Sees one solid in a projection. Sides seen edge-on are not shown. */
export const shapeOf = (partId: string, solid: Solid, projection: Projection): Shape => {
  const corners = solidCorners(solid)
  const middle = middleOf(corners)
  const sides = sidesOf(solid).map((loop) => ({ loop, normal: outwardNormal(loop, middle) }))
  const hull = convexHull(corners.map((c) => project(projection, c)))
  return {
    partId,
    solid,
    corners,
    normals: sides.map((s) => s.normal),
    faces: sides
      .filter((s) => dot(s.normal, projection.toViewer) > 1e-6)
      .map(({ loop, normal }) => ({
        points: convexHull(loop.map((c) => project(projection, c))),
        normal,
        offset: dot(normal, loop[0] ?? middle),
      })),
    hull,
    bounds: boundsOf(hull),
  }
}

const isBeyond = (a: Shape, b: Shape, axis: Vec3): boolean => {
  const lowest = Math.min(...a.corners.map((c) => dot(axis, c)))
  const highest = Math.max(...b.corners.map((c) => dot(axis, c)))
  return lowest >= highest - 1e-6
}

/** Along each world axis, which of two boxes lies further on; none where they share a stretch. */
const orderOfBoxes = (a: Shape, b: Shape, toViewer: Vec3): number => {
  const [p, q] = [solidBounds(a.solid), solidBounds(b.solid)]
  const slack = 1e-6
  if (toViewer.x !== 0) {
    if (p.x0 >= q.x1 - slack) return Math.sign(toViewer.x)
    if (q.x0 >= p.x1 - slack) return -Math.sign(toViewer.x)
  }
  if (toViewer.y !== 0) {
    if (p.y0 >= q.y1 - slack) return Math.sign(toViewer.y)
    if (q.y0 >= p.y1 - slack) return -Math.sign(toViewer.y)
  }
  if (toViewer.z !== 0) {
    if (p.z0 >= q.z1 - slack) return Math.sign(toViewer.z)
    if (q.z0 >= p.z1 - slack) return -Math.sign(toViewer.z)
  }
  return 0
}

/**
 * Whether `a` may hide part of `b`: 1 if it lies on the viewer's side of a plane between them, -1 if
 * `b` does, 0 if neither can hide the other. Exact for solids that don't overlap and are parted by the
 * plane of one of their sides, which boxes and prisms along one axis always are.
 */
export const compareDepth = (a: Shape, b: Shape, toViewer: Vec3): -1 | 0 | 1 => {
  const byBoxes = orderOfBoxes(a, b, toViewer)
  if (byBoxes !== 0) return byBoxes > 0 ? 1 : -1
  if (a.solid.kind === 'box' && b.solid.kind === 'box') return 0
  for (const [normals, front, back, sign] of [
    [b.normals, a, b, 1],
    [a.normals, b, a, -1],
  ] as const) {
    for (const normal of normals) {
      const facing = dot(normal, toViewer)
      if (Math.abs(facing) < 1e-6 || !isBeyond(front, back, normal)) continue
      return facing > 0 === sign > 0 ? 1 : -1
    }
  }
  return 0
}
