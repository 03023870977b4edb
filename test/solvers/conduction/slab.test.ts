import { describe, expect, it } from 'vitest'
import { sampleField } from '../../../src/solvers/conduction/fieldGrid.ts'
import { solveWorld } from '../../../src/solvers/conduction/solveWorld.ts'
import type { Triple, World } from '../../../src/solvers/conduction/world.ts'
import { acrossAxis, airAt, cellsBetweenPlanes, facesOf, solid } from './boxWorlds.ts'

// By hand: layers one behind the other add up, R = Rse + Σ d/λ + Rsi, and C = A/R.
const LAYERS = [
  { thicknessM: 0.012, conductivity: 0.13 },
  { thicknessM: 0.038, conductivity: 0.034 },
  { thicknessM: 0.018, conductivity: 0.12 },
] as const
const OUTSIDE = { temperatureC: -5, film: 0.04 }
const INSIDE = { temperatureC: 35, film: 0.13 }
const WIDE = 0.5
const TALL = 0.25

const resistances = LAYERS.map((layer) => layer.thicknessM / layer.conductivity)
const R = OUTSIDE.film + resistances.reduce((a, b) => a + b) + INSIDE.film
const CONDUCTANCE = (WIDE * TALL) / R
const THICK = LAYERS.reduce((sum, layer) => sum + layer.thicknessM, 0)

/** The slab with its layers one behind the other along an axis, from cold to warm. */
const slabAlong = (axis: 0 | 1 | 2): World => {
  const place = (depth: number, u: number, v: number): Triple =>
    axis === 0 ? [depth, u, v] : axis === 1 ? [u, depth, v] : [u, v, depth]
  let at = 0
  const blocks = LAYERS.map(({ thicknessM, conductivity }) => {
    const from = at
    at += thicknessM
    return solid(place(from, 0, 0), place(at, WIDE, TALL), conductivity)
  })
  // Films for the ways that these surfaces do not face are there to be mixed up.
  const films = (own: number) => [1, 2, 3, 4, 5, 6].map((wrong) => wrong + own)
  const cold = films(7)
  cold[2 * axis] = OUTSIDE.film
  const warm = films(9)
  warm[2 * axis + 1] = INSIDE.film
  const six = ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[]) =>
    [a, b, c, d, e, f] as const
  return {
    blocks,
    environments: [
      { temperatureC: OUTSIDE.temperatureC, surfaceResistanceM2KPerW: six(cold) },
      { temperatureC: INSIDE.temperatureC, surfaceResistanceM2KPerW: six(warm) },
    ],
    background: 'adiabatic',
    beyond: acrossAxis(axis),
  }
}

const expectExact = (actual: number | undefined, expected: number): void => {
  const off = Math.abs((actual ?? Number.NaN) - expected) / Math.abs(expected)
  expect(off, `${actual} against ${expected}`).toBeLessThan(1e-12)
}

describe.each([
  ['x', 0],
  ['y', 1],
  ['z', 2],
] as const)('a slab of three layers along %s', (_, axis) => {
  describe.each([1, 2])('with %i cells in each layer', (cells) => {
    const answer = solveWorld({
      world: slabAlong(axis),
      mesh: cellsBetweenPlanes(cells),
      tolerance: 1e-14,
    })

    it('conducts A/R, and both bounds say so to twelve digits', () => {
      expectExact(answer.conductanceWPerK, CONDUCTANCE)
      expectExact(answer.lowerWPerK, CONDUCTANCE)
      expectExact(answer.upperWPerK, CONDUCTANCE)
    })

    it('takes in on the warm side what it gives off on the cold side', () => {
      const heat = CONDUCTANCE * (INSIDE.temperatureC - OUTSIDE.temperatureC)
      expectExact(answer.environmentHeatW[1], heat)
      expectExact(answer.environmentHeatW[0], -heat)
    })

    it('has the temperatures of the layers at every plane and in between', () => {
      // The field is kept with seven digits.
      const through = [OUTSIDE.film, ...resistances]
      let depth = 0
      through.forEach((_r, i) => {
        const share = through.slice(0, i + 1).reduce((a, b) => a + b) / R
        const expected = OUTSIDE.temperatureC + share * (INSIDE.temperatureC - OUTSIDE.temperatureC)
        const at = (d: number): number =>
          axis === 0
            ? sampleField(answer.grid, d, 0.1, 0.1)
            : axis === 1
              ? sampleField(answer.grid, 0.1, d, 0.1)
              : sampleField(answer.grid, 0.1, 0.1, d)
        expect(at(depth)).toBeCloseTo(expected, 5)
        const thickness = LAYERS[i]?.thicknessM ?? 0
        const half = (resistances[i] ?? 0) / 2 / R
        expect(at(depth + thickness / 2)).toBeCloseTo(
          expected + half * (INSIDE.temperatureC - OUTSIDE.temperatureC),
          5,
        )
        depth += thickness
      })
    })

    it('has two surfaces of its whole area, facing the air', () => {
      const all = facesOf(answer)
      const areaFacing = (direction: number): number =>
        all.reduce((sum, face) => sum + (face.direction === direction ? face.areaM2 : 0), 0)
      expect(areaFacing(2 * axis)).toBeCloseTo(WIDE * TALL, 6)
      expect(areaFacing(2 * axis + 1)).toBeCloseTo(WIDE * TALL, 6)
      const whole = all.reduce((sum, face) => sum + face.areaM2, 0)
      expect(whole).toBeCloseTo(2 * WIDE * TALL, 6)

      const rise = INSIDE.temperatureC - OUTSIDE.temperatureC
      const warm = all.filter((face) => face.environment === 1)
      for (const face of warm) {
        expect(face.direction).toBe(2 * axis + 1)
        expect(face.block).toBe(LAYERS.length - 1)
        expect(face.centreM[axis]).toBeCloseTo(THICK, 6)
        // The air, less what its film takes of the difference.
        expect(face.meanC).toBeCloseTo(INSIDE.temperatureC - (INSIDE.film / R) * rise, 5)
        expect(face.leastC).toBeCloseTo(face.meanC, 5)
      }
      const cold = all.filter((face) => face.environment === 0)
      for (const face of cold) {
        expect(face.direction).toBe(2 * axis)
        expect(face.block).toBe(0)
        expect(face.centreM[axis]).toBeCloseTo(0, 6)
        expect(face.meanC).toBeCloseTo(OUTSIDE.temperatureC + (OUTSIDE.film / R) * rise, 5)
        expect(face.leastC).toBeCloseTo(face.meanC, 5)
      }
      expect(warm.length).toBe(cold.length)
    })
  })
})

describe('a slab whose surfaces are held at the temperature of the air', () => {
  it('conducts kA/d', () => {
    const answer = solveWorld({
      world: {
        blocks: [solid([0, 0, 0], [0.25, 0.5, 1], 3)],
        environments: [airAt(0, 0), airAt(1, 0)],
        background: 'adiabatic',
        beyond: acrossAxis(0),
      },
      mesh: cellsBetweenPlanes(2),
      tolerance: 1e-14,
    })
    expectExact(answer.conductanceWPerK, 6)
    expectExact(answer.lowerWPerK, 6)
    expectExact(answer.upperWPerK, 6)
    expect(answer.environmentHeatW[1]).toBeCloseTo(6, 12)
  })
})

describe('air that gets warmer upwards', () => {
  // By hand: T = 10 + 8y has no curvature, so it conducts no net heat into any place. No heat leaves
  // through the upright sides where the air beside them is as warm at each height, whatever the film.
  // Through the top comes k·8 K/m for each square metre: behind a film of 0.2 m²K/W the air above is
  // warmer than the top by k·8·0.2, and that below colder than the bottom by the same step.
  const k = 0.5
  const rise = 8
  const [bottom, top] = [0.25, 0.75]
  const flux = k * rise
  const film = 0.2
  const atHeight = (y: number): number => 10 + rise * y
  const answer = solveWorld({
    world: {
      blocks: [
        solid([0, bottom, 0], [0.125, top, 0.25], k),
        solid([0.03, bottom, 0.03], [0.06, 0.4, 0.06], k),
      ],
      environments: [
        { ...airAt(10, 0.13), riseKPerM: rise },
        airAt(atHeight(top) + flux * film, film),
        airAt(atHeight(bottom) - flux * film, film),
      ],
      background: 'adiabatic',
      beyond: [0, 0, 2, 1, 0, 0],
    },
    mesh: cellsBetweenPlanes(3),
    tolerance: 1e-12,
  })
  const area = 0.125 * 0.25

  it('leaves matter beside it warming in step, which both schemes can hold exactly', () => {
    for (const y of [bottom, 0.3, 0.4, 0.55, top])
      for (const x of [0, 0.04, 0.125])
        expect(sampleField(answer.grid, x, y, 0.1)).toBeCloseTo(atHeight(y), 4)
  })

  it('takes no heat, while what comes in at the top leaves at the bottom', () => {
    const [beside, above, below] = answer.environmentHeatW
    expect(beside).toBeCloseTo(0, 9)
    expect(above).toBeCloseTo(flux * area, 9)
    expect(below).toBeCloseTo(-flux * area, 9)
  })

  it('has no conductance between two temperatures', () => {
    expect(answer.conductanceWPerK).toBeUndefined()
    expect(answer.lowerWPerK).toBeUndefined()
    expect(answer.upperWPerK).toBeUndefined()
  })

  it('is as warm as it says where the grid holds no matter', () => {
    const { grid } = solveWorld({
      world: {
        blocks: [
          solid([0, 0, 0], [0.25, 0.5, 0.25], 1),
          { kind: 'air', minM: [0.25, 0, 0], maxM: [0.5, 0.5, 0.25], environment: 0 },
        ],
        environments: [{ ...airAt(10, 0.13), riseKPerM: rise }, airAt(0, 0.04)],
        background: 'adiabatic',
        beyond: [1, 0, 'adiabatic', 'adiabatic', 'adiabatic', 'adiabatic'],
      },
      mesh: cellsBetweenPlanes(2),
      tolerance: 1e-8,
    })
    expect(sampleField(grid, 0.5, 0.125, 0.1)).toBeCloseTo(atHeight(0.125), 5)
    expect(sampleField(grid, 0.5, 0.5, 0.1)).toBeCloseTo(atHeight(0.5), 5)
  })
})
