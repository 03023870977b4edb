import { describe, expect, it } from 'vitest'
import { fitMesh } from '../../../src/solvers/conduction/fitMesh.ts'
import type { World } from '../../../src/solvers/conduction/world.ts'

const WORLD: World = {
  blocks: [{ kind: 'solid', minM: [0, 0, 0], maxM: [1, 0.1, 0.1], conductivityWPerMK: 1 }],
  environments: [],
  background: 'adiabatic',
  beyond: ['adiabatic', 'adiabatic', 'adiabatic', 'adiabatic', 'adiabatic', 'adiabatic'],
}
const MESH = { leastCellM: 0.01, growth: 1, greatestCellM: 0.01, cellsPerGap: 1, mergeM: 0 }

describe('fitMesh', () => {
  it('leaves a mesh alone that is coarse enough', () => {
    // 100 by 10 by 10 cells of 10 mm
    expect(fitMesh(WORLD, MESH, 10_000)).toEqual(MESH)
  })

  it('widens cells step by step until there are few enough', () => {
    // Of 12.5 mm: 80 by 8 by 8 = 5120.
    expect(fitMesh(WORLD, MESH, 9_999).leastCellM).toBeCloseTo(0.0125, 12)
    // Of 15.625 mm: 64 by 7 by 7 = 3136.
    expect(fitMesh(WORLD, MESH, 5_119).leastCellM).toBeCloseTo(0.015625, 12)
  })

  it('ends with the coarsest tried when nothing is coarse enough', () => {
    expect(fitMesh(WORLD, MESH, 0).leastCellM).toBeCloseTo(0.01 * 1.25 ** 12, 12)
  })
})
