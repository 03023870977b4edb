import type { PrismSolid } from '../geometry/solid.ts'
import { prismCorners } from '../geometry/solidFrame.ts'
import type { Vec3 } from '../geometry/vector.ts'
import { cross, dot, minus, plus, scaled, unit } from './vectors.ts'

/** A corner of a triangle with the outward unit normal of its face. */
export interface FaceCorner {
  readonly corner: Vec3
  readonly normal: Vec3
}

/** The faces of a convex prism as triangles, three corners each, anticlockwise from outside. */
export const prismTriangles = (prism: PrismSolid): readonly FaceCorner[] => {
  const corners = prismCorners(prism)
  const n = prism.polygon.length
  const middle = scaled(corners.reduce(plus), 1 / corners.length)
  const indices: (readonly [number, number, number])[] = []
  // The two ends as fans from their first corner.
  for (let i = 1; i < n - 1; i++) indices.push([0, i, i + 1], [n, n + i, n + i + 1])
  // Each side as two triangles.
  for (let i = 0; i < n; i++) {
    const next = (i + 1) % n
    indices.push([i, next, n + i], [next, n + next, n + i])
  }
  return indices.flatMap(([i, j, k]) => {
    const [a, b, c] = [corners[i], corners[j], corners[k]]
    if (a === undefined || b === undefined || c === undefined) return []
    const normal = unit(cross(minus(b, a), minus(c, a)))
    // Whichever way the polygon winds, the outside is away from the middle.
    const outward = dot(normal, minus(a, middle)) >= 0
    const face = outward ? normal : scaled(normal, -1)
    return (outward ? [a, b, c] : [a, c, b]).map((corner) => ({ corner, normal: face }))
  })
}
