import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { solveWorld } from '../../../src/solvers/conduction/solveWorld.ts'
import type { MeshSpec, World } from '../../../src/solvers/conduction/world.ts'
import { arbitraryWorld } from './arbitraryWorld.ts'
import {
  acrossAxis,
  airAt,
  cellsBetweenPlanes,
  doubleWorld,
  framedWall,
  solid,
} from './boxWorlds.ts'
import { cutFiner, solveNaively } from './naiveSolver.ts'
import type { Planes } from './paintCells.ts'

const expectNear = (actual: number | undefined, expected: number, relative: number): void => {
  const off = Math.abs((actual ?? Number.NaN) - expected) / Math.abs(expected)
  expect(off, `${actual} against ${expected}`).toBeLessThanOrEqual(relative)
}

/** Holds the solver against the naive one on the same planes. */
const expectAgreement = (world: World, mesh: MeshSpec): void => {
  const answer = solveWorld({ world, mesh, tolerance: 1e-11 })
  const { xM, yM, zM, temperatureC } = answer.grid
  const naive = solveNaively(world, [[...xM], [...yM], [...zM]])

  // No worse than the plainest bounds, but for what the solver leaves over, which the lower bound has
  // taken off; and on the right side of each other.
  expect(answer.lowerWPerK).toBeGreaterThanOrEqual(naive.lowerWPerK * (1 - 1e-5))
  expect(answer.upperWPerK).toBeLessThanOrEqual(naive.upperWPerK * (1 + 1e-6))
  expect(answer.lowerWPerK).toBeLessThanOrEqual(naive.upperWPerK * (1 + 1e-6))
  expect(answer.upperWPerK).toBeGreaterThanOrEqual(naive.lowerWPerK * (1 - 1e-6))

  // The same heat from each environment, as the mean of the two schemes.
  answer.environmentHeatW.forEach((heat, e) => {
    const mean = ((naive.cellHeatW[e] ?? Number.NaN) + (naive.cornerHeatW[e] ?? Number.NaN)) / 2
    expectNear(heat, mean, 1e-5)
  })

  // The same temperature at each crossing of matter; seven digits are kept.
  const [cold = 0, warm = 0] = world.environments.map((e) => e.temperatureC)
  let most = 0
  naive.cornerC.forEach((expected, v) => {
    if (Number.isNaN(expected)) return
    most = Math.max(most, Math.abs((temperatureC[v] ?? Number.NaN) - expected))
  })
  expect(most).toBeLessThanOrEqual(1e-5 * (warm - cold))
}

describe('the naive solver', () => {
  const planes = (depth: readonly number[]): Planes => [depth, [0, 0.5], [0, 0.25]]

  it('knows a slab of two layers', () => {
    // By hand: 0.04 + 0.012/0.13 + 0.038/0.034 + 0.13 m²K/W over 0.125 m².
    const world: World = {
      blocks: [
        solid([0, 0, 0], [0.012, 0.5, 0.25], 0.13),
        solid([0.012, 0, 0], [0.05, 0.5, 0.25], 0.034),
      ],
      environments: [airAt(-5, 0.04), airAt(35, 0.13)],
      background: 'adiabatic',
      beyond: acrossAxis(0),
    }
    const expected = 0.125 / (0.04 + 0.012 / 0.13 + 0.038 / 0.034 + 0.13)
    const naive = solveNaively(world, planes([0, 0.006, 0.012, 0.031, 0.05]))
    expectNear(naive.lowerWPerK, expected, 1e-12)
    expectNear(naive.upperWPerK, expected, 1e-12)
    expectNear(naive.cellHeatW[1], 40 * expected, 1e-12)
    expectNear(naive.cornerHeatW[0], -40 * expected, 1e-12)
  })

  it('knows the iron bar of ISO 10211 case 4 between coarse bounds', () => {
    // A quarter of it; 0.540 W for the whole, see test/references/data/iso10211-case4.json.
    const world: World = {
      blocks: [solid([0, 0, 0], [0.5, 0.5, 0.2], 0.1), solid([0, 0, 0], [0.05, 0.025, 0.6], 50)],
      environments: [airAt(0, 0.1), airAt(1, 0.1)],
      background: 1,
      beyond: ['adiabatic', 'adiabatic', 'adiabatic', 'adiabatic', 0, 1],
    }
    const naive = solveNaively(world, [
      [0, 0.025, 0.05, 0.07, 0.11, 0.2, 0.5],
      [0, 0.0125, 0.025, 0.04, 0.07, 0.15, 0.5],
      [0, 0.02, 0.06, 0.1, 0.15, 0.2, 0.3, 0.4, 0.6],
    ])
    expect(4 * naive.lowerWPerK).toBeLessThan(0.54)
    expect(4 * naive.lowerWPerK).toBeGreaterThan(0.5)
    expect(4 * naive.upperWPerK).toBeGreaterThan(0.54)
    expect(4 * naive.upperWPerK).toBeLessThan(0.6)
  })
})

describe('the solver against the naive one', () => {
  it('finds the same in small worlds, one cell between planes', () => {
    fc.assert(
      fc.property(arbitraryWorld(5), (world) => expectAgreement(world, cellsBetweenPlanes(1))),
      { numRuns: 50 },
    )
  })

  it('finds the same in smaller worlds, two cells between planes', () => {
    fc.assert(
      fc.property(arbitraryWorld(3), (world) => expectAgreement(world, cellsBetweenPlanes(2))),
      { numRuns: 40 },
    )
  })

  it('finds the same where it may solve half of a symmetric world', () => {
    fc.assert(
      fc.property(arbitraryWorld(3), (world) => {
        // Not across the axis at whose ends only the cold or only the warm air is.
        const [, , , , lowZ, highZ] = world.beyond
        const whole = doubleWorld(world, lowZ === 0 && highZ === 1 ? 0 : 2)
        expectAgreement(whole, cellsBetweenPlanes(1))
      }),
      { numRuns: 40 },
    )
  })

  it('finds the same in a framed wall', () => expectAgreement(framedWall, cellsBetweenPlanes(2)))

  it('has bounds that hold the truth, which lies between the naive bounds on a finer grid', () => {
    fc.assert(
      fc.property(arbitraryWorld(3), (world) => {
        const answer = solveWorld({ world, mesh: cellsBetweenPlanes(1), tolerance: 1e-11 })
        const { xM, yM, zM } = answer.grid
        const finer = solveNaively(world, cutFiner([[...xM], [...yM], [...zM]], 2))
        expect(answer.lowerWPerK).toBeLessThanOrEqual(finer.upperWPerK * (1 + 1e-9))
        expect(answer.upperWPerK).toBeGreaterThanOrEqual(finer.lowerWPerK * (1 - 1e-9))
        expect(finer.lowerWPerK).toBeLessThanOrEqual(finer.upperWPerK * (1 + 1e-9))
      }),
      { numRuns: 40 },
    )
  })
})
