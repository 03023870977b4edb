import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  growRect,
  intersectRects,
  joinRects,
  type Rect,
  rect,
  rectArea,
  rectsOverlap,
  subtractRects,
} from '../../src/geometry/rect.ts'

/** Rectangles on a grid of whole numbers, so that edges often fall together. */
const arbitraryRect = (size: number): fc.Arbitrary<Rect> =>
  fc
    .tuple(
      fc.integer({ min: -2, max: size }),
      fc.integer({ min: 1, max: size }),
      fc.integer({ min: -2, max: size }),
      fc.integer({ min: 1, max: size }),
    )
    .map(([u, du, v, dv]) => rect(u, u + du, v, v + dv))

/** How many unit squares of the grid lie in `r` and in none of `holes`, counted one by one. */
const countCells = (r: Rect, holes: readonly Rect[]): number => {
  let cells = 0
  for (let u = r.u0; u < r.u1; u += 1) {
    for (let v = r.v0; v < r.v1; v += 1) {
      const inHole = holes.some((h) => h.u0 <= u && u < h.u1 && h.v0 <= v && v < h.v1)
      if (!inHole) cells += 1
    }
  }
  return cells
}

const sumAreas = (rects: readonly Rect[]): number => rects.reduce((sum, r) => sum + rectArea(r), 0)

describe('rectsOverlap', () => {
  it('is false for rectangles that share an edge or a corner only', () => {
    expect(rectsOverlap(rect(0, 2, 0, 2), rect(2, 4, 0, 2))).toBe(false)
    expect(rectsOverlap(rect(0, 2, 0, 2), rect(2, 4, 2, 4))).toBe(false)
  })

  it('is true as soon as they share an area', () => {
    expect(rectsOverlap(rect(0, 2, 0, 2), rect(1.999, 4, 0, 2))).toBe(true)
    expect(rectsOverlap(rect(0, 9, 0, 9), rect(4, 5, 4, 5))).toBe(true)
  })
})

describe('intersectRects', () => {
  it('is the common part', () => {
    expect(intersectRects(rect(0, 5, 0, 5), rect(3, 9, -2, 4))).toEqual(rect(3, 5, 0, 4))
  })

  it('is undefined when they only touch', () => {
    expect(intersectRects(rect(0, 5, 0, 5), rect(5, 9, 0, 5))).toBeUndefined()
  })
})

describe('growRect and joinRects', () => {
  it('grow at both ends', () => {
    expect(growRect(rect(0, 10, 0, 4), 2, 1)).toEqual(rect(-2, 12, -1, 5))
    expect(growRect(rect(0, 10, 0, 4), -1, -1)).toEqual(rect(1, 9, 1, 3))
  })

  it('join to the smallest rectangle around both', () => {
    expect(joinRects(rect(0, 1, 0, 1), rect(5, 6, -3, 0))).toEqual(rect(0, 6, -3, 1))
  })
})

describe('subtractRects', () => {
  it('leaves a rectangle that no hole meets as it is', () => {
    const board = rect(0, 10, 0, 5)
    expect(subtractRects(board, [rect(10, 12, 0, 5), rect(0, 1, 5, 6)])).toEqual([board])
  })

  it('leaves nothing when a hole covers it', () => {
    expect(subtractRects(rect(0, 10, 0, 5), [rect(-1, 11, -1, 6)])).toEqual([])
  })

  it('cuts a slot in the middle into four pieces', () => {
    const pieces = subtractRects(rect(0, 10, 0, 10), [rect(3, 7, 4, 6)])
    expect(pieces).toHaveLength(4)
    expect(sumAreas(pieces)).toBe(100 - 4 * 2)
  })

  it('keeps a piece whole over a cut that does not reach it', () => {
    // A notch at the right edge: the left part stays one piece over its whole height.
    const pieces = subtractRects(rect(0, 10, 0, 9), [rect(6, 10, 3, 5)])
    expect(pieces).toHaveLength(3)
    expect(sumAreas(pieces)).toBe(90 - 8)
  })

  it('covers exactly what no hole covers, without overlap, within the rectangle', () => {
    fc.assert(
      fc.property(
        arbitraryRect(12),
        fc.array(arbitraryRect(12), { maxLength: 5 }),
        (board, holes) => {
          const pieces = subtractRects(board, holes)
          expect(sumAreas(pieces)).toBe(countCells(board, holes))
          pieces.forEach((p, i) => {
            expect(rectArea(p)).toBeGreaterThan(0)
            expect(joinRects(p, board)).toEqual(board)
            expect(holes.some((h) => rectsOverlap(p, h))).toBe(false)
            expect(pieces.slice(i + 1).some((q) => rectsOverlap(p, q))).toBe(false)
          })
        },
      ),
      { numRuns: 1000, seed: 11 },
    )
  })
})
