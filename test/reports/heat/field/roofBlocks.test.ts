import { describe, expect, it } from 'vitest'
import { materialById } from '../../../../src/catalog/materials.ts'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { boxVolume } from '../../../../src/geometry/box.ts'
import { solidVolume } from '../../../../src/geometry/solid.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import type { HeatBlock } from '../../../../src/reports/heat/field/heatBlock.ts'
import { worldOf } from '../../../../src/reports/heat/field/heatWorld.ts'
import { buildRoofBlocks } from '../../../../src/reports/heat/field/roofBlocks.ts'
import { paintedVolume, paintWorld } from './paintWorld.ts'

const roofOf = (lid: Partial<Design['lid']>, slopeSteps: number) => {
  const design = { ...DEFAULT_DESIGN, lid: { ...DEFAULT_DESIGN.lid, ...lid } }
  const result = deriveHive(design)
  if (result.kind === 'refused') throw new Error('refused')
  return { design, hive: result.hive, ...buildRoofBlocks(design, result.hive, slopeSteps) }
}

const conductivityOf = ({ matter }: HeatBlock): number =>
  matter.kind === 'solid' ? matter.conductivityWPerMK : Number.NaN

const MM3_PER_M3 = 1e9

describe('buildRoofBlocks', () => {
  // 5 steps: the middle one lies over the hive's middle; 8: none does.
  for (const slopeSteps of [1, 5, 8]) {
    it(`keeps the volume of firrings and closing boards in ${slopeSteps} steps`, () => {
      const { blocks, hive } = roofOf({}, slopeSteps)
      const painted = paintWorld(worldOf(blocks))
      for (const group of [/^roof\/firring-/, /^roof\/closer-/]) {
        const wanted = hive.parts
          .filter((part) => group.test(part.id))
          .flatMap((part) => part.solids)
          .reduce((sum, s) => sum + solidVolume(s), 0)
        const volume = paintedVolume(painted, (i) => group.test(blocks[i]?.partId ?? ''))
        expect((volume * MM3_PER_M3) / wanted).toBeCloseTo(1, 9)
      }
    })
  }

  it('keeps the volume of tapered insulation, its clearance included', () => {
    const { blocks, hive, design } = roofOf(
      { insulationShape: 'tapered', foamClearanceMm: 0, slopeDeg: 6 },
      6,
    )
    expect(design.lid.foamClearanceMm).toBe(0)
    const isFoam = (id = '') => id.startsWith('roof/insulation-')
    const wanted = hive.parts
      .filter(({ id }) => isFoam(id))
      .flatMap((part) => part.solids)
      .reduce((sum, s) => sum + solidVolume(s), 0)
    const volume = paintedVolume(paintWorld(worldOf(blocks)), (i) => isFoam(blocks[i]?.partId))
    expect((volume * MM3_PER_M3) / wanted).toBeCloseTo(1, 9)
  })

  it('keeps what the deck resists and what the metal sheet carries', () => {
    const { blocks, design } = roofOf({}, 7)
    const decks = blocks.filter(({ partId }) => partId === 'roof/deck')
    const sheets = blocks.filter(({ partId }) => partId === 'roof/cover-sheet')
    expect([decks.length, sheets.length]).toEqual([7, 7])
    const { deckMm, claddingMaterial, coverMm, coverMaterial } = design.lid
    const thickness = ({ placeMm }: HeatBlock) => placeMm.y1 - placeMm.y0
    for (const deck of decks)
      expect(thickness(deck) / conductivityOf(deck)).toBeCloseTo(
        deckMm / materialById(claddingMaterial).conductivityWPerMK,
        9,
      )
    for (const sheet of sheets)
      expect(thickness(sheet) * conductivityOf(sheet)).toBeCloseTo(
        coverMm * materialById(coverMaterial).conductivityWPerMK,
        9,
      )
  })

  it('lets a metal sheet run on from step to step over at least half its thickness', () => {
    for (const slopeDeg of [1, 4, 15]) {
      const sheets = roofOf({ slopeDeg }, 8)
        .blocks.filter(({ partId }) => partId === 'roof/cover-sheet')
        .map(({ placeMm }) => placeMm)
      sheets.slice(1).forEach((next, i) => {
        const one = sheets[i] ?? next
        const shared = Math.min(one.y1, next.y1) - Math.max(one.y0, next.y0)
        expect(shared).toBeGreaterThanOrEqual((one.y1 - one.y0) / 2 - 1e-9)
        expect(one.z1).toBe(next.z0)
      })
    }
  })

  it('lets no step look out from under its deck', () => {
    for (const slopeDeg of [1, 4, 15]) {
      const decks = roofOf({ slopeDeg, coverMaterial: 'bitumen-felt', coverMm: 3 }, 4)
        .blocks.filter(({ partId }) => partId === 'roof/deck')
        .map(({ placeMm }) => placeMm)
        .sort((a, b) => a.y0 - b.y0)
      decks.slice(1).forEach((higher, i) => {
        expect(decks[i]?.y1).toBeGreaterThanOrEqual(higher.y0 - 1e-9)
      })
    }
  })

  it('cuts no steps lower than 2 mm', () => {
    // The slope rises 689 mm × tan 1° = 12.03 mm within the rim.
    expect(roofOf({ slopeDeg: 1 }, 16).steps).toBe(6)
    expect(roofOf({ slopeDeg: 4 }, 16).steps).toBe(16)
  })

  it('lays a flat roof as its one sheet, thick enough for the grid', () => {
    const { blocks, steps, design, hive } = roofOf({ form: 'flat' }, 8)
    expect(steps).toBe(0)
    expect(blocks.map(({ partId }) => partId)).toEqual(['roof/cover-sheet'])
    const [sheet] = blocks
    expect(sheet?.placeMm.y0).toBe(hive.dimensions.lidTop)
    const thickness = boxVolume(sheet?.placeMm ?? NOTHING) / (1068 * 769)
    expect(thickness).toBeCloseTo(6, 9)
    expect(conductivityOf(sheet ?? NO_BLOCK) * thickness).toBeCloseTo(160 * design.lid.coverMm, 6)
  })
})

const NOTHING = { x0: 0, x1: 0, y0: 0, y1: 0, z0: 0, z1: 0 }
const NO_BLOCK: HeatBlock = {
  placeMm: NOTHING,
  matter: { kind: 'inside-air' },
  partId: undefined,
  side: undefined,
}
