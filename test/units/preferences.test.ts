import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatArea } from '../../src/units/area.ts'
import { formatLength, parseLength } from '../../src/units/length.ts'
import { formatMass } from '../../src/units/mass.ts'
import { INCH, METRIC, type UnitPreferences } from '../../src/units/preferences.ts'
import { formatTemperature } from '../../src/units/temperature.ts'
import { formatResistance } from '../../src/units/thermal.ts'

interface Stored {
  readonly mm: number
  readonly m2: number
  readonly m2KPerW: number
  readonly kg: number
  readonly celsius: number
}

function showAll(stored: Stored, preferences: UnitPreferences): readonly string[] {
  const { length, thermal, mass, temperature } = preferences
  return [
    formatLength(stored.mm, length, { withUnit: true }),
    formatArea(stored.m2, length),
    formatResistance(stored.m2KPerW, thermal),
    formatMass(stored.kg, mass),
    formatTemperature(stored.celsius, temperature),
  ]
}

const STORED: Stored = { mm: 419.1, m2: 0.9290304, m2KPerW: 1.62, kg: 45.359237, celsius: 10 }

describe('METRIC', () => {
  it('shows every quantity in SI or in units used with it', () => {
    const shown = ['419.1 mm', '0.93 m²', 'RSI 1.62', '45.4 kg', '10.0 °C']
    expect(showAll(STORED, METRIC)).toEqual(shown)
  })
})

describe('INCH', () => {
  it('shows every quantity in US units', () => {
    const shown = ['16 1/2 in', '10.0 ft²', 'R 9.2', '100.0 lb', '50.0 °F']
    expect(showAll(STORED, INCH)).toEqual(shown)
  })
})

describe('UnitPreferences', () => {
  it('through 100 switches alter no stored number and always show it the same', () => {
    const size = fc.double({ min: 0.01, max: 5000, noNaN: true })
    const stored = fc.record({ mm: size, m2: size, m2KPerW: size, kg: size, celsius: size })
    const preferences = fc.record({
      length: fc.constantFrom('mm', 'in'),
      thermal: fc.constantFrom('rsi', 'us'),
      mass: fc.constantFrom('kg', 'lb'),
      temperature: fc.constantFrom('c', 'f'),
    })
    const switches = fc.array(preferences, { minLength: 100, maxLength: 100 })
    fc.assert(
      fc.property(stored, switches, (values, order) => {
        const before = { ...values }
        const first = showAll(values, METRIC)
        for (const choice of order) showAll(values, choice)
        expect(values).toEqual(before)
        expect(showAll(values, METRIC)).toEqual(first)
      }),
      { seed: 7, numRuns: 30 },
    )
  })

  it('would alter a size only if the text shown were read back over it', () => {
    // Shown to 1/32 in: 418 mm is 16.457 in, and 25.4 * (16 + 15/32) = 418.30625.
    expect(parseLength(formatLength(418, 'in'), 'in')).toMatchObject({ mm: 418.30625 })
  })
})
