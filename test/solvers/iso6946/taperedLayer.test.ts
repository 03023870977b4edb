import { describe, expect, it } from 'vitest'
import { computeTaperedTransmittance } from '../../../src/solvers/iso6946/taperedLayer.ts'

/** Mean of 1 / (uniform + t x taper) over t from 0 to 1 by Simpson's rule. */
const integrate = (uniform: number, taper: number, steps: number): number => {
  let sum = 0
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2
    sum += weight / (uniform + (i / steps) * taper)
  }
  return sum / (3 * steps)
}

describe('computeTaperedTransmittance', () => {
  it.each([
    [0.5, 0.001],
    [0.25, 1],
    [1.2, 3],
    [3.6, 1.4],
    [0.14, 6],
  ])('agrees with a numerical integral for %f and %f', (uniformM2KPerW, taperM2KPerW) => {
    const closed = computeTaperedTransmittance({ uniformM2KPerW, taperM2KPerW })
    expect(closed / integrate(uniformM2KPerW, taperM2KPerW, 8000)).toBeCloseTo(1, 9)
  })

  it('is ln 2 when the taper equals the rest and both are 1', () => {
    const both = { uniformM2KPerW: 1, taperM2KPerW: 1 }
    expect(computeTaperedTransmittance(both)).toBeCloseTo(Math.LN2, 12)
  })

  it('goes over into the even panel as the taper vanishes', () => {
    const at = (taperM2KPerW: number) =>
      computeTaperedTransmittance({ uniformM2KPerW: 2, taperM2KPerW })
    expect(at(0)).toBe(0.5)
    expect(at(1e-12)).toBeCloseTo(0.5, 12)
  })

  it('lies between the thin edge and the even panel of mean thickness', () => {
    const u = computeTaperedTransmittance({ uniformM2KPerW: 1, taperM2KPerW: 2 })
    expect(u).toBeLessThan(1 / 1)
    // Thin parts lose more than thick parts save.
    expect(u).toBeGreaterThan(1 / 2)
  })

  it.each([
    [0, 1],
    [-1, 1],
    [1, -0.1],
    [Number.NaN, 1],
  ])('refuses %f and %f', (uniformM2KPerW, taperM2KPerW) => {
    expect(() => computeTaperedTransmittance({ uniformM2KPerW, taperM2KPerW })).toThrow()
  })
})
