import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import {
  boxSolid,
  type PrismSolid,
  polygonArea,
  solidBounds,
  solidVolume,
} from '../../src/geometry/solid.ts'

const triangle = [
  { u: 0, v: 0 },
  { u: 6, v: 0 },
  { u: 0, v: 4 },
]

/** Parallel sides 10 and 4, 5 apart. */
const trapezium = [
  { u: -5, v: 0 },
  { u: 5, v: 0 },
  { u: 2, v: 5 },
  { u: -2, v: 5 },
]

describe('polygonArea', () => {
  it('is half of base times height for a triangle', () => {
    expect(polygonArea(triangle)).toBe((6 * 4) / 2)
  })

  it('is the mean of the parallel sides times their distance for a trapezium', () => {
    expect(polygonArea(trapezium)).toBe(((10 + 4) / 2) * 5)
  })

  it('does not depend on the winding', () => {
    expect(polygonArea(triangle.toReversed())).toBe(12)
  })

  it('does not depend on where the polygon lies', () => {
    const moved = trapezium.map(({ u, v }) => ({ u: u + 1000, v: v - 700 }))
    expect(polygonArea(moved)).toBeCloseTo(35, 6)
  })

  it('is zero for a line', () => {
    expect(polygonArea([triangle[0], triangle[1]].filter((p) => p !== undefined))).toBe(0)
  })
})

describe('solidVolume', () => {
  it('is that of the box for a box', () => {
    expect(solidVolume(boxSolid(box([0, 2], [0, 3], [0, 4])))).toBe(24)
  })

  it('is area times length for a prism, whatever its axis', () => {
    for (const axis of ['x', 'y', 'z'] as const) {
      expect(solidVolume({ kind: 'prism', axis, polygon: triangle, from: -1, to: 9 })).toBe(12 * 10)
    }
  })
})

describe('solidBounds', () => {
  const along = (axis: PrismSolid['axis']): PrismSolid => ({
    kind: 'prism',
    axis,
    polygon: trapezium,
    from: 100,
    to: 130,
  })

  it('has u = z and v = y along x', () => {
    expect(solidBounds(along('x'))).toEqual(box([100, 130], [0, 5], [-5, 5]))
  })

  it('has u = x and v = z along y', () => {
    expect(solidBounds(along('y'))).toEqual(box([-5, 5], [100, 130], [0, 5]))
  })

  it('has u = x and v = y along z', () => {
    expect(solidBounds(along('z'))).toEqual(box([-5, 5], [0, 5], [100, 130]))
  })

  it('is the box itself for a box', () => {
    const plank = box([0, 1], [2, 3], [4, 5])
    expect(solidBounds(boxSolid(plank))).toEqual(plank)
  })
})
