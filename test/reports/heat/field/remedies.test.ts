import { describe, expect, it } from 'vitest'
import { materialById } from '../../../../src/catalog/materials.ts'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import { buildHiveHeatModel } from '../../../../src/reports/heat/field/buildHiveHeatModel.ts'
import type { HiveHeatModel } from '../../../../src/reports/heat/field/hiveHeatModel.ts'
import { remedyModels } from '../../../../src/reports/heat/field/remedies.ts'
import { type PaintedWorld, paintedVolume, paintWorld } from './paintWorld.ts'

const remediesFor = (walls: Partial<Design['walls']>) => {
  const design = { ...DEFAULT_DESIGN, walls: { ...DEFAULT_DESIGN.walls, ...walls } }
  const result = deriveHive(design)
  if (result.kind === 'refused') throw new Error('refused')
  const { hive } = result
  const asItIs = buildHiveHeatModel(design, hive, { slopeSteps: 4 })
  return { design, hive, asItIs, remedies: remedyModels(design, hive, { slopeSteps: 4 }) }
}

const { design, hive, asItIs, remedies } = remediesFor({})
const modelOf = (id: string): HiveHeatModel => {
  const found = remedies.find((remedy) => remedy.id === id)
  if (found === undefined) throw new Error(`no remedy ${id}`)
  return found.model
}

/** Volume of a wall's uprights and rails, without tunnel blocks, m³. */
const wallTimber = ({ world, sources }: HiveHeatModel): number =>
  paintedVolume(paintWorld(world), (i) => /-wall\/(rail|stud)-/.test(sources[i]?.partId ?? ''))

/**
 * Area of the front wall, from the floor to the frame rest, where a straight way from the lining to the
 * cladding meets no insulation, m².
 */
const straightThroughFrontWall = ({ world, sources }: HiveHeatModel): number => {
  const painted: PaintedWorld = paintWorld(world)
  const [xs, ys, zs] = painted.planes
  const [nx, ny] = painted.size
  const foam = materialById(design.walls.insulation).conductivityWPerMK
  const from = (hive.dimensions.cavityWidth / 2 + hive.dimensions.liningThickness) / 1000
  let area = 0
  for (let j = 0; j < ny; j += 1)
    for (let i = 0; i < nx; i += 1) {
      const isWall =
        (ys[j] ?? 0) >= 0 &&
        (ys[j + 1] ?? 0) <= hive.dimensions.restHeight / 1000 + 1e-9 &&
        (xs[i] ?? 0) >= 0 &&
        (xs[i + 1] ?? 0) <= hive.dimensions.cavityLength / 1000 + 1e-9
      if (!isWall) continue
      const column = zs.flatMap((z, k) => {
        const index = painted.block[(k * ny + j) * nx + i] ?? -1
        const isCore =
          z > from - 1e-9 && /^front-wall\/(?!cladding)/.test(sources[index]?.partId ?? '')
        const block = world.blocks[index]
        return isCore && block?.kind === 'solid' ? [block.conductivityWPerMK] : []
      })
      if (column.length === 0 || column.includes(foam)) continue
      area += ((xs[i + 1] ?? 0) - (xs[i] ?? 0)) * ((ys[j + 1] ?? 0) - (ys[j] ?? 0))
    }
  return area
}

describe('remedyModels', () => {
  it('offers three ways, each said in words', () => {
    expect(remedies.map(({ id }) => id)).toEqual(['strip', 'staggered', 'foam-over'])
    for (const { name, how } of remedies) {
      expect(name.length).toBeGreaterThan(5)
      expect(how).toMatch(/^[A-Z].*\.$/s)
    }
  })

  it('takes the strip out of the depth of rails and studs', () => {
    // 10 of 60 mm everywhere, and once more 10 of 28 mm at the corner posts, which two strips pass.
    const share = wallTimber(modelOf('strip')) / wallTimber(asItIs)
    expect(share).toBeLessThan(50 / 60)
    expect(share).toBeGreaterThan(0.75)
  })

  it('leaves no timber straight through the wall with a strip, besides the tunnel blocks', () => {
    expect(straightThroughFrontWall(asItIs)).toBeGreaterThan(0.04)
    // The block round the entrance stays: 220 mm wide, 12 mm above the rail and the rail below it.
    expect(straightThroughFrontWall(modelOf('strip'))).toBeLessThan(0.22 * 0.04 + 1e-9)
    expect(straightThroughFrontWall(modelOf('foam-over'))).toBeLessThan(0.22 * 0.04 + 1e-9)
  })

  it('leaves the two rails straight through the wall with staggered studs, but no stud', () => {
    const rails = (2 * design.walls.railWidthMm * hive.dimensions.cavityLength) / 1e6
    const block = (220 * 12) / 1e6
    const entrance = (180 * 8) / 1e6
    expect(straightThroughFrontWall(asItIs)).toBeGreaterThan(rails + 0.01)
    expect(straightThroughFrontWall(modelOf('staggered'))).toBeLessThanOrEqual(rails + block + 1e-9)
    expect(straightThroughFrontWall(modelOf('staggered'))).toBeGreaterThan(rails - entrance - 1e-9)
  })

  it('keeps the timber of staggered studs', () => {
    // All but the foot of one half, where the block round the entrance stands: 28 × 30 × 12 mm.
    const lost = wallTimber(asItIs) - wallTimber(modelOf('staggered'))
    expect(lost * 1e9).toBeCloseTo(28 * 30 * 12, 3)
  })

  it('grows the hive by 20 mm of insulation on every side', () => {
    const extent = ({ world }: HiveHeatModel, axis: 0 | 2) => {
      const planes = paintWorld(world).planes[axis]
      return (planes.at(-1) ?? 0) - (planes[0] ?? 0)
    }
    const over = modelOf('foam-over')
    expect(extent(over, 0) - extent(asItIs, 0)).toBeCloseTo(0.04, 9)
    expect(extent(over, 2) - extent(asItIs, 2)).toBeCloseTo(0.04, 9)
    expect(over.slopeSteps).toBe(asItIs.slopeSteps)
  })

  it('leaves out what can not be built', () => {
    // 250 mm is the thickest core the document allows; 24 mm leaves no room for halves or a strip.
    expect(remediesFor({ coreMm: 250 }).remedies.map(({ id }) => id)).toEqual([
      'strip',
      'staggered',
    ])
  })
})
