import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { solveWorld } from '../../src/solvers/conduction/solveWorld.ts'
import type { Triple, World } from '../../src/solvers/conduction/world.ts'

// A long hive as boxes, whose z is up; its conductance is 1.7973 ± 0.0004 W/K, from two separate
// programs: finite volumes on finer and finer grids and a finite-element program.
const TRUTH_WPERK = 1.7973

interface Box {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}
interface LongHive {
  readonly boxes: readonly (Box & { readonly k: number })[]
  readonly cavity: Box
  readonly bc: {
    readonly Ti: number
    readonly Te: number
    readonly Rsi: number
    readonly Rse: number
  }
}

const hive: LongHive = JSON.parse(
  readFileSync(fileURLToPath(new URL('data/long-hive.json', import.meta.url)), 'utf8'),
)

const corners = (b: Box): { readonly minM: Triple; readonly maxM: Triple } => ({
  minM: [b.x0, b.z0, b.y0],
  maxM: [b.x1, b.z1, b.y1],
})

const air = (temperatureC: number, r: number) => ({
  temperatureC,
  surfaceResistanceM2KPerW: [r, r, r, r, r, r] as const,
})

const world: World = {
  blocks: [
    ...hive.boxes.map((box) => ({
      kind: 'solid' as const,
      ...corners(box),
      conductivityWPerMK: box.k,
    })),
    { kind: 'air', ...corners(hive.cavity), environment: 1 },
  ],
  environments: [air(hive.bc.Te, hive.bc.Rse), air(hive.bc.Ti, hive.bc.Rsi)],
  background: 0,
  beyond: [0, 0, 0, 0, 0, 0],
}

describe('the long hive', () => {
  const answer = solveWorld({
    world,
    mesh: { leastCellM: 0.015, growth: 1, greatestCellM: 0.015, cellsPerGap: 2, mergeM: 0.0005 },
    tolerance: 1e-8,
  })

  it('has bounds round 1.7973 W/K, no wider than another program’s on the same planes', () => {
    // That program: 1.790954 to 1.803221 W/K with 122 963 cells.
    expect(answer.lowerWPerK).toBeGreaterThan(1.7909)
    expect(answer.lowerWPerK).toBeLessThan(TRUTH_WPERK)
    expect(answer.upperWPerK).toBeGreaterThan(TRUTH_WPERK)
    expect(answer.upperWPerK).toBeLessThan(1.8033)
  })

  it('conducts 1.7973 W/K, to 0.2 %', () => {
    expect(answer.hasConverged).toBe(true)
    const off = (answer.conductanceWPerK ?? Number.NaN) / TRUTH_WPERK - 1
    expect(Math.abs(off)).toBeLessThan(0.002)
  })

  it('loses what the cavity gives: 35 K through the conductance', () => {
    const [outside = Number.NaN, inside = Number.NaN] = answer.environmentHeatW
    expect(Math.abs(outside + inside)).toBeLessThan(1e-6 * inside)
    expect(inside / 35 / TRUTH_WPERK).toBeCloseTo(1, 2)
  })

  it('is coldest inside in a corner of the floor, where both programs put it', () => {
    // 20.68 degrees on these planes and 19.78 in the limit, at 0.068, 0.068, 0.055 (x, y, z).
    const { faces } = answer
    let coldest = 0
    for (let f = 0; f < faces.count; f++) {
      const isInner = faces.environment[f] === 1
      const least = faces.environment[coldest] === 1 ? (faces.leastC[coldest] ?? 0) : Infinity
      if (isInner && (faces.leastC[f] ?? 0) < least) coldest = f
    }
    expect(faces.leastC[coldest]).toBeGreaterThan(19.7)
    expect(faces.leastC[coldest]).toBeLessThan(20.8)
    const [x = 0, y = 0, z = 0] = faces.centreM.slice(3 * coldest)
    const { cavity } = hive
    const nearest = (value: number, a: number, b: number): number =>
      Math.min(Math.abs(value - a), Math.abs(value - b))
    expect(nearest(x, cavity.x0, cavity.x1)).toBeLessThan(0.015)
    expect(nearest(z, cavity.y0, cavity.y1)).toBeLessThan(0.015)
    expect(Math.abs(y - cavity.z0)).toBeLessThan(0.015)
  })

  it('passes heat through its inner faces as on finer grids', () => {
    // W at 35 K with a million cells: each long wall 13.338, each short wall 6.706, ceiling 7.439,
    // floor 15.386; the means on coarser grids were within 0.4 %, and their split is the least sure.
    const { faces } = answer
    const heat = [0, 0, 0, 0, 0, 0]
    for (let f = 0; f < faces.count; f++) {
      const way = faces.direction[f] ?? 0
      if (faces.environment[f] === 1) heat[way] = (heat[way] ?? 0) + (faces.heatW[f] ?? 0)
    }
    // By the way that the surface faces into the cavity; y is up here.
    const expected = [6.706, 6.706, 7.439, 15.386, 13.338, 13.338]
    expected.forEach((watts, way) => {
      expect(Math.abs((heat[way] ?? Number.NaN) / watts - 1), `${way}: ${heat[way]}`).toBeLessThan(
        0.01,
      )
    })
  })
})
