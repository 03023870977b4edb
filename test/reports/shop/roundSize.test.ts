import { describe, expect, it } from 'vitest'
import { toHundredths } from '../../../src/reports/shop/roundSize.ts'

describe('toHundredths', () => {
  it('rounds exact halves away from zero although they are not exact in binary', () => {
    expect([9.525, 1.005, 19.05].map(toHundredths)).toEqual([953, 101, 1905])
  })
  it('rounds a length and its negative alike, and never to minus zero', () => {
    expect(toHundredths(-9.525)).toBe(-953)
    expect(Object.is(toHundredths(-0.001), 0)).toBe(true)
  })
})
