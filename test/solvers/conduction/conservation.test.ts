import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { FieldAnswer } from '../../../src/solvers/conduction/fieldAnswer.ts'
import { sampleField } from '../../../src/solvers/conduction/fieldGrid.ts'
import { solveWorld } from '../../../src/solvers/conduction/solveWorld.ts'
import type { Block, World } from '../../../src/solvers/conduction/world.ts'
import { arbitraryWorld } from './arbitraryWorld.ts'
import {
  acrossAxis,
  air,
  airAt,
  cellsBetweenPlanes,
  doubleWorld,
  evenMesh,
  type Face,
  facesOf,
  framedWall,
  mirrorWorld,
  shiftWorld,
  solid,
} from './boxWorlds.ts'

const solve = (world: World, mesh = cellsBetweenPlanes(2)): FieldAnswer =>
  solveWorld({ world, mesh, tolerance: 1e-10 })

const RUNS = { numRuns: 80 }
const worlds = arbitraryWorld(5)

/** All the heat that goes in anywhere, W. */
const heatIn = ({ environmentHeatW }: FieldAnswer): number =>
  environmentHeatW.reduce((sum, heat) => sum + Math.max(0, heat), 0)

/** The heat through the faces that a test picks, W. */
const heatThrough = (answer: FieldAnswer, picks: (face: Face) => boolean): number =>
  facesOf(answer).reduce((heat, face) => heat + (picks(face) ? face.heatW : 0), 0)

describe('heat', () => {
  it('goes in and out alike, to a millionth', () => {
    fc.assert(
      fc.property(worlds, (world) => {
        const answer = solve(world)
        const net = answer.environmentHeatW.reduce((sum, heat) => sum + heat, 0)
        expect(Math.abs(net)).toBeLessThanOrEqual(1e-6 * heatIn(answer))
        expect(answer.hasConverged).toBe(true)
      }),
      RUNS,
    )
  })

  it('of each environment is that of all its faces', () => {
    fc.assert(
      fc.property(worlds, (world) => {
        const answer = solve(world)
        answer.environmentHeatW.forEach((heat, e) => {
          const faces = heatThrough(answer, ({ environment }) => environment === e)
          expect(Math.abs(faces - heat)).toBeLessThanOrEqual(1e-6 * heatIn(answer))
        })
      }),
      RUNS,
    )
  })

  it('goes from warm to cold: the coldest air takes, the warmest gives', () => {
    fc.assert(
      fc.property(worlds, (world) => {
        const [cold = Number.NaN, warm = Number.NaN] = solve(world).environmentHeatW
        expect(cold).toBeLessThan(0)
        expect(warm).toBeGreaterThan(0)
      }),
      RUNS,
    )
  })
})

describe('temperature', () => {
  it('lies between that of the cold and of the warm air everywhere', () => {
    fc.assert(
      fc.property(worlds, (world) => {
        const answer = solve(world)
        const { grid } = answer
        const [cold = 0, warm = 0] = world.environments.map((e) => e.temperatureC)
        // Seven digits are kept.
        const slack = 1e-5 * (warm - cold)
        const isBetween = (value: number): boolean => value >= cold - slack && value <= warm + slack
        expect([...grid.temperatureC].filter((t) => !isBetween(t))).toEqual([])
        const isSound = ({ meanC, leastC }: Face): boolean =>
          isBetween(meanC) && isBetween(leastC) && leastC <= meanC + slack
        expect(facesOf(answer).filter((face) => !isSound(face))).toEqual([])
      }),
      RUNS,
    )
  })
})

describe('the same world', () => {
  // Films everywhere: a metal held at the air's temperature needs a finer stop to tell so many digits.
  const filmed = arbitraryWorld(5, [0.02, 0.04, 0.1])

  /**
   * The worlds have exact coordinates, so only what the solver leaves over is between them: little in
   * the upper bound, while the lower bound has all of it taken off.
   */
  const expectAlike = (a: FieldAnswer, b: FieldAnswer): void => {
    const pairs = [
      [a.lowerWPerK, b.lowerWPerK, 1e-4],
      [a.upperWPerK, b.upperWPerK, 1e-7],
      [a.conductanceWPerK, b.conductanceWPerK, 1e-4],
    ] as const
    for (const [one = Number.NaN, other = Number.NaN, relative] of pairs) {
      expect(Math.abs(one / other - 1), `${one} against ${other}`).toBeLessThanOrEqual(relative)
    }
  }

  it('somewhere else conducts alike', () => {
    fc.assert(
      fc.property(filmed, (world) => {
        expectAlike(solve(shiftWorld(world, [0.5, -0.25, 1.25])), solve(world))
      }),
      { numRuns: 40 },
    )
  })

  it('in a mirror conducts alike, and mirrored faces pass the same heat', () => {
    fc.assert(
      fc.property(filmed, fc.constantFrom(0 as const, 1 as const, 2 as const), (world, axis) => {
        const [plain, mirrored] = [solve(world), solve(mirrorWorld(world, axis))]
        expectAlike(mirrored, plain)
        expect(mirrored.faces.count).toBe(plain.faces.count)
        for (let direction = 0; direction < 6; direction++) {
          const other = direction >> 1 === axis ? direction ^ 1 : direction
          world.blocks.forEach((_, block) => {
            const facing = (answer: FieldAnswer, way: number): number =>
              heatThrough(answer, (face) => face.direction === way && face.block === block)
            const gap = Math.abs(facing(plain, direction) - facing(mirrored, other))
            expect(gap).toBeLessThanOrEqual(1e-5 * heatIn(plain))
          })
        }
      }),
      { numRuns: 40 },
    )
  })

  it('conducts alike at other temperatures of the air', () => {
    fc.assert(
      fc.property(filmed, (world) => {
        const [cold, warm] = world.environments
        if (!cold || !warm) return
        const environments = [
          { ...cold, temperatureC: 20 },
          { ...warm, temperatureC: -5 },
        ]
        expectAlike(solve({ ...world, environments }), solve(world))
      }),
      { numRuns: 40 },
    )
  })

  it('started from its own field needs fewer steps, and from a wrong field ends alike', () => {
    const mesh = evenMesh(0.01)
    const first = solve(framedWall, mesh)
    const start = first.grid
    const again = solveWorld({ world: framedWall, mesh, tolerance: 1e-4, start })
    const cold = solveWorld({ world: framedWall, mesh, tolerance: 1e-4 })
    expect(again.vertexIterations).toBeLessThan(cold.vertexIterations)
    expect(again.cellIterations).toBeLessThanOrEqual(cold.cellIterations)
    expect((again.upperWPerK ?? 0) / (first.upperWPerK ?? 1)).toBeCloseTo(1, 5)

    const wrong = { ...first.grid, temperatureC: first.grid.temperatureC.map((t) => 40 - t) }
    expectAlike(solveWorld({ world: framedWall, mesh, tolerance: 1e-10, start: wrong }), first)
  })

  it('conducts what it does also when the solver stops at what is good enough to show', () => {
    // The figure that is shown, not the certain bounds, which may be wider then.
    const mesh = evenMesh(0.01)
    const exact = solve(framedWall, mesh).conductanceWPerK ?? Number.NaN
    const shown = (tolerance: number): number =>
      solveWorld({ world: framedWall, mesh, tolerance }).conductanceWPerK ?? Number.NaN
    expect(Math.abs(shown(1e-4) / exact - 1)).toBeLessThan(1e-4)
    expect(Math.abs(shown(1e-3) / exact - 1)).toBeLessThan(1e-3)
  })
})

describe('where two blocks overlap', () => {
  const around = {
    environments: [airAt(0, 0.04), airAt(1, 0.13)],
    background: 'adiabatic' as const,
    beyond: acrossAxis(0),
  }
  const foam = solid([0, 0, 0], [0.25, 0.5, 0.5], 0.034)
  const post = solid([0, 0, 0], [0.25, 0.125, 0.5], 0.13)
  const conductanceOf = (blocks: readonly Block[]): number =>
    solve({ ...around, blocks }).conductanceWPerK ?? Number.NaN
  // By hand: all one material, 0.5 m by 0.5 m.
  const through = (thick: number, k: number): number => 0.25 / (0.04 + thick / k + 0.13)

  it('the later one holds', () => {
    // Heat also goes sideways from post to foam, so against the same thing without an overlap.
    const apart = solid([0, 0.125, 0], [0.25, 0.5, 0.5], 0.034)
    expect(conductanceOf([foam, post])).toBeCloseTo(conductanceOf([apart, post]), 10)
    expect(conductanceOf([post, foam])).toBeCloseTo(through(0.25, 0.034), 10)
  })

  it('air takes matter away, and later matter fills it again', () => {
    // Warm air reaches half-way in: half the thickness is left.
    const room = air([0.125, 0, 0], [0.25, 0.5, 0.5], 1)
    expect(conductanceOf([foam, room])).toBeCloseTo(through(0.125, 0.034), 10)
    expect(conductanceOf([foam, room, foam])).toBeCloseTo(through(0.25, 0.034), 10)
  })
})

describe('a world with planes of symmetry', () => {
  // The same wall twice, back to back with its own image, conducts twice what the one does.
  const half = framedWall
  const whole = doubleWorld(half, 2)

  it('conducts twice what half of it does', () => {
    const [one, two] = [solve(half, evenMesh(0.0125)), solve(whole, evenMesh(0.0125))]
    expect((two.conductanceWPerK ?? 0) / (one.conductanceWPerK ?? 1)).toBeCloseTo(2, 7)
    expect((two.lowerWPerK ?? 0) / (one.lowerWPerK ?? 1)).toBeCloseTo(2, 7)
    expect((two.upperWPerK ?? 0) / (one.upperWPerK ?? 1)).toBeCloseTo(2, 7)
    expect(two.environmentHeatW[1]).toBeCloseTo(2 * (one.environmentHeatW[1] ?? 0), 5)
  })

  it('has the field and the faces of both halves', () => {
    const answer = solve(whole, evenMesh(0.0125))
    const { grid } = answer
    const alone = solve(half, evenMesh(0.0125)).grid
    for (const [x, y, z] of [
      [0.1, 0.01, 0.15],
      [0.05, 0.2, 0.3],
      [0, 0.1, 0.02],
    ] as const) {
      expect(sampleField(grid, x, y, -z)).toBeCloseTo(sampleField(grid, x, y, z), 4)
      expect(sampleField(grid, x, y, z)).toBeCloseTo(sampleField(alone, x, y, z), 4)
    }
    const faces = facesOf(answer)
    const areaOf = (some: readonly Face[]): number => some.reduce((sum, f) => sum + f.areaM2, 0)
    // Inner and outer face of 0.25 m by twice 0.375 m; one half of them in the image.
    expect(areaOf(faces)).toBeCloseTo(2 * 0.25 * 0.75, 5)
    expect(areaOf(faces.filter((f) => (f.centreM[2] ?? 0) < 0))).toBeCloseTo(0.25 * 0.75, 5)
  })
})
