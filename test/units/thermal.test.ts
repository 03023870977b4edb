import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  formatConductance,
  formatConductanceBand,
  formatFineConductance,
  formatResistance,
  formatUValue,
  parseResistance,
} from '../../src/units/thermal.ts'

function readM2KPerW(text: string, unit: 'rsi' | 'us'): number {
  const parsed = parseResistance(text, unit)
  return parsed.kind === 'ok' ? parsed.m2KPerW : Number.NaN
}

describe('parseResistance', () => {
  it.each([
    '1.62',
    '1,62',
    'RSI 1.62',
    'rsi1.62',
    'RSI-1.62',
    '1.62 RSI',
    '1.62 m²·K/W',
    '1.62 m2K/W',
  ])('reads %j as RSI 1.62', (text) => {
    expect(readM2KPerW(text, 'rsi')).toBe(1.62)
  })

  it('reads an RSI mark whatever the preference', () => {
    expect(readM2KPerW('RSI 1.62', 'us')).toBe(1.62)
  })

  // 13 * 0.17611018368 = 2.28943238788
  it.each([
    '13',
    'R 13',
    'R13',
    'R-13',
    'R–13',
    'r13',
    '13 R',
    '13 h·ft²·°F/Btu',
    '13 ft²·°F·h/BTU',
    '13 hr*ft2*F/Btu',
  ])('reads %j as US R 13', (text) => {
    expect(readM2KPerW(text, 'us')).toBeCloseTo(2.28943238788, 10)
  })

  it('reads an R mark as the US value whatever the preference', () => {
    expect(readM2KPerW('R 13', 'rsi')).toBe(readM2KPerW('13', 'us'))
  })

  it.each([
    ['1.62', 'rsi', 'RSI 1.62 (R 9.2)'],
    ['R 9.2', 'rsi', 'R 9.2 (RSI 1.62)'],
    ['9 1/2', 'us', 'R 9 1/2 (RSI 1.67)'],
  ] as const)('says what it understood by %j in %s', (text, unit, understood) => {
    expect(parseResistance(text, unit)).toMatchObject({ understood })
  })

  it.each([
    ['', 'Type a resistance, such as RSI 1.62 or R 9.2.'],
    ['-1', 'A resistance cannot be less than 0.'],
    ['R', 'Start with a number. Type it as RSI 1.62 or R 9.2.'],
    ['R-', 'Start with a number. Type it as RSI 1.62 or R 9.2.'],
    ['R 9.2 m2K/W', 'Give one unit only. Type it as RSI 1.62 or R 9.2.'],
    ['5 mm', '"mm" is not a unit used here. Type it as RSI 1.62 or R 9.2.'],
    ['U 0.6', 'Start with a number. Type it as RSI 1.62 or R 9.2.'],
  ])('refuses %j and says why', (text, message) => {
    expect(parseResistance(text, 'rsi')).toEqual({ kind: 'error', message })
  })
})

describe('formatResistance', () => {
  it.each([
    [1.62, 'rsi', 'RSI 1.62'],
    [1.6, 'rsi', 'RSI 1.60'],
    // 1.62 * 5.678 = 9.198
    [1.62, 'us', 'R 9.2'],
    [0, 'us', 'R 0.0'],
    [Number.POSITIVE_INFINITY, 'rsi', '–'],
  ] as const)('shows %d m²·K/W in %s as %j', (m2KPerW, unit, text) => {
    expect(formatResistance(m2KPerW, unit)).toBe(text)
  })

  it('reads back to within half of its last digit', () => {
    const resistance = fc.double({ min: 0, max: 20, noNaN: true })
    fc.assert(
      fc.property(resistance, fc.constantFrom('rsi', 'us'), (m2KPerW, unit) => {
        const error = Math.abs(readM2KPerW(formatResistance(m2KPerW, unit), unit) - m2KPerW)
        // 0.005 for RSI; 0.05 * 0.17611 = 0.0088055 for R.
        expect(error).toBeLessThanOrEqual(unit === 'rsi' ? 0.005 + 1e-9 : 0.00881)
      }),
      { seed: 10 },
    )
  })
})

describe('formatConductance', () => {
  it.each([
    [1.83, 'rsi', '1.83 W/K'],
    // 1.83 * 1.8956 = 3.469
    [1.83, 'us', '3.5 Btu/(h·°F)'],
    [Number.NaN, 'us', '–'],
  ] as const)('shows %d W/K in %s as %j', (wPerK, unit, text) => {
    expect(formatConductance(wPerK, unit)).toBe(text)
  })

  it('takes as many decimals as are asked for', () => {
    expect(formatConductance(0.0436, 'rsi', 3)).toBe('0.044 W/K')
    // 1 W/K is 1.895634 Btu/(h·°F).
    expect(formatConductance(1, 'us', 3)).toBe('1.896 Btu/(h·°F)')
  })
})

describe('formatConductanceBand', () => {
  it('rounds outwards, and leaves whole hundredths alone', () => {
    expect(formatConductanceBand(1.2269, 1.2431, 'rsi')).toBe('1.22 and 1.25 W/K')
    expect(formatConductanceBand(1.22, 1.25, 'rsi')).toBe('1.22 and 1.25 W/K')
    expect(formatConductanceBand(1.35028, 1.35412, 'rsi')).toBe('1.350 and 1.355 W/K')
    // 1 W/K is 1.895634 Btu/(h·°F), 1.1 W/K is 2.085198.
    expect(formatConductanceBand(1, 1.1, 'us')).toBe('1.89 and 2.09 Btu/(h·°F)')
  })
})

describe('formatFineConductance', () => {
  it('shows a third decimal where two would say little', () => {
    expect(formatFineConductance(1.234, 'rsi')).toBe('1.23 W/K')
    expect(formatFineConductance(0.0434, 'rsi')).toBe('0.043 W/K')
    expect(formatFineConductance(-0.0434, 'rsi')).toBe('-0.043 W/K')
  })
})

describe('formatUValue', () => {
  it.each([
    [0.617, 'rsi', '0.62 W/(m²·K)'],
    // 0.617 / 5.678 = 0.1087
    [0.617, 'us', '0.109 Btu/(h·ft²·°F)'],
    [Number.NaN, 'rsi', '–'],
  ] as const)('shows %d W/(m²·K) in %s as %j', (wPerM2K, unit, text) => {
    expect(formatUValue(wPerM2K, unit)).toBe(text)
  })
})
