import { describe, expect, it } from 'vitest'
import {
  commonDivisor,
  priceUnitsPerMoney,
  roundGrid,
  toNanometres,
} from '../../../../src/solvers/cutting/lumber/wholeUnits.ts'

describe('commonDivisor', () => {
  it('is the greatest number that divides all', () => {
    expect(commonDivisor([12, 18, 30])).toBe(6)
    expect(commonDivisor([7])).toBe(7)
    expect(commonDivisor([])).toBe(0)
  })

  it('finds the 32nd of an inch in lengths with a saw cut of an eighth', () => {
    // 19 1/2, 8 3/32 and 30 in, each with 1/8 in: 628, 263 and 964 thirty-seconds.
    const inches = [19.5, 8 + 3 / 32, 30].map((length) => toNanometres(length * 25.4 + 3.175))
    expect(commonDivisor(inches)).toBe(793_750)
  })
})

describe('roundGrid', () => {
  it('keeps the longest board within the cells, in multiples of the finest grid', () => {
    // 6 m: 0.05 mm has 120 000 cells; 0.2 mm has 30 000.
    expect(roundGrid(6e9, 200_000)).toBe(50_000)
    expect(roundGrid(6e9, 30_000)).toBe(200_000)
    expect(roundGrid(6e9, 25_000) % 50_000).toBe(0)
  })

  it('is one for boards of few nanometres', () => {
    expect(roundGrid(1000, 5000)).toBe(1)
  })
})

describe('priceUnitsPerMoney', () => {
  it('is hundredths, or finer where a price is', () => {
    expect(priceUnitsPerMoney([5, 0.1, 3.99])).toBe(100)
    expect(priceUnitsPerMoney([5, 0.125])).toBe(1000)
    expect(priceUnitsPerMoney([1 / 3])).toBe(1e6)
    expect(priceUnitsPerMoney([])).toBe(100)
  })
})
