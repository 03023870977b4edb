import { describe, expect, it } from 'vitest'
import { expectCase, readConductionCase, solveCase } from './conductionCase.ts'

const given = readConductionCase('iso10211-case2.json')

describe('ISO 10211 case 2, metal frame under a roof slab', () => {
  const solved = solveCase(given)

  it("is within the standard's 0.1 K and 0.1 W/m", () => expectCase(given, solved))

  it('has bounds round 9.491 W/m, the limit on finer and finer grids, less than 0.5 % apart', () => {
    // 20 K between the two sides; the limit is from a separate program.
    const [lower, upper] = [20 * solved.lowerWPerK, 20 * solved.upperWPerK]
    expect(lower).toBeLessThan(9.491)
    expect(upper).toBeGreaterThan(9.491)
    expect(upper - lower).toBeLessThan(0.005 * 9.491)
  })

  it('has the temperatures of that program within 0.02 K', () => {
    const fine = [7.064, 0.761, 7.897, 6.27, 0.827, 16.408, 16.334, 16.767, 18.334]
    given.points.forEach(({ atMm }, i) => {
      expect(Math.abs(solved.temperatureAtMm(atMm) - (fine[i] ?? Number.NaN))).toBeLessThan(0.02)
    })
  })

  it("changes by less than the standard's 1 % when the cells are halved", () => {
    const coarse = solveCase(given, { leastCellMm: 0.8, greatestCellMm: 40 })
    const change = coarse.heatFrom('inside') / solved.heatFrom('inside') - 1
    expect(Math.abs(change)).toBeLessThan(0.01)
  })
})
