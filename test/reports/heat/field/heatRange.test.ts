import { describe, expect, it } from 'vitest'
import { heatLevels } from '../../../../src/reports/heat/field/heatColours.ts'
import { heatRange } from '../../../../src/reports/heat/field/heatRange.ts'

const night = { outsideC: -10, insideC: 10, warmestOutsideShare: 0.05, unit: 'c' } as const
const fahrenheit = (celsius: number): number => Math.round((celsius * 9 * 1e6) / 5 + 32e6) / 1e6

describe('heatRange', () => {
  it('runs from outside to inside as a whole', () => {
    expect(heatRange('whole', night)).toEqual({
      ...{ endC: 10, endShare: 1 },
      levels: heatLevels(-10, 10, 'c'),
    })
  })

  it('ends at the warmest outer skin, rounded up', () => {
    // 0.05 of 20 K is 1 K, which is round; 0.051 is 1.02 K.
    expect(heatRange('outside', night).endC).toBeCloseTo(-9, 12)
    const { endC, endShare } = heatRange('outside', { ...night, warmestOutsideShare: 0.051 })
    expect(endC).toBeCloseTo(-8.8, 12)
    expect(endShare).toBeCloseTo(0.06, 12)
  })

  it('has lines whose shares are of the way to inside', () => {
    const { levels } = heatRange('outside', night)
    expect(levels.map(({ celsius }) => Math.round(celsius * 1e6) / 1e6)).toEqual([
      -9.8, -9.6, -9.4, -9.2,
    ])
    for (const { celsius, share } of levels) expect(share).toBeCloseTo((celsius + 10) / 20, 12)
  })

  it('is round in Fahrenheit where that is shown', () => {
    // From 14 °F; 1 K is 1.8 °F.
    const { endC, levels } = heatRange('outside', { ...night, unit: 'f' })
    expect(fahrenheit(endC)).toBe(16)
    expect(levels.map(({ celsius }) => fahrenheit(celsius))).toEqual([
      14.2, 14.4, 14.6, 14.8, 15, 15.2, 15.4, 15.6, 15.8,
    ])
  })

  it('spans at least half a kelvin, and never more than there is', () => {
    expect(heatRange('outside', { ...night, warmestOutsideShare: 0 }).endC).toBeCloseTo(-9.4, 12)
    // As without insulation: 0.997 of 20 K is 9.94 °C, rounded to 10.
    expect(heatRange('outside', { ...night, warmestOutsideShare: 0.997 })).toEqual(
      heatRange('whole', night),
    )
    const mild = { ...night, outsideC: 9.8 }
    expect(heatRange('outside', mild)).toEqual(heatRange('whole', mild))
  })

  it('runs downwards when it is warmer outside', () => {
    const { endC, endShare } = heatRange('outside', { ...night, outsideC: 30.1, insideC: 10.1 })
    // 1 K down is 29.1 °C, and the next round one 29.0.
    expect(endC).toBeCloseTo(29, 12)
    expect(endShare).toBeCloseTo(0.055, 12)
  })

  it('has a share to divide by even without a difference', () => {
    const even = { ...night, insideC: -10 }
    expect(heatRange('outside', even)).toEqual({ endC: -10, endShare: 1, levels: [] })
  })
})
