import { describe, expect, it } from 'vitest'
import { expectCase, readConductionCase, solveCase } from './conductionCase.ts'

const given = readConductionCase('iso10211-case3.json')

describe('ISO 10211 case 3, balcony beside two rooms', () => {
  const solved = solveCase(given)

  it("is within the standard's 1 % of each heat flow and 0.1 K of the coldest surfaces", () =>
    expectCase(given, solved))

  it('takes in what it gives off, between three temperatures', () => {
    const net = given.environments.reduce((sum, { name }) => sum + solved.heatFrom(name), 0)
    expect(Math.abs(net)).toBeLessThan(1e-6 * 59.98)
    expect(solved.answer.conductanceWPerK).toBeUndefined()
  })

  it('has the coupling between each two of them', () => {
    // EN ISO 10211-1:1995, from memory: 2.094 W/K between the rooms, 1.781 from the lower and 1.624
    // from the upper room to outside. They give the heat flows: 2.094·5 + 1.781·20 = 46.09 W.
    const warmOnly = (warm: string) => {
      const environments = given.environments.map((each) => ({
        ...each,
        temperatureC: each.name === warm ? 1 : 0,
      }))
      return solveCase({ ...given, environments })
    }
    const lower = warmOnly('lower room')
    const upper = warmOnly('upper room')
    const expectWithin1 = (actual: number, expected: number): void =>
      expect(Math.abs(actual / expected - 1), `${actual}`).toBeLessThan(0.01)
    expectWithin1(-lower.heatFrom('upper room'), 2.094)
    expectWithin1(-upper.heatFrom('lower room'), 2.094)
    expectWithin1(-lower.heatFrom('outside'), 1.781)
    expectWithin1(-upper.heatFrom('outside'), 1.624)

    // Heat goes alike both ways, and temperatures add up: 20 times the one field, 15 times the other.
    const back = -upper.heatFrom('lower room')
    expect(-lower.heatFrom('upper room') / back).toBeCloseTo(1, 6)
    const added = 20 * lower.heatFrom('lower room') + 15 * upper.heatFrom('lower room')
    expect(added / solved.heatFrom('lower room')).toBeCloseTo(1, 6)
    for (const { atMm } of given.points) {
      const sum = 20 * lower.temperatureAtMm(atMm) + 15 * upper.temperatureAtMm(atMm)
      expect(sum).toBeCloseTo(solved.temperatureAtMm(atMm), 4)
    }
  })
})
