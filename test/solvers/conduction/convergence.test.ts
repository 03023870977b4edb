import { describe, expect, it } from 'vitest'
import { solveWorld } from '../../../src/solvers/conduction/solveWorld.ts'
import type { World } from '../../../src/solvers/conduction/world.ts'
import { acrossAxis, air, airAt, evenMesh, framedWall, solid } from './boxWorlds.ts'

/** By three grids, each with cells half as wide: 2 where what is left over falls to a quarter. */
const observedOrder = ([coarse = 0, middle = 0, fine = 0]: readonly number[]): number =>
  Math.log2((coarse - middle) / (middle - fine))

const observedOrders = (world: World, coarseM: number) => {
  const answers = [1, 2, 4].map((finer) =>
    solveWorld({ world, mesh: evenMesh(coarseM / finer), tolerance: 1e-11 }),
  )
  return {
    lower: observedOrder(answers.map((a) => a.lowerWPerK ?? Number.NaN)),
    upper: observedOrder(answers.map((a) => a.upperWPerK ?? Number.NaN)),
    mean: observedOrder(answers.map((a) => a.conductanceWPerK ?? Number.NaN)),
  }
}

const expectBetween = (value: number, least: number, most: number): void => {
  expect(value).toBeGreaterThan(least)
  expect(value).toBeLessThan(most)
}

// Measured orders stand beside each case: of the lower bound, the upper bound and their mean.
describe('halving the cells', () => {
  const thin = 1 / 1024

  it('leaves a quarter of the error where the field is smooth', () => {
    // Heat turns a corner in a plate, in by one edge and out by the next. 2.01, 2.01, 1.99.
    const plate: World = {
      blocks: [solid([0, 0, 0], [0.125, 0.125, thin], 0.13)],
      environments: [airAt(0, 0.1), airAt(1, 0.2)],
      background: 'adiabatic',
      beyond: [0, 'adiabatic', 'adiabatic', 1, 'adiabatic', 'adiabatic'],
    }
    const { lower, upper, mean } = observedOrders(plate, 1 / 128)
    expectBetween(lower, 1.95, 2.05)
    expectBetween(upper, 1.95, 2.05)
    expectBetween(mean, 1.9, 2.1)
  })

  it('leaves hardly more than a quarter at the inner corner of a box', () => {
    // 1.94, 1.92, 1.99.
    const corner: World = {
      blocks: [
        solid([0, 0, 0], [0.25, 0.25, thin], 0.13),
        air([0.0625, 0.0625, 0], [0.25, 0.25, thin], 1),
      ],
      environments: [airAt(0, 0.04), airAt(1, 0.13)],
      background: 'adiabatic',
      beyond: [0, 'adiabatic', 0, 'adiabatic', 'adiabatic', 'adiabatic'],
    }
    const { lower, upper, mean } = observedOrders(corner, 1 / 128)
    expectBetween(lower, 1.85, 2.1)
    expectBetween(upper, 1.85, 2.1)
    expectBetween(mean, 1.9, 2.1)
  })

  it('leaves a quarter of the error of the mean where two materials meet at the air', () => {
    // There the heat bends sharply: each bound alone is slower. 1.15, 1.42, 2.18.
    const strips: World = {
      blocks: [
        solid([0, 0, 0], [0.0625, 0.125, thin], 0.034),
        solid([0, 0, 0], [0.0625, 0.03125, thin], 0.12),
      ],
      environments: [airAt(0, 0.04), airAt(1, 0.13)],
      background: 'adiabatic',
      beyond: acrossAxis(0),
    }
    const { lower, upper, mean } = observedOrders(strips, 1 / 128)
    expectBetween(lower, 1, 2)
    expectBetween(upper, 1.2, 2)
    expectBetween(mean, 1.8, 2.6)
  })

  it('narrows the band by more than half in a framed wall', () => {
    // 1.42, 1.49; the mean hardly moves any more.
    const { lower, upper } = observedOrders(framedWall, 1 / 64)
    expectBetween(lower, 1.2, 2.1)
    expectBetween(upper, 1.2, 2.1)
  })
})
