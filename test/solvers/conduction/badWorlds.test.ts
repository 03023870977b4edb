import { describe, expect, it } from 'vitest'
import type { FieldAnswer } from '../../../src/solvers/conduction/fieldAnswer.ts'
import { solveWorld } from '../../../src/solvers/conduction/solveWorld.ts'
import type { Block, MeshSpec, World } from '../../../src/solvers/conduction/world.ts'
import { WorldError } from '../../../src/solvers/conduction/worldError.ts'
import {
  ADIABATIC_SIDES,
  acrossAxis,
  air,
  airAt,
  cellsBetweenPlanes,
  evenMesh,
  facesOf,
  solid,
} from './boxWorlds.ts'

const slab: World = {
  blocks: [solid([0, 0, 0], [0.04, 0.5, 0.25], 0.034)],
  environments: [airAt(0, 0.04), airAt(20, 0.13)],
  background: 'adiabatic',
  beyond: acrossAxis(0),
}
// By hand.
const SLAB_WPERK = 0.125 / (0.04 + 0.04 / 0.034 + 0.13)

const solve = (world: World, mesh: MeshSpec = cellsBetweenPlanes(2)): FieldAnswer =>
  solveWorld({ world, mesh, tolerance: 1e-10 })

/** The solver refuses, with a sentence for a person to read. */
const expectRefusal = (world: World, mesh?: MeshSpec): void => {
  let problem: unknown
  try {
    solve(world, mesh)
  } catch (error) {
    problem = error
  }
  expect(problem, String(problem)).toBeInstanceOf(WorldError)
  expect(String(problem)).toMatch(/^WorldError: [A-Z].{10,}\.$/)
}

/** Every figure of an answer is a number. */
const expectFinite = (answer: FieldAnswer): void => {
  expect([...answer.grid.temperatureC].every(Number.isFinite)).toBe(true)
  expect(answer.environmentHeatW.every(Number.isFinite)).toBe(true)
  for (const face of facesOf(answer)) {
    const figures = [...face.centreM, face.areaM2, face.heatW, face.meanC, face.leastC]
    expect(figures.every(Number.isFinite)).toBe(true)
  }
  for (const value of [answer.conductanceWPerK, answer.lowerWPerK, answer.upperWPerK]) {
    expect(value === undefined || Number.isFinite(value)).toBe(true)
  }
}

/** For worlds that may be refused or answered; anything else is thrown on. */
const solveUnlessRefused = (world: World, mesh?: MeshSpec): FieldAnswer | undefined => {
  try {
    return solve(world, mesh)
  } catch (error) {
    if (error instanceof WorldError) return undefined
    throw error
  }
}

const withBlocks = (...extra: readonly Block[]): World => ({
  ...slab,
  blocks: [...slab.blocks, ...extra],
})

describe('a world that has no answer is refused:', () => {
  it('no blocks at all', () => expectRefusal({ ...slab, blocks: [] }))

  it('nothing solid', () =>
    expectRefusal({ ...slab, blocks: [air([0, 0, 0], [0.04, 0.5, 0.25], 1)] }))

  it('matter that later air took away whole', () =>
    expectRefusal(withBlocks(air([0, 0, 0], [0.04, 0.5, 0.25], 1))))

  it('no air touches the matter', () => expectRefusal({ ...slab, beyond: ADIABATIC_SIDES }))

  it('all blocks are flat', () =>
    expectRefusal({ ...slab, blocks: [solid([0, 0, 0], [0, 0.5, 0.25], 0.034)] }))

  it.each([
    ['0', 0],
    ['below 0', -0.034],
    ['not a number', Number.NaN],
    ['without end', Number.POSITIVE_INFINITY],
  ])('a conductivity is %s', (_, k) =>
    expectRefusal(withBlocks(solid([0, 0, 0], [0.01, 0.5, 0.25], k))),
  )

  it.each([
    ['not a number', Number.NaN],
    ['without end', Number.POSITIVE_INFINITY],
  ])('a size is %s', (_, size) =>
    expectRefusal(withBlocks(solid([0, 0, 0], [size, 0.5, 0.25], 0.13))),
  )

  it('a temperature is not a number', () =>
    expectRefusal({ ...slab, environments: [airAt(Number.NaN, 0.04), airAt(20, 0.13)] }))

  it.each([
    ['below 0', -0.04],
    ['not a number', Number.NaN],
  ])('a surface resistance is %s', (_, film) =>
    expectRefusal({ ...slab, environments: [airAt(0, film), airAt(20, 0.13)] }),
  )

  it('air, a side or the background belongs to an environment that is not there', () => {
    expectRefusal(withBlocks(air([0.01, 0, 0], [0.02, 0.5, 0.25], 2)))
    expectRefusal({ ...slab, background: 2 })
    expectRefusal({ ...slab, beyond: [0, 1, 'adiabatic', 'adiabatic', 2, 'adiabatic'] })
    expectRefusal({ ...slab, environments: [] })
  })

  it.each([
    ['cells of no width', { leastCellM: 0 }],
    ['cells of a width that is not a number', { leastCellM: Number.NaN }],
    ['cells that shrink', { growth: 0.9 }],
    ['no cell between planes', { cellsPerGap: 0 }],
    ['a widest cell of no width', { greatestCellM: 0 }],
    ['planes that merge less than not at all', { mergeM: -1 }],
    // 4e10 cells through the thickness: no time or memory would do.
    ['more cells than fit any memory', { leastCellM: 1e-12, greatestCellM: 1e-12 }],
    [
      'more graded cells than fit any memory',
      { leastCellM: 1e-12, growth: 1.5, greatestCellM: 1e-11 },
    ],
  ])('a mesh with %s', (_, change) => expectRefusal(slab, { ...cellsBetweenPlanes(1), ...change }))
})

describe('a body that no air touches, beside one that has an answer', () => {
  it('is refused, or leaves the other as it is', () => {
    const apart = solid([0.01, 1, 0], [0.03, 1.5, 0.25], 0.13)
    const answer = solveUnlessRefused(withBlocks(apart))
    if (!answer) return
    expectFinite(answer)
    expect(answer.conductanceWPerK).toBeCloseTo(SLAB_WPERK, 7)
    expect(answer.environmentHeatW[1]).toBeCloseTo(20 * SLAB_WPERK, 7)
  })
})

describe('a block without thickness', () => {
  it.each([0, 1, 2] as const)('changes nothing, flat along axis %i', (axis) => {
    const from = [0.01, 0.1, 0.1] as const
    const to = [axis === 0 ? 0.01 : 0.03, axis === 1 ? 0.1 : 0.4, axis === 2 ? 0.1 : 0.2] as const
    const answer = solve(withBlocks(solid(from, to, 50)))
    expectFinite(answer)
    expect(answer.conductanceWPerK).toBeCloseTo(SLAB_WPERK, 9)
  })

  it('changes nothing as air', () => {
    const answer = solve(withBlocks(air([0.02, 0, 0], [0.02, 0.5, 0.25], 1)))
    expect(answer.conductanceWPerK).toBeCloseTo(SLAB_WPERK, 9)
  })

  it('or one that is inside out is refused or answered in figures', () => {
    const answer = solveUnlessRefused(withBlocks(solid([0.03, 0.4, 0.2], [0.01, 0.1, 0.1], 50)))
    if (answer) expectFinite(answer)
  })
})

describe('conductivities that differ a million times', () => {
  // Metal 0.5 mm thick and 34 kW/(m·K) beside foam of 0.034.
  const METAL = 34_000

  it('one behind the other: the metal adds nothing to the foam', () => {
    const sheet = solid([0.04, 0, 0], [0.0405, 0.5, 0.25], METAL)
    const answer = solve(withBlocks(sheet))
    const expected = 0.125 / (0.04 + 0.04 / 0.034 + 0.0005 / METAL + 0.13)
    expect(answer.hasConverged).toBe(true)
    expect(answer.conductanceWPerK).toBeCloseTo(expected, 7)
  })

  it('a sheet right through: between the sheet alone and one that shares all', () => {
    // By hand. No less than if nothing crossed between sheet and foam, each its own way through. No
    // more than with a metal as conductive along the slab's faces just beneath them: the films see
    // one temperature each, and metal and foam carry side by side what comes.
    const sheet = solid([0, 0.25, 0], [0.04, 0.2505, 0.25], METAL)
    const answer = solve(withBlocks(sheet), evenMesh(0.01, 1))
    const [thin, rest] = [0.0005 * 0.25, 0.4995 * 0.25]
    const apart = thin / (0.17 + 0.04 / METAL) + rest / (0.17 + 0.04 / 0.034)
    const shared = 1 / (0.17 / 0.125 + 0.04 / (thin * METAL + rest * 0.034))
    expectFinite(answer)
    expect(answer.hasConverged).toBe(true)
    expect(answer.lowerWPerK).toBeLessThanOrEqual(shared)
    expect(answer.upperWPerK).toBeGreaterThanOrEqual(apart)
    expect(answer.conductanceWPerK).toBeGreaterThan(apart)
    expect(answer.conductanceWPerK).toBeLessThan(shared)
  })

  it('a metal box round foam is as warm as it is all over', () => {
    // A shell of metal 5 mm thick, cold air on one side and warm air on the other, insulated else:
    // one temperature, shared out by the films, but for the way round through the shell. That is at
    // most 0.25 m of it past the edges all round, 1.5 m: 0.25/(34 000·0.005·1.5) = 0.001 K/W.
    const shell = [
      solid([0, 0, 0], [0.04, 0.5, 0.25], METAL),
      solid([0.005, 0.005, 0.005], [0.035, 0.495, 0.245], 0.034),
    ]
    const answer = solve({ ...slab, blocks: shell }, evenMesh(0.005, 1))
    expect(answer.hasConverged).toBe(true)
    expect(answer.conductanceWPerK).toBeLessThan(0.125 / 0.17)
    expect(answer.conductanceWPerK).toBeGreaterThan(1 / (0.17 / 0.125 + 0.001))
    for (const face of facesOf(answer)) expect(face.meanC).toBeCloseTo((20 * 0.04) / 0.17, 1)
  })
})

describe('air that has nothing to exchange', () => {
  it.each([
    ['one environment', [airAt(20, 0.13)], 0],
    ['two at the same temperature', [airAt(20, 0.04), airAt(20, 0.13)], 1],
  ] as const)('%s: no heat flows and all is as warm as the air', (_, environments, inside) => {
    const answer = solve({
      ...slab,
      environments,
      beyond: [0, inside, 'adiabatic', 'adiabatic', 'adiabatic', 'adiabatic'],
    })
    expectFinite(answer)
    expect(answer.conductanceWPerK).toBeUndefined()
    for (const heat of answer.environmentHeatW) expect(heat).toBeCloseTo(0, 9)
    for (const t of answer.grid.temperatureC) expect(t).toBeCloseTo(20, 5)
  })

  it('a second environment that touches nothing gives no heat', () => {
    const answer = solve({ ...slab, beyond: [0, 0, 'adiabatic', 'adiabatic', 'adiabatic', 0] })
    expectFinite(answer)
    for (const heat of answer.environmentHeatW) expect(heat).toBeCloseTo(0, 9)
    expect(answer.conductanceWPerK ?? 0).toBeCloseTo(0, 9)
    expect(answer.lowerWPerK ?? 0).toBeCloseTo(0, 9)
    expect(answer.upperWPerK ?? 0).toBeCloseTo(0, 9)
  })
})

describe('planes that are nearer than the mesh tells apart', () => {
  it('are one: a sliver between two blocks makes no hole and no sliver of air', () => {
    const world: World = {
      ...slab,
      blocks: [
        solid([0, 0, 0], [0.02, 0.5, 0.25], 0.034),
        solid([0.0201, 0, 0], [0.04, 0.5, 0.25], 0.034),
      ],
    }
    const answer = solve(world, { ...cellsBetweenPlanes(1), mergeM: 0.0005 })
    expect(answer.conductanceWPerK).toBeCloseTo(SLAB_WPERK, 9)
  })

  it('a world thinner than that is refused or answered in figures', () => {
    const thin = { ...slab, blocks: [solid([0, 0, 0], [0.0004, 0.5, 0.25], 0.034)] }
    const answer = solveUnlessRefused(thin, { ...cellsBetweenPlanes(1), mergeM: 0.0005 })
    if (answer) expectFinite(answer)
  })
})
