import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatMass, parseMass } from '../../src/units/mass.ts'

describe('parseMass', () => {
  it.each([
    ['12.5', 'kg', 12.5],
    ['12,5', 'kg', 12.5],
    ['450 g', 'kg', 0.45],
    ['12.5kg', 'lb', 12.5],
    ['100', 'lb', 45.359237],
    ['100 lbs', 'kg', 45.359237],
    ['100 lb.', 'kg', 45.359237],
    // 27.5 * 0.45359237
    ['27 1/2', 'lb', 12.473790175],
    // An ounce is a sixteenth of a pound; 5 lb 4 oz is 5.25 lb.
    ['16 oz', 'kg', 0.45359237],
    ['5 lb 4 oz', 'kg', 2.3813599425],
    ['0', 'kg', 0],
  ] as const)('reads %j in %s as %d kg', (text, unit, kg) => {
    expect(parseMass(text, unit)).toMatchObject({ kind: 'ok', kg })
  })

  it.each([
    ['12.5', 'kg', '12.5 kg'],
    ['12.5 kg', 'lb', '12.5 kg (27.6 lb)'],
    ['450 g', 'kg', '450 g (0.450 kg)'],
    ['450 g', 'lb', '450 g (0.992 lb, 0.450 kg)'],
    ['20', 'lb', '20 lb (9.07 kg)'],
    ['20 lb', 'kg', '20 lb (9.07 kg)'],
    ['5 lb 4 oz', 'lb', '5 lb 4 oz (5.25 lb, 2.38 kg)'],
  ] as const)('says what it understood by %j in %s', (text, unit, understood) => {
    expect(parseMass(text, unit)).toMatchObject({ understood })
  })

  it.each([
    ['', 'Type a mass, such as 12.5 kg, 450 g or 27 1/2 lb.'],
    ['-1 kg', 'A mass cannot be less than 0.'],
    ['5 mm', '"mm" is not a unit used here. Type it as 12.5 kg, 450 g or 27 1/2 lb.'],
    ['5 kg 3 lb', 'Give a mass in one unit. Type it as 12.5 kg, 450 g or 27 1/2 lb.'],
    ['5 lb 16 oz', 'With lb and oz, give whole lb and less than 16 oz.'],
    ['1,250', '"1,250" can be read in two ways. Type 1.250 or 1250.'],
  ])('refuses %j and says why', (text, message) => {
    expect(parseMass(text, 'kg')).toEqual({ kind: 'error', message })
  })
})

describe('formatMass', () => {
  it.each([
    [45.23, 'kg', '45.2 kg'],
    [4.523, 'kg', '4.52 kg'],
    [0.045, 'kg', '0.045 kg'],
    [0, 'kg', '0.0 kg'],
    [-4.5, 'kg', '-4.50 kg'],
    [45.359237, 'lb', '100.0 lb'],
    [0.45359237, 'lb', '1.00 lb'],
    [Number.NaN, 'lb', '–'],
  ] as const)('shows %d kg in %s as %j', (kg, unit, text) => {
    expect(formatMass(kg, unit)).toBe(text)
  })

  it('takes a fixed number of decimals', () => {
    expect(formatMass(45.23, 'kg', { decimals: 0 })).toBe('45 kg')
  })

  it('reads back to within what its last digit can tell', () => {
    const grams = fc.integer({ min: 0, max: 200_000 })
    fc.assert(
      fc.property(grams, fc.constantFrom('kg', 'lb'), (count, unit) => {
        const kg = count / 1000
        const read = parseMass(formatMass(kg, unit, { decimals: 3 }), unit)
        expect(read.kind === 'ok' ? Math.abs(read.kg - kg) : Number.NaN).toBeLessThanOrEqual(0.0005)
      }),
      { seed: 8 },
    )
  })
})
