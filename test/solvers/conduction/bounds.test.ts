import { describe, expect, it } from 'vitest'
import type { FieldAnswer } from '../../../src/solvers/conduction/fieldAnswer.ts'
import { solveWorld } from '../../../src/solvers/conduction/solveWorld.ts'
import type { MeshSpec, World } from '../../../src/solvers/conduction/world.ts'
import { readConductionCase, solveCase } from '../../references/conductionCase.ts'
import { acrossAxis, airAt, cellsBetweenPlanes, evenMesh, framedWall, solid } from './boxWorlds.ts'

const solve = (world: World, mesh: MeshSpec): FieldAnswer =>
  solveWorld({ world, mesh, tolerance: 1e-9 })

describe('the band between the lower and the upper bound', () => {
  // What the whole of each case conducts, W/K (plane cases: for one metre), as far as it is known;
  // sources in test/references/data. A band must reach the interval on however coarse a mesh.
  const known = [
    ['iso10211-case2.json', { least: 9.4905 / 20, most: 9.4925 / 20 }, [0.4, 1, 3, 20]],
    ['iso10211-case4.json', { least: 0.5399, most: 0.54 }, [4, 12, 30, 200]],
    ['cube-corner.json', { least: 8.3455, most: 8.3508 }, [4, 10, 25, 500]],
    ['hive-wall-rails.json', { least: 0.08698, most: 0.087 }, [0.5, 2, 6, 100]],
    ['board-corner.json', { least: 2.78515, most: 2.78525 }, [0.5, 2, 8, 500]],
  ] as const
  describe.each(known)('of %s', (file, truth, cellsMm) => {
    const solved = cellsMm.map((leastCellMm) =>
      solveCase(readConductionCase(file), { leastCellMm }),
    )

    it('holds the truth on fine and coarse meshes', () => {
      for (const { lowerWPerK, upperWPerK } of solved) {
        expect(lowerWPerK).toBeLessThanOrEqual(truth.most)
        expect(upperWPerK).toBeGreaterThanOrEqual(truth.least)
        expect(lowerWPerK).toBeLessThan(upperWPerK)
      }
    })

    it('is narrower on a finer mesh', () => {
      const widths = solved.map((s) => s.upperWPerK - s.lowerWPerK)
      widths.slice(1).forEach((width, i) => {
        expect(width).toBeGreaterThan(widths[i] ?? Number.NaN)
      })
    })

    it('holds the figure that is shown', () => {
      for (const { answer } of solved) {
        const shown = answer.conductanceWPerK ?? Number.NaN
        expect(shown).toBeGreaterThanOrEqual(answer.lowerWPerK ?? Number.NaN)
        expect(shown).toBeLessThanOrEqual(answer.upperWPerK ?? Number.NaN)
      }
    })
  })

  it('lies within what layers alone say at most and at least', () => {
    // By hand, framed wall: paths side by side at least, layers of one temperature each at most
    // (the two bounds of ISO 6946). Shares of the face: rails 0.03125 of 0.25 high, posts half a
    // sixth of the rest.
    const rail = 0.03125 / 0.25
    const post = (1 - rail) * (0.0625 / 0.375)
    const wood = rail + post
    const films = 0.04 + 0.13
    const cladding = 0.02 / 0.12
    const behind = 0.03 / 0.036
    const core = (k: number): number => 0.05 / k
    const area = 0.25 * 0.375
    const total = (k: number): number => films + cladding + core(k) + behind
    const least = area * (wood / total(0.13) + (1 - wood) / total(0.036))
    const even = 1 / (wood / core(0.13) + (1 - wood) / core(0.036))
    const most = area / (films + cladding + even + behind)
    for (const mesh of [cellsBetweenPlanes(1), cellsBetweenPlanes(3), evenMesh(0.01)]) {
      const { lowerWPerK, upperWPerK, conductanceWPerK } = solve(framedWall, mesh)
      expect(upperWPerK).toBeGreaterThanOrEqual(least)
      expect(lowerWPerK).toBeLessThanOrEqual(most)
      expect(conductanceWPerK).toBeGreaterThan(least)
      expect(conductanceWPerK).toBeLessThan(most)
    }
  })

  it('still holds the truth when the solver stops early', () => {
    // A slab: the band may be wide then, but not wrong. By hand.
    const world: World = {
      blocks: [
        solid([0, 0, 0], [0.05, 0.5, 0.5], 0.034),
        solid([0.05, 0, 0], [0.1, 0.5, 0.5], 0.13),
      ],
      environments: [airAt(0, 0.04), airAt(1, 0.13)],
      background: 'adiabatic',
      beyond: acrossAxis(0),
    }
    const truth = 0.25 / (0.04 + 0.05 / 0.034 + 0.05 / 0.13 + 0.13)
    for (const tolerance of [1e-2, 1e-3, 1e-4]) {
      const { lowerWPerK, upperWPerK } = solveWorld({ world, mesh: evenMesh(0.01), tolerance })
      // Their error is the square of what the solver left over.
      expect(lowerWPerK).toBeLessThanOrEqual(truth * (1 + tolerance ** 2))
      expect(upperWPerK).toBeGreaterThanOrEqual(truth * (1 - tolerance ** 2))
    }
  })
})
