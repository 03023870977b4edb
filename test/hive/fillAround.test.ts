import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { growRect, type Rect, rect, rectArea, rectsOverlap } from '../../src/geometry/rect.ts'
import { fillAround } from '../../src/hive/fillAround.ts'

const pocket = rect(0, 600, 0, 400)
const sumAreas = (rects: readonly Rect[]): number => rects.reduce((sum, r) => sum + rectArea(r), 0)
const narrowest = (pieces: readonly Rect[]): number =>
  Math.min(...pieces.map((p) => Math.min(p.u1 - p.u0, p.v1 - p.v0)))

describe('fillAround', () => {
  it('leaves a pocket without a block whole', () => {
    expect(fillAround(pocket, [rect(600, 620, 0, 50)])).toEqual([pocket])
  })

  it('is nothing where a block fills the pocket', () => {
    expect(fillAround(pocket, [rect(-5, 605, 0, 400)])).toEqual([])
  })

  it('cuts across at the edges of one block', () => {
    // Beside the block twice, and over it.
    expect(fillAround(pocket, [rect(200, 300, 0, 40)])).toHaveLength(3)
  })

  it('makes no sliver between two blocks whose upper edges are nearly in line', () => {
    const pieces = fillAround(pocket, [rect(100, 200, 0, 40), rect(300, 400, 0, 43)])
    expect(narrowest(pieces)).toBeGreaterThanOrEqual(40)
    expect(sumAreas(pieces)).toBe(600 * 400 - 100 * 40 - 100 * 43)
  })

  it('makes no sliver where edges are nearly in line both ways', () => {
    const blocks = [rect(100, 200, 0, 40), rect(300, 400, 0, 43), rect(97, 203, 300, 340)]
    const pieces = fillAround(pocket, blocks)
    expect(narrowest(pieces)).toBeGreaterThanOrEqual(10)
    expect(sumAreas(pieces)).toBe(600 * 400 - 100 * 40 - 100 * 43 - 106 * 40)
  })

  it('fills what up to four blocks leave, without overlap, and two blocks without a sliver', () => {
    const places = fc
      .array(
        fc.tuple(
          fc.integer({ min: 0, max: 500 }),
          fc.integer({ min: 40, max: 200 }),
          fc.integer({ min: 0, max: 340 }),
          fc.integer({ min: 12, max: 60 }),
        ),
        { maxLength: 4 },
      )
      .map((all) => all.map(([u, du, v, dv]) => rect(u, u + du, v, v + dv)))
    /** At least 20 from the pocket's edges and from each other, or flush. */
    const isSettled = (blocks: readonly Rect[]) =>
      blocks.every(
        (b, i) =>
          [b.u0, b.v0, 600 - b.u1, 400 - b.v1].every((gap) => gap === 0 || gap >= 20) &&
          blocks.slice(i + 1).every((c) => !rectsOverlap(growRect(b, 20, 20), c)),
      )
    fc.assert(
      fc.property(places.filter(isSettled), (blocks) => {
        const pieces = fillAround(pocket, blocks)
        expect(sumAreas(pieces)).toBeCloseTo(600 * 400 - sumAreas(blocks), 6)
        pieces.forEach((p, i) => {
          expect([...blocks, ...pieces.slice(i + 1)].some((q) => rectsOverlap(p, q))).toBe(false)
        })
        if (blocks.length <= 2) expect(narrowest(pieces)).toBeGreaterThanOrEqual(10)
      }),
      { numRuns: 300, seed: 13 },
    )
  })
})
