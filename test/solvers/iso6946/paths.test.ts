import { describe, expect, it } from 'vitest'
import { derivePaths, type Layer } from '../../../src/solvers/iso6946/paths.ts'

const layer = (fractions: readonly number[], pattern?: string): Layer => ({
  sections: fractions.map((fraction, i) => ({ fraction, resistanceM2KPerW: i + 1 })),
  ...(pattern !== undefined && { pattern }),
})

describe('derivePaths', () => {
  it('gives the four fractions of two independent bridged layers', () => {
    // Block wall example: 12 % timber, 6.7 % mortar. Computed apart.
    const fractions = derivePaths([layer([0.88, 0.12]), layer([0.933, 0.067])]).map(
      ({ fraction }) => fraction,
    )
    expect(fractions.map((f) => f.toFixed(5))).toEqual(['0.82104', '0.05896', '0.11196', '0.00804'])
  })

  it('gives one path for each section when layers of a pattern are divided alike', () => {
    const paths = derivePaths([layer([0.7, 0.3], 'a'), layer([0.7, 0.3], 'a')])
    expect(paths.map((p) => p.resistanceM2KPerW)).toEqual([2, 4])
  })

  it('crosses different patterns', () => {
    const paths = derivePaths([layer([0.7, 0.3], 'a'), layer([0.6, 0.4], 'b')])
    expect(paths).toHaveLength(4)
  })

  it('splits the face fully whatever the rounding of the fractions', () => {
    const tenths = Array.from({ length: 10 }, () => 0.1)
    const paths = derivePaths([layer(tenths, 'a'), layer([0.3, 0.7], 'a')])
    expect(paths).toHaveLength(10)
    expect(paths.reduce((sum, { fraction }) => sum + fraction, 0)).toBeCloseTo(1, 12)
    // The edge at 0.3 is at 0.1 + 0.1 + 0.1 in the other layer; no sliver comes of it.
    expect(paths.map((p) => p.resistanceM2KPerW)).toEqual([2, 3, 4, 6, 7, 8, 9, 10, 11, 12])
  })

  it('is one empty path without layers', () => {
    expect(derivePaths([])).toEqual([{ fraction: 1, resistanceM2KPerW: 0, taperM2KPerW: 0 }])
  })
})
