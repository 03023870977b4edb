import { describe, expect, it } from 'vitest'
import type { PrismSolid } from '../../src/geometry/solid.ts'
import type { Axis } from '../../src/geometry/vector.ts'
import { prismTriangles } from '../../src/scene/prismTriangles.ts'
import { cross, dot, minus } from '../../src/scene/vectors.ts'

const wedge = (axis: Axis): PrismSolid => ({
  kind: 'prism',
  axis,
  polygon: [
    { u: 0, v: 0 },
    { u: 40, v: 0 },
    { u: 0, v: 30 },
  ],
  from: 5,
  to: 15,
})

describe('prismTriangles', () => {
  it.each(['x', 'y', 'z'] as const)('closes a wedge along %s with outward faces', (axis) => {
    const corners = prismTriangles(wedge(axis))
    expect(corners).toHaveLength(3 * (2 + 6))
    let volume = 0
    let area = 0
    for (let i = 0; i < corners.length; i += 3) {
      const [a, b, c] = [corners[i], corners[i + 1], corners[i + 2]]
      if (a === undefined || b === undefined || c === undefined) throw new Error('odd corners')
      const twice = cross(minus(b.corner, a.corner), minus(c.corner, a.corner))
      area += Math.sqrt(dot(twice, twice)) / 2
      // The signed volumes of the tetrahedra to the origin add up when all faces wind outwards.
      volume += dot(a.corner, cross(b.corner, c.corner)) / 6
      expect(dot(twice, a.normal)).toBeCloseTo(Math.sqrt(dot(twice, twice)), 9)
    }
    expect(volume).toBeCloseTo(600 * 10, 6)
    // Two triangles of 600 and sides of 40, 30 and 50 by 10.
    expect(area).toBeCloseTo(1200 + 1200, 6)
  })
})
