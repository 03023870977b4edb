import { describe, expect, it } from 'vitest'
import { readConductionCase, solveCase } from './conductionCase.ts'

/**
 * Fourier series of the half square column, x and y in units of its width:
 * T = Σ over odd n of 80/(nπ) · sin(nπx/2) · sinh(nπy/2)/sinh(nπ), by separation of variables.
 */
const analyticC = (x: number, y: number): number => {
  let sum = 0
  for (let n = 1; n < 4000; n += 2) {
    const k = (n * Math.PI) / 2
    // The quotient of the two sinh, written so that nothing overflows.
    const share = (Math.exp(k * (y - 2)) * (1 - Math.exp(-2 * k * y))) / (1 - Math.exp(-4 * k))
    sum += (80 / (n * Math.PI)) * Math.sin(k * x) * share
  }
  return sum
}

const given = readConductionCase('iso10211-case1.json')
const points = given.points.map(({ atMm: [x = 0, y = 0], ...rest }) => ({
  ...rest,
  atMm: [x, y],
  analyticC: analyticC(x / 1000, y / 1000),
}))

/** The largest error over the 28 points against the series, K. */
const worstError = (cellsAcross: number): number => {
  const cell = 1000 / cellsAcross
  const { temperatureAtMm } = solveCase(given, { leastCellMm: cell, greatestCellMm: cell })
  return Math.max(...points.map((p) => Math.abs(temperatureAtMm(p.atMm) - p.analyticC)))
}

describe('ISO 10211 case 1, half a square column', () => {
  it('has a series that is 5 at the middle of the whole square, and the table when rounded', () => {
    // The square is four quarters of which one side is at 20: 20/4.
    expect(analyticC(1, 1)).toBeCloseTo(5, 9)
    expect(points).toHaveLength(28)
    for (const { analyticC: exact, expectedC } of points) {
      expect(Math.abs(exact - expectedC)).toBeLessThanOrEqual(0.05)
    }
  })

  it("is within the standard's 0.1 K of the table at all 28 points", () => {
    const { temperatureAtMm } = solveCase(given)
    for (const { atMm, expectedC, withinK } of points) {
      expect(Math.abs(temperatureAtMm(atMm) - expectedC)).toBeLessThanOrEqual(withinK)
    }
  })

  it('is within 0.02 K of the series with 32 cells across, and four times nearer with 64', () => {
    const [of16, of32, of64] = [worstError(16), worstError(32), worstError(64)]
    expect(of32).toBeLessThan(0.02)
    expect(Math.log2(of16 / of32)).toBeCloseTo(2, 0)
    expect(Math.log2(of32 / of64)).toBeCloseTo(2, 0)
  })
})
