import { describe, expect, it } from 'vitest'
import { polygonsMeet } from '../../src/geometry/polygonsMeet.ts'

const square = (u: number, v: number, size: number) => [
  { u, v },
  { u: u + size, v },
  { u: u + size, v: v + size },
  { u, v: v + size },
]
const diamond = [
  { u: 0, v: 10 },
  { u: 10, v: 0 },
  { u: 0, v: -10 },
  { u: -10, v: 0 },
]

describe('polygonsMeet', () => {
  it('tells squares that overlap from those that touch or stand apart', () => {
    expect(polygonsMeet(square(0, 0, 10), square(9, 9, 10), 0.01)).toBe(true)
    expect(polygonsMeet(square(0, 0, 10), square(10, 0, 10), 0.01)).toBe(false)
    expect(polygonsMeet(square(0, 0, 10), square(0, 11, 10), 0.01)).toBe(false)
  })

  it('sees past the boxes around two polygons, whichever way they wind', () => {
    // The square's corner is 8 + 8 = 16 out, the diamond reaches 10.
    expect(polygonsMeet(diamond, square(8, 8, 10), 0.01)).toBe(false)
    expect(polygonsMeet(diamond.toReversed(), square(8, 8, 10).toReversed(), 0.01)).toBe(false)
    expect(polygonsMeet(diamond.toReversed(), square(4, 4, 10), 0.01)).toBe(true)
  })
})
