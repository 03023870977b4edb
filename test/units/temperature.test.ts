import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  formatTemperature,
  formatTemperatureDifference,
  parseTemperature,
} from '../../src/units/temperature.ts'

describe('parseTemperature', () => {
  it.each([
    ['20', 'c', 20],
    ['-5,5', 'c', -5.5],
    ['+4', 'c', 4],
    ['20 °C', 'f', 20],
    ['20° C', 'f', 20],
    ['20ºC', 'f', 20],
    ['20C', 'f', 20],
    ['20°', 'c', 20],
    // Freezing, boiling and the one point where both scales agree.
    ['32', 'f', 0],
    ['212 °F', 'c', 100],
    ['−40 °F', 'c', -40],
    ['-40', 'f', -40],
    ['-459.67 °F', 'c', -273.15],
    ['-273.15', 'c', -273.15],
  ] as const)('reads %j in %s as %d °C', (text, unit, celsius) => {
    expect(parseTemperature(text, unit)).toMatchObject({ kind: 'ok', celsius })
  })

  it.each([
    ['20', 'c', '20 °C'],
    ['50', 'f', '50 °F (10.0 °C)'],
    ['50 f', 'c', '50 °F (10.0 °C)'],
    ['10 c', 'f', '10 °C (50.0 °F)'],
    ['-5', 'c', '-5 °C'],
  ] as const)('says what it understood by %j in %s', (text, unit, understood) => {
    expect(parseTemperature(text, unit)).toMatchObject({ understood })
  })

  it.each([
    ['', 'Type a temperature, such as -5 °C or 23 °F.'],
    ['-273.2', 'Nothing can be colder than -273.15 °C (-459.67 °F).'],
    ['20 K', '"k" is not a unit used here. Type it as -5 °C or 23 °F.'],
    ['warm', 'Start with a number. Type it as -5 °C or 23 °F.'],
    ['5 c 3 f', 'Give a temperature in one unit. Type it as -5 °C or 23 °F.'],
  ])('refuses %j and says why', (text, message) => {
    expect(parseTemperature(text, 'c')).toEqual({ kind: 'error', message })
  })

  it.each(['20 °C °F', '20 °°', '1,234', '1/0'])('refuses %j', (text) => {
    expect(parseTemperature(text, 'c').kind).toBe('error')
  })
})

describe('formatTemperature', () => {
  it.each([
    [-5, 'c', '-5.0 °C'],
    [-5, 'f', '23.0 °F'],
    [-0.04, 'c', '0.0 °C'],
    [100, 'f', '212.0 °F'],
    [Number.NaN, 'c', '–'],
  ] as const)('shows %d °C in %s as %j', (celsius, unit, text) => {
    expect(formatTemperature(celsius, unit)).toBe(text)
  })

  it('takes a number of decimals', () => {
    expect(formatTemperature(19.849, 'c', { decimals: 0 })).toBe('20 °C')
  })

  it('reads back to within half of its last digit', () => {
    const celsius = fc.double({ min: -60, max: 60, noNaN: true })
    fc.assert(
      fc.property(celsius, fc.constantFrom('c', 'f'), (value, unit) => {
        const read = parseTemperature(formatTemperature(value, unit), unit)
        const error = read.kind === 'ok' ? Math.abs(read.celsius - value) : Number.NaN
        expect(error).toBeLessThanOrEqual(0.05 + 1e-9)
      }),
      { seed: 9 },
    )
  })

  it('keeps every tenth of a degree exactly through its own unit', () => {
    for (let tenths = -600; tenths <= 600; tenths += 1) {
      const celsius = tenths / 10 + 0
      expect(parseTemperature(formatTemperature(celsius, 'c'), 'c')).toMatchObject({ celsius })
      const inFahrenheit = parseTemperature(`${tenths / 10} °F`, 'c')
      expect(inFahrenheit.kind === 'ok' && formatTemperature(inFahrenheit.celsius, 'f')).toBe(
        `${(tenths / 10).toFixed(1)} °F`,
      )
    }
  })
})

describe('formatTemperatureDifference', () => {
  it('scales without the offset of 32', () => {
    expect(formatTemperatureDifference(3, 'c')).toBe('3.0 °C')
    expect(formatTemperatureDifference(3, 'f')).toBe('5.4 °F')
    expect(formatTemperatureDifference(0, 'f')).toBe('0.0 °F')
    expect(formatTemperatureDifference(-1, 'f', { decimals: 0 })).toBe('-2 °F')
    expect(formatTemperatureDifference(Number.NaN, 'f')).toBe('–')
  })
})
