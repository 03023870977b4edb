import { describe, expect, it } from 'vitest'
import { expectCase, readConductionCase, solveCase } from './conductionCase.ts'

const given = readConductionCase('iso10211-case4.json')

describe('ISO 10211 case 4, iron bar through insulation', () => {
  const solved = solveCase(given)

  it("is within the standard's 1 % and 0.005 K", () => expectCase(given, solved))

  it('has bounds round 0.5400 W, less than 0.5 % apart', () => {
    expect(solved.lowerWPerK).toBeLessThan(0.54)
    expect(solved.upperWPerK).toBeGreaterThan(0.54)
    expect(solved.upperWPerK - solved.lowerWPerK).toBeLessThan(0.005 * 0.54)
  })

  it("changes by less than the standard's 1 % when the cells are halved", () => {
    const coarse = solveCase(given, { leastCellMm: 8, greatestCellMm: 120 })
    const change = coarse.heatFrom('inside') / solved.heatFrom('inside') - 1
    expect(Math.abs(change)).toBeLessThan(0.01)
  })
})
