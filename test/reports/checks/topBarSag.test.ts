import { describe, expect, it } from 'vitest'
import { topBarSagMm } from '../../../src/reports/checks/topBarSag.ts'

describe('topBarSagMm', () => {
  // Sums of the reference sheet: span 448, bar 27 wide, 9 GPa.
  it.each([
    [3.4, 19, 0.28],
    [3.4, 10, 1.93],
    [7, 19, 0.58],
    [7, 15, 1.18],
    [7, 10, 3.97],
  ])('of %s kg on a bar %s mm thick is %s mm', (loadKg, thicknessMm, sag) => {
    expect(topBarSagMm({ loadKg, spanMm: 448, widthMm: 27, thicknessMm })).toBeCloseTo(sag, 2)
  })

  it('agrees with a published bar of 22 by 10 over 480 mm under 6 kg, 5.195 mm at 8.9 GPa', () => {
    const bar = { loadKg: 6, spanMm: 480, widthMm: 22, thicknessMm: 10 }
    expect(topBarSagMm(bar)).toBeCloseTo((5.195 * 8900) / 9000, 2)
  })

  it('falls eightfold when the bar is twice as thick', () => {
    const bar = { loadKg: 6, spanMm: 480, widthMm: 22, thicknessMm: 10 }
    expect(topBarSagMm({ ...bar, thicknessMm: 20 })).toBeCloseTo(topBarSagMm(bar) / 8, 9)
  })
})
