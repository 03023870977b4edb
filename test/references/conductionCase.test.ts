import { describe, expect, it } from 'vitest'
import { parseConductionCase, readConductionCase, solveCase, worldOf } from './conductionCase.ts'

const wall = {
  title: 'A wall',
  sources: ['by hand'],
  kind: 'plane',
  environments: [
    { name: 'outside', temperatureC: 0, surfaceResistanceM2KPerW: 0.04 },
    { name: 'inside', temperatureC: 20, surfaceResistanceM2KPerW: 0.13 },
  ],
  regions: [
    { name: 'board', xMm: [0, 400], yMm: [0, 25], conductivityWPerMK: 0.13 },
    { name: 'foam', xMm: [0, 400], yMm: [25, 65], conductivityWPerMK: 0.036 },
  ],
  sides: { '-y': 'outside', '+y': 'inside' },
  mesh: { leastCellMm: 5, growth: 1, greatestCellMm: 5, cellsPerGap: 1 },
  points: [],
  flows: [],
}
const parse = (change: object) => parseConductionCase(JSON.stringify({ ...wall, ...change }))

describe('a case as data', () => {
  it('in the plane is a slice one cell thick, with figures for one metre', () => {
    // By hand: 0.4 m² for one metre.
    const expected = 0.4 / (0.04 + 0.025 / 0.13 + 0.04 / 0.036 + 0.13)
    const solved = solveCase(parse({}))
    // As thick as the smallest cell; a plane of symmetry may halve it.
    const { zM } = solved.answer.grid
    expect(zM[zM.length - 1]).toBeCloseTo(0.005, 12)
    expect(zM.length).toBeLessThanOrEqual(3)
    expect(solved.lowerWPerK).toBeCloseTo(expected, 6)
    expect(solved.upperWPerK).toBeCloseTo(expected, 6)
    expect(solved.heatFrom('inside')).toBeCloseTo(20 * expected, 6)
    const share = (0.04 + 0.025 / 0.13) / (0.4 / expected)
    expect(solved.temperatureAtMm([100, 25])).toBeCloseTo(20 * share, 4)
  })

  it('keeps the order of regions, and what is around and beyond', () => {
    const world = worldOf(readConductionCase('iso10211-case3.json'))
    expect(world.environments.map((e) => e.temperatureC)).toEqual([20, 15, 0])
    expect(world.background).toBe(2)
    expect(world.beyond).toEqual([2, 'adiabatic', 'adiabatic', 'adiabatic', 2, 'adiabatic'])
    expect(world.blocks[3]).toEqual({
      kind: 'air',
      minM: [0.2, 0, 0.2],
      maxM: [1.2, 1, 1.2],
      environment: 0,
    })
  })

  it.each([
    ['an environment that is not there', { sides: { '-y': 'nowhere' } }, /nowhere/],
    ['a side that a box does not have', { sides: { up: 'inside' } }, /up/],
    [
      'a region that is neither matter nor air',
      { regions: [{ name: 'board', xMm: [0, 1], yMm: [0, 1] }] },
      /matter with a conductivity or air/,
    ],
    ['a case in space without depths', { kind: 'space' }, /zMm/],
    ['no source', { sources: [] }, /sources/],
    ['a key that nobody reads', { colour: 'red' }, /colour/],
  ])('is refused with %s', (_, change, words) => expect(() => parse(change)).toThrow(words))
})
