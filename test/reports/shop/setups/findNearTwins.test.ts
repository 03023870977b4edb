import { describe, expect, it } from 'vitest'
import { findNearTwins } from '../../../../src/reports/shop/setups/findNearTwins.ts'
import { cutRow } from './cutRows.ts'

const twinsOf = (changes: Parameters<typeof cutRow>[1]) =>
  findNearTwins([cutRow('A'), cutRow('B', changes)])

describe('findNearTwins', () => {
  it('finds rows that differ by more than half a millimetre and less than three', () => {
    expect(twinsOf({ lengthMm: 801 })).toEqual([{ labels: ['A', 'B'], differenceMm: 1 }])
    expect(twinsOf({ widthMm: 57.5 })).toEqual([{ labels: ['A', 'B'], differenceMm: 2.5 }])
    expect(twinsOf({ lengthMm: 800.5 })).toEqual([])
    expect(twinsOf({ lengthMm: 803 })).toEqual([])
  })

  it('does not take rows for twins that differ elsewhere', () => {
    expect(twinsOf({ lengthMm: 801, widthMm: 90 })).toEqual([])
    expect(twinsOf({ lengthMm: 801, thicknessMm: 20 })).toEqual([])
    expect(twinsOf({ lengthMm: 801, material: 'larch' })).toEqual([])
    expect(twinsOf({ lengthMm: 801, bought: true })).toEqual([])
  })
})
