import { describe, expect, it } from 'vitest'
import { addFractions, formatFraction, scaleFraction } from '../../src/units/fraction.ts'

describe('scaleFraction', () => {
  it('rounds once, where a product of rounded numbers is off by a bit', () => {
    const inches = { numerator: 33, denominator: 2 }
    expect(scaleFraction(inches, { numerator: 127, denominator: 5 })).toBe(419.1)
    // The plain product is why this function exists.
    expect(25.4 * 16.5).not.toBe(419.1)
  })
})

describe('addFractions', () => {
  it('adds over unlike denominators', () => {
    const sum = addFractions({ numerator: 12, denominator: 1 }, { numerator: 9, denominator: 2 })
    expect(sum).toEqual({ numerator: 33, denominator: 2 })
  })
})

describe('formatFraction', () => {
  it.each([
    [33, 2, '16 1/2'],
    [16, 32, '1/2'],
    [-24, 32, '-3/4'],
    [-40, 32, '-1 1/4'],
    [512, 32, '16'],
    [0, 32, '0'],
    [-0, 32, '0'],
  ])('writes %d/%d as %j', (numerator, denominator, text) => {
    expect(formatFraction({ numerator, denominator })).toBe(text)
  })
})
