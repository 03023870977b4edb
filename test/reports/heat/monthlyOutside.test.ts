import { describe, expect, it } from 'vitest'
import { computeMonthlyOutside } from '../../../src/reports/heat/monthlyOutside.ts'

describe('computeMonthlyOutside', () => {
  it('is coldest in January and warmest in July, half the swing from the mean', () => {
    // Mean 10 and half swing 7, computed apart: 3.00 3.94 6.5 10 13.5 16.06 17, then back.
    const months = computeMonthlyOutside({ annualMeanC: 10, seasonalSwingC: 14 })
    expect(months.map(({ outsideC }) => outsideC.toFixed(2))).toEqual([
      ...['3.00', '3.94', '6.50', '10.00', '13.50', '16.06', '17.00'],
      ...['16.06', '13.50', '10.00', '6.50', '3.94'],
    ])
    expect(months.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])
  })

  it('keeps the mean of the year', () => {
    const months = computeMonthlyOutside({ annualMeanC: -3, seasonalSwingC: 31 })
    const mean = months.reduce((sum, { outsideC }) => sum + outsideC, 0) / 12
    expect(mean).toBeCloseTo(-3, 12)
  })

  it('is the same all year without a swing', () => {
    const months = computeMonthlyOutside({ annualMeanC: 8, seasonalSwingC: 0 })
    expect(new Set(months.map(({ outsideC }) => outsideC))).toEqual(new Set([8]))
  })
})
