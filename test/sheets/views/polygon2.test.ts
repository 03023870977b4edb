import { describe, expect, it } from 'vitest'
import {
  convexHull,
  polygonsOverlap,
  stretchInside,
  withoutStretches,
} from '../../../src/sheets/views/polygon2.ts'

const p = (u: number, v: number) => ({ u, v })
const SQUARE = [p(0, 0), p(10, 0), p(10, 10), p(0, 10)]

describe('convexHull', () => {
  it('leaves out inner points and points in line, and runs anticlockwise', () => {
    const hull = convexHull([p(5, 5), p(0, 0), p(10, 10), p(5, 0), p(0, 10), p(10, 0)])
    expect(hull).toEqual(SQUARE)
  })
})

describe('stretchInside', () => {
  it('finds the stretch of a line within a polygon', () => {
    expect(stretchInside(p(-10, 5), p(30, 5), SQUARE, 0)).toEqual({ from: 0.25, to: 0.5 })
  })

  it('gives nothing for a line along an edge, unless the margin reaches out', () => {
    expect(stretchInside(p(0, 10), p(10, 10), SQUARE, 0)).toBeUndefined()
    expect(stretchInside(p(2, 10), p(8, 10), SQUARE, -0.1)).toEqual({ from: 0, to: 1 })
  })

  it('gives nothing for a line that misses', () => {
    expect(stretchInside(p(-5, -1), p(15, -1), SQUARE, 0)).toBeUndefined()
  })
})

describe('withoutStretches', () => {
  it('joins what overlaps and keeps the rest in order', () => {
    const left = withoutStretches([
      { from: 0.5, to: 0.7 },
      { from: 0.2, to: 0.4 },
      { from: 0.3, to: 0.5 },
    ])
    expect(left).toEqual([
      { from: 0, to: 0.2 },
      { from: 0.7, to: 1 },
    ])
  })

  it('leaves nothing of a whole that is taken', () => {
    expect(withoutStretches([{ from: 0, to: 1 }])).toEqual([])
  })
})

describe('polygonsOverlap', () => {
  it('is false for polygons that only touch', () => {
    const beside = SQUARE.map((q) => p(q.u + 10, q.v))
    expect(polygonsOverlap(SQUARE, beside, 0)).toBe(false)
    expect(
      polygonsOverlap(
        SQUARE,
        SQUARE.map((q) => p(q.u + 9, q.v)),
        0,
      ),
    ).toBe(true)
  })
})
