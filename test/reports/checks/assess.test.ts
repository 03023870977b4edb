import { describe, expect, it } from 'vitest'
import { assess, verdictIn, worstIn } from '../../../src/reports/checks/assess.ts'

const band = { low: 6, high: 9, fixBelow: 5, fixAbove: 10 }

describe('verdictIn', () => {
  it('counts each limit itself as right', () => {
    expect([4.9, 5, 5.9, 6, 9, 9.1, 10, 10.1].map((v) => verdictIn(band, v))).toEqual([
      'fix',
      'look',
      'look',
      'ok',
      'ok',
      'look',
      'look',
      'fix',
    ])
  })

  it('forgives the hair by which a sum of lengths misses its limit', () => {
    expect(0.1 + 0.2).toBeGreaterThan(0.3)
    expect(verdictIn({ high: 0.3, fixAbove: 0.3 }, 0.1 + 0.2)).toBe('ok')
  })
})

describe('assess', () => {
  const finding = {
    id: 'x',
    title: 'X',
    quantity: 'length',
    band,
    why: 'because',
    source: 'common practice',
    fix: () => ({ label: 'cure', changes: [] }),
  } as const

  it('asks for a fix only when something is wrong', () => {
    expect(assess({ ...finding, measured: 7 }).fix).toBeUndefined()
    expect(assess({ ...finding, measured: 9.5 }).fix?.label).toBe('cure')
  })

  it('shows the limits of what is right', () => {
    expect(assess({ ...finding, measured: 7 }).limits).toEqual({ low: 6, high: 9 })
  })
})

describe('worstIn', () => {
  it('picks the value furthest outside, the first of equals', () => {
    expect(worstIn(band, [7, 5.5, 9.2])).toBe(5.5)
    expect(worstIn(band, [7, 8])).toBe(7)
    expect(worstIn(band, [])).toBeUndefined()
  })
})
