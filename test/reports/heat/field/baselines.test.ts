import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import { boxVolume } from '../../../../src/geometry/box.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import { baselineWorlds } from '../../../../src/reports/heat/field/baselines.ts'
import { plainBoxWorld } from '../../../../src/reports/heat/field/plainBoxWorld.ts'
import {
  LIVING_WOOD_W_PER_MK,
  stepDisc,
  TRUNK,
  trunkWorld,
} from '../../../../src/reports/heat/field/trunkWorld.ts'
import { solveWorld } from '../../../../src/solvers/conduction/solveWorld.ts'
import type { MeshSpec, World } from '../../../../src/solvers/conduction/world.ts'
import { paintedVolume, paintWorld } from './paintWorld.ts'

const result = deriveHive(DEFAULT_DESIGN)
if (result.kind === 'refused') throw new Error('refused')
const { hive } = result

const MESH: MeshSpec = {
  leastCellM: 0.01,
  growth: 1.5,
  greatestCellM: 0.04,
  cellsPerGap: 2,
  mergeM: 0.0005,
}
const conductanceOf = (world: World): number =>
  solveWorld({ world, mesh: MESH, tolerance: 1e-5 }).conductanceWPerK ?? Number.NaN

const airVolumeL = (world: World): number =>
  1000 * paintedVolume(paintWorld(world), (i) => world.blocks[i]?.kind === 'air')

describe('baselineWorlds', () => {
  it('gives a box with the same room as the hive and a trunk of fixed size', () => {
    const [plain, trunk] = baselineWorlds(hive)
    const room = hive.cavities.reduce((sum, { box }) => sum + boxVolume(box), 0) / 1e6
    expect(plain?.volumeL).toBeCloseTo(room, 9)
    expect(trunk?.volumeL).toBeCloseTo(39.36, 2)
    for (const { world, volumeL } of baselineWorlds(hive))
      expect(airVolumeL(world)).toBeCloseTo(volumeL, 6)
  })

  it('lists wild nests as most are, 30 to 60 L (Seeley and Morse 1976)', () => {
    const trunk = baselineWorlds(hive)[1]
    expect(trunk?.volumeL).toBeGreaterThan(30)
    expect(trunk?.volumeL).toBeLessThan(60)
  })
})

describe('plainBoxWorld', () => {
  it('loses what its walls, corners and edges lose', () => {
    // A cube of 0.5 m inside, wall 0.1 m of k = 1: 6 A / (Rsi + d/k + Rse) for its inner faces is a lower
    // bound, the same with its outer faces an upper bound. Rs: 0.13 four times, 0.10 up, 0.17 down.
    const inside = { x0: 0, x1: 500, y0: 0, y1: 500, z0: 0, z1: 500 }
    const perArea = 4 / (0.13 + 0.1 + 0.04) + 1 / (0.1 + 0.1 + 0.04) + 1 / (0.17 + 0.1 + 0.04)
    const conductance = conductanceOf(plainBoxWorld(inside, 100, 1))
    expect(conductance).toBeGreaterThan(perArea * 0.25)
    expect(conductance).toBeLessThan(perArea * 0.49)
  })
})

describe('stepDisc', () => {
  it('has the area of the circle and the outline of a square around it', () => {
    const radius = 100
    const bars = stepDisc(radius, [0, 1])
    const world: World = {
      blocks: bars.map((b) => ({
        kind: 'air',
        environment: 0,
        minM: [b.x0, b.y0, b.z0],
        maxM: [b.x1, b.y1, b.z1],
      })),
      environments: [],
      background: 'adiabatic',
      beyond: trunkWorld().beyond,
    }
    expect(paintedVolume(paintWorld(world), () => true)).toBeCloseTo(Math.PI * radius ** 2, 6)
    // Wider along x means narrower along z, so the stair goes down only.
    bars.slice(1).forEach((b, i) => {
      expect(b.x1).toBeGreaterThan(bars[i]?.x1 ?? 0)
      expect(b.z1).toBeLessThan(bars[i]?.z1 ?? 0)
    })
  })
})

describe('trunkWorld', () => {
  it('is wood of 0.211 W/(m·K): Wood Handbook equation 4-15 for red oak at 25 % moisture', () => {
    expect(LIVING_WOOD_W_PER_MK).toBeCloseTo(0.2108, 4)
  })

  it('loses as much through its wall as a round pipe', () => {
    const { boreMm, wallMm, hollowMm, beyondMm } = TRUNK
    const world = trunkWorld()
    // The same trunk with the hollow running right through, so that only the wall counts.
    const length = (hollowMm + 2 * beyondMm) / 1000
    const endless: World = {
      ...world,
      blocks: world.blocks.map((block) => ({
        ...block,
        minM: [block.minM[0], 0, block.minM[2]],
        maxM: [block.maxM[0], length, block.maxM[2]],
      })),
    }
    // Films and wall of a pipe in a row (any textbook): 1 / (2 pi r) and ln(R / r) / (2 pi k).
    const [r, outer] = [boreMm / 2000, boreMm / 2000 + wallMm / 1000]
    const inRow = 0.13 / r + Math.log(outer / r) / LIVING_WOOD_W_PER_MK + 0.04 / outer
    const pipe = (2 * Math.PI * length) / inRow
    expect(conductanceOf(endless) / pipe).toBeGreaterThan(0.98)
    expect(conductanceOf(endless) / pipe).toBeLessThan(1.02)
  })

  it('goes on far enough above and below: 100 mm less there change a thousandth', () => {
    const world = trunkWorld()
    const cut = (y: number) => Math.min(Math.max(y, -0.3), TRUNK.hollowMm / 1000 + 0.3)
    const shorter: World = {
      ...world,
      blocks: world.blocks.map((block) => ({
        ...block,
        minM: [block.minM[0], cut(block.minM[1]), block.minM[2]],
        maxM: [block.maxM[0], cut(block.maxM[1]), block.maxM[2]],
      })),
    }
    expect(conductanceOf(shorter) / conductanceOf(world)).toBeCloseTo(1, 2)
  })
})
