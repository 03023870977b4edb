import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Opening } from '../../../../src/hive/hive.ts'
import { computeEdgeLosses } from '../../../../src/reports/heat/field/computeEdgeLosses.ts'
import type { HeatSide } from '../../../../src/reports/heat/field/hiveHeatModel.ts'
import { listInsideFaces } from '../../../../src/reports/heat/field/insideFaces.ts'
import { BOX, BOX_HEAT, type MadeFace, madeField, panelFaces, SLOT } from './syntheticField.ts'

const SIDES: readonly (HeatSide | undefined)[] = [
  ...(['front-wall', 'back-wall', 'left-wall', 'right-wall'] as const),
  ...(['lid', 'floor', 'entrance', undefined] as const),
]
const SOURCES = SIDES.map((side) => ({ partId: undefined, side }))

const edgesOf = (made: readonly MadeFace[], openings: readonly Opening[] = []) => {
  const hive = { ...BOX, openings }
  const faces = listInsideFaces(hive, { sources: SOURCES }, madeField(made))
  return computeEdgeLosses(hive, BOX_HEAT, faces)
}

const expected = (panel: number): number => BOX_HEAT.panels[panel]?.conductanceWPerK ?? 0

describe('computeEdgeLosses', () => {
  it('finds nothing extra where the panels lose what ISO 6946 says', () => {
    const edges = edgesOf(panelFaces(expected))
    expect(edges.map(({ id }) => id)).toEqual(['corners', 'wall-lid', 'wall-floor'])
    for (const { extraWPerK } of edges) expect(extraWPerK).toBeCloseTo(0, 12)
  })

  it('puts heat down to the nearest kind of edge, by its length and as area of wall', () => {
    const corner = { at: [0, 150, 195], direction: 1, areaM2: 0, heatW: 0.3 } as const
    const [corners, lid, floor] = edgesOf([...panelFaces(expected), corner])
    expect(corners?.extraWPerK).toBeCloseTo(0.3, 12)
    expect(lid?.extraWPerK).toBeCloseTo(0, 12)
    expect(floor?.extraWPerK).toBeCloseTo(0, 12)
    // Four corners 300 mm high; lid and floor 1000 by 400 mm.
    expect(corners?.psiWPerMK).toBeCloseTo(0.3 / 1.2, 12)
    expect([lid?.lengthM, floor?.lengthM]).toEqual([2.8, 2.8])
    expect(corners?.asWallM2).toBeCloseTo(0.3 * BOX_HEAT.walls.withRailsM2KPerW, 12)
  })

  it('counts all heat of a ledge as extra, since it is no part of the inner area', () => {
    const ledge = {
      at: [500, 295, 210],
      direction: 3,
      areaM2: 0.02,
      heatW: 0.05,
      block: 0,
    } as const
    const lid = edgesOf([...panelFaces(expected), ledge]).find(({ id }) => id === 'wall-lid')
    expect(lid?.extraWPerK).toBeCloseTo(0.05, 12)
  })

  it('puts the neighbourhood and the hole of an opening down to it', () => {
    const near = { at: [500, 109, 200], direction: 4, areaM2: 0, heatW: 0.2 } as const
    const far = { at: [500, 111, 200], direction: 4, areaM2: 0, heatW: 0.1 } as const
    const edges = edgesOf([...panelFaces(expected), near, far], [SLOT])
    const entrances = edges.find(({ id }) => id === 'entrances')
    // The hole of 10 cm² loses nothing itself, though the panel is expected to.
    const hole = 0.001 / (BOX_HEAT.panels[0]?.withRailsM2KPerW ?? 0)
    expect(entrances?.extraWPerK).toBeCloseTo(0.2 - hole, 12)
    // 2 x (100 + 10) mm round the slot.
    expect(entrances?.lengthM).toBeCloseTo(0.22, 12)
    const floor = edges.find(({ id }) => id === 'wall-floor')
    expect(floor?.extraWPerK).toBeCloseTo(0.1, 12)
  })

  it('adds up to the heat of all faces together with the panels, whatever the faces', () => {
    const face = fc.record({
      at: fc.tuple(
        fc.integer({ min: -40, max: 1040 }),
        fc.integer({ min: 0, max: 320 }),
        fc.integer({ min: -220, max: 220 }),
      ),
      direction: fc.integer({ min: 0, max: 5 }),
      areaM2: fc.integer({ min: 1, max: 100 }).map((n) => n / 1000),
      heatW: fc.integer({ min: -5, max: 100 }).map((n) => n / 100),
      block: fc.nat({ max: SIDES.length - 1 }),
    })
    const some = fc.array(face, { minLength: 1, maxLength: 30 })
    const panels = BOX_HEAT.panels.reduce((sum, p) => sum + p.conductanceWPerK, 0)
    fc.assert(
      fc.property(some, fc.boolean(), (made, hasOpening) => {
        const all = [{ at: [500, 0, 0], direction: 3, heatW: 2 } as const, ...made]
        const total = all.reduce((sum, { heatW }) => sum + heatW, 0)
        const edges = edgesOf(all, hasOpening ? [SLOT] : [])
        const extra = edges.reduce((sum, { extraWPerK }) => sum + extraWPerK, 0)
        expect(panels + extra).toBeCloseTo(total, 10)
      }),
    )
  })
})
