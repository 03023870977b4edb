import { describe, expect, it } from 'vitest'
import { freshAfter } from '../../src/scene/heatFade.ts'

describe('freshAfter', () => {
  it('falls from 1 to 0 and stays there', () => {
    expect(freshAfter(0)).toBe(1)
    expect(freshAfter(450)).toBeCloseTo(0.5, 12)
    expect(freshAfter(Number.POSITIVE_INFINITY)).toBe(0)
    for (let ms = 10; ms < 1200; ms += 10) {
      expect(freshAfter(ms)).toBeLessThanOrEqual(freshAfter(ms - 10))
    }
  })

  it('has hardly begun when a preview comes within a tenth of a second', () => {
    expect(freshAfter(100)).toBeGreaterThan(0.96)
  })
})
