import { describe, expect, it } from 'vitest'
import type { Check } from '../../src/reports/checks/runChecks.ts'
import { formatLimits, formatMeasured } from '../../src/sheets/checkWords.ts'
import { INCH, METRIC } from '../../src/units/preferences.ts'

const check = (change: Partial<Check>): Check => ({
  id: 'test',
  title: 'Test',
  verdict: 'ok',
  quantity: 'length',
  measured: 8,
  limits: {},
  why: '',
  source: '',
  fix: undefined,
  partIds: [],
  ...change,
})

describe('formatMeasured', () => {
  it('shows each quantity in the units of the person', () => {
    expect(formatMeasured('length', 12.7, INCH)).toBe('1/2 in')
    // 1440 mm² is 14.4 cm², as in a slot of 180 by 8 mm.
    expect(formatMeasured('area', 1440, METRIC)).toBe('14.4 cm²')
    expect(formatMeasured('angle', 30, METRIC)).toBe('30°')
    expect(formatMeasured('count', 2, METRIC)).toBe('2')
    expect(formatMeasured('mass', 10, METRIC)).toBe('10.0 kg')
    expect(formatMeasured('resistance', 1.6, METRIC)).toBe('RSI 1.60')
  })
})

describe('formatLimits', () => {
  it('says the limits in words', () => {
    expect(formatLimits(check({ limits: { low: 6, high: 9 } }), METRIC)).toBe('6 mm to 9 mm')
    expect(formatLimits(check({ limits: { low: 6 } }), METRIC)).toBe('at least 6 mm')
    expect(formatLimits(check({ limits: { high: 9 } }), METRIC)).toBe('at most 9 mm')
    expect(formatLimits(check({ limits: { low: 0, high: 0 } }), METRIC)).toBe('0 mm')
    expect(formatLimits(check({}), METRIC)).toBe('')
  })
})
