import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computePanelHeat, type PanelHeat } from '../../../src/reports/heat/panelHeat.ts'
import { computeTaperedTransmittance } from '../../../src/solvers/iso6946/taperedLayer.ts'
import { EXAMPLE_FLOOR, EXAMPLE_LID, EXAMPLE_ROOF, EXAMPLE_WALL } from './examplePanels.ts'

const targetM2KPerW = 1.1
const cover = { material: 'aluminium-sheet', thickness: 0.8 }
const tapered = { ...EXAMPLE_ROOF, filling: 'tapered' } as const
const wall = computePanelHeat({ panel: EXAMPLE_WALL, targetM2KPerW })

const addLayers = (heat: PanelHeat): number =>
  heat.layers.reduce((sum, layer) => sum + layer.resistanceM2KPerW, 0) +
  heat.surfaceInsideM2KPerW +
  heat.surfaceOutsideM2KPerW

describe('computePanelHeat', () => {
  it('gives the reference hive wall', () => {
    // 12 + 40 + 12 mm with a fifth of rails: own case, computed apart.
    expect(wall.withRailsM2KPerW).toBeCloseTo(1.132, 4)
    expect(wall.upperBoundM2KPerW).toBeCloseTo(1.1796, 4)
    expect(wall.lowerBoundM2KPerW).toBeCloseTo(1.0845, 4)
    expect(wall.betweenRailsM2KPerW).toBeCloseTo(1.4657, 4)
    expect(wall.timberFraction).toBe(0.2)
  })

  it('conducts by the inside face', () => {
    expect(wall.areaM2).toBe(0.5)
    // Half of U 0.8834.
    expect(wall.conductanceWPerK).toBeCloseTo(0.4417, 4)
  })

  it('takes the films by the way heat goes', () => {
    const films = [EXAMPLE_WALL, EXAMPLE_LID, EXAMPLE_FLOOR].map((panel) => {
      const heat = computePanelHeat({ panel, targetM2KPerW })
      return [heat.heatFlow, heat.surfaceInsideM2KPerW, heat.surfaceOutsideM2KPerW]
    })
    expect(films).toEqual([
      ['horizontal', 0.13, 0.04],
      ['up', 0.1, 0.04],
      ['down', 0.17, 0.04],
    ])
  })

  it('meets a target up to its own resistance', () => {
    const meets = (target: number) =>
      computePanelHeat({ panel: EXAMPLE_WALL, targetM2KPerW: target }).meetsTarget
    expect(meets(wall.withRailsM2KPerW)).toBe(true)
    expect(meets(wall.withRailsM2KPerW + 1e-6)).toBe(false)
  })

  it('without timber is the same with rails as between them', () => {
    const heat = computePanelHeat({ panel: { ...EXAMPLE_WALL, timberArea: 0 }, targetM2KPerW })
    expect(heat.withRailsM2KPerW).toBeCloseTo(heat.betweenRailsM2KPerW, 12)
    expect(heat.relativeError).toBeCloseTo(0, 12)
  })

  it('adds closed air and deck above a sloped lid', () => {
    const flat = computePanelHeat({ panel: EXAMPLE_LID, targetM2KPerW, cover })
    const sloped = computePanelHeat({
      panel: EXAMPLE_LID,
      targetM2KPerW,
      cover,
      roof: EXAMPLE_ROOF,
    })
    // Air 0.16 (the table of ISO 6946, from memory) and 9 mm of plywood.
    const gain = sloped.betweenRailsM2KPerW - flat.betweenRailsM2KPerW
    expect(gain).toBeCloseTo(0.16 + 0.009 / 0.13, 2)
    expect(sloped.withRailsM2KPerW).toBeGreaterThan(flat.withRailsM2KPerW)
  })

  it('works the paths of a sloped lid with its firrings over the rails', () => {
    const heat = computePanelHeat({ panel: EXAMPLE_LID, targetM2KPerW, roof: EXAMPLE_ROOF })
    // By hand, one tenth firring over two tenths rail. Air from the layer list.
    const air = heat.layers[3]?.resistanceM2KPerW ?? 0
    const plain = 0.1 + 0.04 + 0.012 / 0.13 + 0.012 / 0.13 + 0.009 / 0.13
    const [foam, rail, firring] = [0.04 / 0.036, 0.04 / 0.13, 0.04 / 0.13]
    const u =
      0.8 / (plain + foam + air) + 0.1 / (plain + rail + air) + 0.1 / (plain + rail + firring)
    expect(heat.upperBoundM2KPerW).toBeCloseTo(1 / u, 12)
  })

  it('works tapered insulation between the rails in closed form', () => {
    const heat = computePanelHeat({ panel: EXAMPLE_LID, targetM2KPerW, roof: tapered })
    // Even part: films, 12 pine twice, 40 EPS, the 20 mm low edge, 9 plywood. Taper: 40 mm of EPS.
    const even = 0.14 + 0.024 / 0.13 + 0.06 / 0.036 + 0.009 / 0.13
    const u = computeTaperedTransmittance({ uniformM2KPerW: even, taperM2KPerW: 0.04 / 0.036 })
    expect(heat.betweenRailsM2KPerW).toBeCloseTo(1 / u, 12)
    // Worth a little less than an even 40 mm of EPS.
    const layer = heat.layers[3]?.resistanceM2KPerW ?? 0
    expect(layer).toBeLessThan(0.04 / 0.036)
    expect(layer).toBeGreaterThan(0.9 * (0.04 / 0.036))
  })

  it.each([
    ['wall', { panel: EXAMPLE_WALL }],
    ['floor', { panel: EXAMPLE_FLOOR }],
    ['flat lid', { panel: EXAMPLE_LID, cover }],
    ['lid with air', { panel: EXAMPLE_LID, cover, roof: EXAMPLE_ROOF }],
    ['lid with tapered insulation', { panel: EXAMPLE_LID, cover, roof: tapered }],
  ])('has layers that add up to the resistance between rails: %s', (_, layered) => {
    const heat = computePanelHeat({ ...layered, targetM2KPerW })
    expect(addLayers(heat)).toBeCloseTo(heat.betweenRailsM2KPerW, 12)
  })

  it('never resists less with thicker insulation or more with more timber', () => {
    const thickness = fc.integer({ min: 10, max: 250 })
    const timberArea = fc.integer({ min: 0, max: 600_000 })
    const roof = fc.constantFrom(undefined, EXAMPLE_ROOF, tapered)
    fc.assert(
      fc.property(thickness, thickness, timberArea, timberArea, roof, (t1, t2, a1, a2, above) => {
        const withRails = (coreMm: number, area: number): number =>
          computePanelHeat({
            panel: {
              ...EXAMPLE_LID,
              core: { ...EXAMPLE_LID.core, thickness: coreMm },
              timberArea: area,
            },
            roof: above,
            targetM2KPerW,
          }).withRailsM2KPerW
        const thin = Math.min(t1, t2)
        const thick = Math.max(t1, t2)
        expect(withRails(thick, a1)).toBeGreaterThanOrEqual(withRails(thin, a1) - 1e-9)
        const little = Math.min(a1, a2)
        const much = Math.max(a1, a2)
        expect(withRails(thin, much)).toBeLessThanOrEqual(withRails(thin, little) + 1e-9)
      }),
    )
  })

  it('refuses more timber than core', () => {
    const panel = { ...EXAMPLE_WALL, timberArea: 700_000 }
    expect(() => computePanelHeat({ panel, targetM2KPerW })).toThrow()
  })
})
