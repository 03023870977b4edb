import { describe, expect, it } from 'vitest'
import { computeHeat } from '../../../../src/reports/heat/computeHeat.ts'
import { computeEdgeLosses } from '../../../../src/reports/heat/field/computeEdgeLosses.ts'
import { listInsideFaces } from '../../../../src/reports/heat/field/insideFaces.ts'
import { solveWorld } from '../../../../src/solvers/conduction/solveWorld.ts'
import type { Block, World } from '../../../../src/solvers/conduction/world.ts'
import { EXAMPLE_DESIGN, EXAMPLE_HIVE } from '../examplePanels.ts'
import { BOX } from './syntheticField.ts'

const BOARD = 0.025
const PINE = 0.13
const HEIGHT = 20

/**
 * A square chimney of board, 500 mm wide inside, so tall that nearly all of it is nearer to its upright
 * corners than to an end. No heat goes through its ends, so the field is one in two dimensions.
 */
const chimney = (): World => {
  const half = 0.25
  const wall = (x: readonly [number, number], z: readonly [number, number]): Block => ({
    kind: 'solid',
    minM: [x[0], 0, z[0]],
    maxM: [x[1], HEIGHT, z[1]],
    conductivityWPerMK: PINE,
  })
  const out = half + BOARD
  const films = (r: number) => [r, r, r, r, r, r] as const
  return {
    blocks: [
      wall([-BOARD, 0.5 + BOARD], [half, out]),
      wall([-BOARD, 0.5 + BOARD], [-out, -half]),
      wall([-BOARD, 0], [-half, half]),
      wall([0.5, 0.5 + BOARD], [-half, half]),
      {
        kind: 'air',
        ...{ minM: [0, 0, -half], maxM: [0.5, HEIGHT, half], environment: 1 },
      },
    ],
    environments: [
      { temperatureC: 0, surfaceResistanceM2KPerW: films(0.04) },
      { temperatureC: 1, surfaceResistanceM2KPerW: films(0.13) },
    ],
    background: 0,
    beyond: [0, 0, 'adiabatic', 'adiabatic', 0, 0],
  }
}

describe('the corner of two boards', () => {
  it('costs 0.0251 W/(m K) beyond the boards, over inside lengths', () => {
    // 25 mm at 0.13 W/(m K) between 0.13 and 0.04 m² K/W: 0.0251, by an independent field in two
    // dimensions on legs of 500 mm.
    const panels = EXAMPLE_HIVE.panels.map((panel) => ({
      ...panel,
      timberArea: 0,
      innerArea: panel.id.endsWith('wall') ? 1e6 * HEIGHT * 0.5 : 0,
      lining: { material: 'pine', thickness: 12.5 },
      core: { insulation: 'pine', timber: 'pine', thickness: 12.5 },
      cladding: { material: 'pine', thickness: 0 },
    }))
    const heat = computeHeat(EXAMPLE_DESIGN, { panels, roof: undefined })
    expect(heat.walls.withRailsM2KPerW).toBeCloseTo(0.17 + BOARD / PINE, 12)

    const mesh = { leastCellM: 0.004, growth: 1.7, greatestCellM: 5, cellsPerGap: 6, mergeM: 1e-6 }
    const field = solveWorld({ world: chimney(), mesh, tolerance: 1e-8 })
    const sizes = { cavityLength: 500, cavityWidth: 500, coverLedgeHeight: 1000 * HEIGHT }
    const hive = { ...BOX, dimensions: { ...BOX.dimensions, ...sizes } }
    const faces = listInsideFaces(hive, { sources: [] }, field)
    const corners = computeEdgeLosses(hive, heat, faces).find(({ id }) => id === 'corners')
    // Up to a hundredth of it goes to the ends.
    expect(corners?.psiWPerMK).toBeGreaterThan(0.98 * 0.0251)
    expect(corners?.psiWPerMK).toBeLessThan(1.01 * 0.0251)
  })
})
