import { describe, expect, it } from 'vitest'
import { computeHeat } from '../../../src/reports/heat/computeHeat.ts'
import { EXAMPLE_DESIGN, EXAMPLE_HIVE, EXAMPLE_WALL } from './examplePanels.ts'
import { MADE_ANSWER } from './field/syntheticField.ts'

const heat = computeHeat(EXAMPLE_DESIGN, EXAMPLE_HIVE)

describe('computeHeat', () => {
  it('answers every panel in the order of the hive, with its own target', () => {
    expect(heat.panels.map(({ id, targetM2KPerW }) => [id, targetM2KPerW])).toEqual([
      ['front-wall', 1],
      ['back-wall', 1],
      ['left-wall', 1],
      ['right-wall', 1],
      ['lid', 3],
      ['floor', 1.1],
    ])
    expect(heat.lid).toBe(heat.panels[4])
    expect(heat.floor).toBe(heat.panels[5])
  })

  it('puts roof and cover sheet on the lid alone', () => {
    expect(heat.panels.map(({ layers }) => layers.length)).toEqual([3, 3, 3, 3, 6, 3])
  })

  it('averages the walls by area, as transmittances', () => {
    // 1 m² of long wall and 0.5 m² of end wall.
    const [long, , end] = heat.panels.map(({ withRailsM2KPerW }) => withRailsM2KPerW)
    const u = (1 / (long ?? 0) + 0.5 / (end ?? 0)) / 1.5
    expect(heat.walls.withRailsM2KPerW).toBeCloseTo(1 / u, 12)
    // All walls are alike between their rails: 0.17 + 24 mm of pine + 40 mm of EPS.
    const between = 0.17 + 0.024 / 0.13 + 0.04 / 0.036
    expect(heat.walls.betweenRailsM2KPerW).toBeCloseTo(between, 12)
  })

  it('judges the walls together, even if some fall short alone', () => {
    const target = heat.walls.withRailsM2KPerW - 0.001
    const walls = { ...EXAMPLE_DESIGN.walls, targetM2KPerW: target }
    const judged = computeHeat({ ...EXAMPLE_DESIGN, walls }, EXAMPLE_HIVE)
    expect(judged.walls).toMatchObject({ targetM2KPerW: target, meetsTarget: true })
    expect(judged.panels.slice(0, 4).map(({ meetsTarget }) => meetsTarget)).toEqual([
      ...[true, true, false, false],
    ])
  })

  it('sums the panels to the conductance of the hive and says so', () => {
    const sum = heat.panels.reduce((total, p) => total + p.areaM2 / p.withRailsM2KPerW, 0)
    expect(heat.conductanceWPerK).toBeCloseTo(sum, 12)
    expect(heat.method).toBe('panel-sum')
  })

  it('takes the conductance from the field when there is one, and leaves the panels as they are', () => {
    const withField = computeHeat(EXAMPLE_DESIGN, EXAMPLE_HIVE, MADE_ANSWER)
    expect(withField).toMatchObject({ method: 'field', conductanceWPerK: 2 })
    expect(withField.field).toBe(MADE_ANSWER)
    expect(withField.panels).toEqual(heat.panels)
    // 22 K on the cold night and 9 K in January, at 2 W/K.
    expect(withField.coldNightLossW).toBe(44)
    expect(withField.months[0]?.lossW).toBeCloseTo(18, 12)
  })

  it('has a loss by hand for a hive without timber or roof', () => {
    // 1 m² each of wall, lid and floor. 24 mm of pine and 40 mm of EPS resist 1.295726 m²K/W, the
    // cover sheet 0.000005, the films 0.17, 0.14 and 0.21: U 0.682256, 0.696509 and 0.664131.
    const square = { ...EXAMPLE_WALL, innerArea: 1e6, timberArea: 0 }
    const bare = computeHeat(EXAMPLE_DESIGN, {
      panels: [square, { ...square, id: 'lid' }, { ...square, id: 'floor' }],
      roof: undefined,
    })
    expect(bare.conductanceWPerK).toBeCloseTo(2.042896, 5)
    // 12 °C in the hive, -10 °C outside: 22 K.
    expect(bare.coldNightLossW).toBeCloseTo(44.9437, 3)
  })

  it('loses heat by month, and none when it is warmer outside than in the hive', () => {
    // Outside 3 °C in January, 10 in April, 17 in July; hive air at 12.
    const g = heat.conductanceWPerK
    const loss = (month: number) => heat.months.find((m) => m.month === month)?.lossW
    expect(loss(1)).toBeCloseTo(9 * g, 9)
    expect(loss(4)).toBeCloseTo(2 * g, 9)
    expect(loss(7)).toBe(0)
    expect(heat.months).toHaveLength(12)
  })

  it('has no negative loss when the cold night is warmer than the hive', () => {
    const site = { ...EXAMPLE_DESIGN.site, coldNightC: 15 }
    expect(computeHeat({ ...EXAMPLE_DESIGN, site }, EXAMPLE_HIVE).coldNightLossW).toBe(0)
  })

  it.each(['lid', 'floor', 'wall'])('refuses a hive without %s', (kind) => {
    const panels = EXAMPLE_HIVE.panels.filter(({ id }) => !id.endsWith(kind))
    expect(() => computeHeat(EXAMPLE_DESIGN, { panels, roof: undefined })).toThrow(`no ${kind}`)
  })
})
