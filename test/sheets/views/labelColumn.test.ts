import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { DrawingItem, LineItem } from '../../../src/sheets/drawing.ts'
import {
  type Label,
  labelColumn,
  labelColumnHeight,
} from '../../../src/sheets/views/labelColumn.ts'
import { boxesOverlap, textBounds } from '../itemBounds.ts'

const label = (tag: string, x: number, y: number, w = 20, h = 8): Label => ({
  lines: [tag, 'Spruce, 19 mm'],
  face: [
    { x, y },
    { x: x + w, y },
    { x: x + w, y: y + h },
    { x, y: y + h },
  ],
  tag,
})

const leaders = (items: readonly DrawingItem[]): readonly LineItem[] =>
  items.filter((i): i is LineItem => i.kind === 'line' && i.tag?.startsWith('leader/') === true)

describe('labelColumn', () => {
  const column = { x: 120, side: 'right', top: 0, bottom: 200 } as const

  it('ends each leader inside its face', () => {
    const [leader] = leaders(labelColumn([label('a', 10, 50)], column))
    expect(leader?.from.x).toBeGreaterThan(10)
    expect(leader?.from.x).toBeLessThan(30)
    expect(leader?.from.y).toBeGreaterThanOrEqual(50)
    expect(leader?.from.y).toBeLessThanOrEqual(58)
  })

  it('keeps texts apart and in the column while they have room', () => {
    const place = fc.tuple(fc.integer({ min: 0, max: 80 }), fc.integer({ min: 0, max: 180 }))
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 12 }), (places) => {
        const labels = places.map(([x, y], i) => label(`part ${i}`, x, y))
        expect(labelColumnHeight(labels)).toBeLessThanOrEqual(200)
        const boxes = labelColumn(labels, column)
          .filter((i) => i.kind === 'text')
          .map(textBounds)
        for (const [i, a] of boxes.entries()) {
          expect(a.y0).toBeGreaterThanOrEqual(0)
          expect(a.y1).toBeLessThanOrEqual(200)
          for (const b of boxes.slice(i + 1)) expect(boxesOverlap(a, b)).toBe(false)
        }
      }),
      { numRuns: 40 },
    )
  })

  it('swaps labels whose leaders would cross', () => {
    // Crowded low: the nearer face must take the upper label.
    const items = labelColumn([label('far', 10, 10, 10, 4), label('near', 90, 12, 10, 4)], {
      x: 120,
      side: 'right',
      top: 80,
      bottom: 120,
    })
    const heights = leaders(items).map((l) => ({ tag: l.tag, y: l.to.y }))
    const y = (tag: string) => heights.find((h) => h.tag === `leader/${tag}`)?.y ?? 0
    expect(y('near')).toBeLessThan(y('far'))
  })
})
