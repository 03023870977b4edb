import { describe, expect, it } from 'vitest'
import { formatArea, formatEntranceArea } from '../../src/units/area.ts'

describe('formatArea', () => {
  it.each([
    [1.944, 'mm', '1.94 m²'],
    // 10 ft² = 10 * 0.3048² m²
    [0.9290304, 'in', '10.0 ft²'],
    [Number.NaN, 'in', '–'],
  ] as const)('shows %d m² in %s as %j', (m2, unit, text) => {
    expect(formatArea(m2, unit)).toBe(text)
  })
})

describe('formatEntranceArea', () => {
  it.each([
    // A slot of 150 by 10 mm.
    [0.0015, 'mm', '15.0 cm²'],
    // 6 by 1/2 in = 3 in² = 3 * 0.0254² m²
    [0.00193548, 'in', '3.0 in²'],
    [Number.NaN, 'mm', '–'],
  ] as const)('shows %d m² in %s as %j', (m2, unit, text) => {
    expect(formatEntranceArea(m2, unit)).toBe(text)
  })
})
