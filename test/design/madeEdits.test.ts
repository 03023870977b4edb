import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { markMade, unmarkMade } from '../../src/design/madeEdits.ts'
import { MAX_MADE } from '../../src/design/schema.ts'

const made = (partId: string, lengthMm = 100) => ({
  partId,
  lengthMm,
  widthMm: 50,
  thicknessMm: 20,
})

describe('markMade', () => {
  it('adds parts at the end and gives a known part its new size', () => {
    const first = markMade(DEFAULT_DESIGN, [made('a'), made('b')])
    expect(markMade(first, [made('a', 99), made('c')]).made).toEqual([
      made('a', 99),
      made('b'),
      made('c'),
    ])
  })

  it('gives the same design when nothing changes', () => {
    const first = markMade(DEFAULT_DESIGN, [made('a')])
    expect(markMade(first, [made('a')])).toBe(first)
    expect(markMade(first, [])).toBe(first)
  })

  it('keeps no more than the document holds', () => {
    const many = Array.from({ length: MAX_MADE + 3 }, (_, i) => made(`part-${i}`))
    const { made: kept } = markMade(DEFAULT_DESIGN, many)
    expect(kept).toHaveLength(MAX_MADE)
    expect(kept[0]?.partId).toBe('part-0')
  })
})

describe('unmarkMade', () => {
  it('takes parts off the list, and leaves the design alone when they are not on it', () => {
    const first = markMade(DEFAULT_DESIGN, [made('a'), made('b')])
    expect(unmarkMade(first, ['a', 'z']).made).toEqual([made('b')])
    expect(unmarkMade(first, ['z'])).toBe(first)
  })
})
