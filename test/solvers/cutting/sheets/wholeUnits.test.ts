import { describe, expect, it } from 'vitest'
import {
  findWholeUnit,
  roundDown,
  roundUp,
  roundUpPrice,
} from '../../../../src/solvers/cutting/sheets/wholeUnits.ts'

describe('findWholeUnit', () => {
  it('finds tenths, and sixty-fourths of an inch', () => {
    expect(findWholeUnit([2440, 1220.5, 3.2])).toEqual({ unitMm: 0.1, isExact: true })
    expect(findWholeUnit([25.4, 25.4 / 64])).toEqual({ unitMm: 25.4 / 64, isExact: true })
  })

  it('takes the largest common unit', () => {
    expect(findWholeUnit([1200, 600, 400]).unitMm).toBe(200)
  })

  it('rounds where there is none: parts up, sheets down', () => {
    const unit = findWholeUnit([2440, 1000 / 3])
    expect(unit.isExact).toBe(false)
    expect(roundUp(1000 / 3, unit) * unit.unitMm).toBeGreaterThanOrEqual(1000 / 3)
    expect(roundDown(1000 / 3, unit) * unit.unitMm).toBeLessThanOrEqual(1000 / 3)
  })
})

describe('roundUpPrice', () => {
  it('goes up to a sum that the prices can make', () => {
    expect(roundUpPrice(101, [30, 45])).toBe(105)
    expect(roundUpPrice(105, [30, 45])).toBe(105)
  })

  it('leaves a price alone where there is no unit', () => {
    expect(roundUpPrice(1.5, [1 / 3])).toBe(1.5)
  })
})
