import { describe, expect, it } from 'vitest'
import { parseLength } from '../../src/units/length.ts'
import { parseMass } from '../../src/units/mass.ts'
import { parseTemperature } from '../../src/units/temperature.ts'
import { formatConductance, parseResistance } from '../../src/units/thermal.ts'

// A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units (SI),
// NIST Special Publication 811, 2008 edition, appendix B.8, "Factors for units listed
// alphabetically". Seven figures are printed unless the factor is exact.
describe('NIST SP 811 appendix B.8', () => {
  it('has the inch at exactly 25.4 mm', () => {
    expect(parseLength('1 in', 'mm')).toMatchObject({ mm: 25.4 })
  })

  it('has the foot at exactly 0.3048 m', () => {
    expect(parseLength('1 ft', 'mm')).toMatchObject({ mm: 304.8 })
  })

  it('has the pound at exactly 0.453 592 37 kg', () => {
    expect(parseMass('1 lb', 'kg')).toMatchObject({ kg: 0.45359237 })
  })

  it('has the ounce at 0.028 349 52 kg (from memory)', () => {
    const ounce = parseMass('1 oz', 'kg')
    expect(ounce.kind === 'ok' && ounce.kg.toFixed(8)).toBe('0.02834952')
  })

  it('has thermal insulance 1 h·ft²·°F/Btu at 0.176 110 2 m²·K/W', () => {
    const one = parseResistance('1', 'us')
    expect(one.kind === 'ok' && one.m2KPerW.toFixed(7)).toBe('0.1761102')
  })

  it('has 1 Btu/(h·ft²·°F) at 5.678 263 W/(m²·K)', () => {
    const one = parseResistance('1', 'us')
    expect(one.kind === 'ok' && (1 / one.m2KPerW).toFixed(6)).toBe('5.678263')
  })

  it('has the Btu at 1055.056 J (from memory)', () => {
    // 1 Btu/(h·°F) = 1055.056 J / (3600 s * 5/9 K) = 0.527528 W/K. At 100 000 times that, one more
    // in the seventh figure of the Btu would show as 0.1.
    expect(formatConductance(52752.8, 'us')).toBe('100000.0 Btu/(h·°F)')
  })

  it('has °C = (°F - 32) / 1.8', () => {
    expect(parseTemperature('50 °F', 'c')).toMatchObject({ celsius: 10 })
  })
})
