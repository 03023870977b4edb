import { describe, expect, it } from 'vitest'
import type { DrawingItem, PolylineItem } from '../../src/sheets/drawing.ts'
import { deriveHeatScale } from '../../src/sheets/heat/heatBands.ts'
import { heatSectionDrawing } from '../../src/sheets/heatSectionDrawing.ts'
import { drawingToSvg } from '../../src/sheets/svg.ts'
import { sectionPlace } from '../../src/sheets/views/sectionPlace.ts'
import { INCH, METRIC, type UnitPreferences } from '../../src/units/preferences.ts'
import { syntheticGrid } from './heat/syntheticField.ts'
import { isInside, itemBounds } from './itemBounds.ts'
import { built } from './sheetFixture.ts'

const { hive } = built()
const d = hive.dimensions
const answer = { grid: syntheticGrid(hive) }
const temperatures = { outsideC: -10, insideC: 30 }
const ACROSS = { axis: 'x', at: sectionPlace(hive) } as const
const ALONG = { axis: 'z', at: 0 } as const

const draw = (plane: typeof ACROSS | typeof ALONG, units: UnitPreferences = METRIC) =>
  heatSectionDrawing(hive, plane, { answer, temperatures, units })

const isotherms = (items: readonly DrawingItem[]) =>
  items.filter((i): i is PolylineItem => i.kind === 'polyline' && i.tag === 'isotherm')

const words = (items: readonly DrawingItem[]) =>
  items.flatMap((i) => (i.kind === 'text' ? [i.text] : []))

describe('heatSectionDrawing', () => {
  it('labels every isotherm in the unit asked for, with the unit, from warm down to cold', () => {
    const labels = (units: UnitPreferences) =>
      draw(ACROSS, units).items.flatMap((i) =>
        i.kind === 'text' && i.tag?.startsWith('isotherm/') ? [i.text] : [],
      )
    expect(labels(METRIC)).toEqual(['25 °C', '20 °C', '15 °C', '10 °C', '5 °C', '0 °C', '-5 °C'])
    // From 14 to 86 °F in steps of 10; 80 °F is at 0.917, just inside the lining's 0.92.
    expect(labels(INCH)).toEqual(['80 °F', '70 °F', '60 °F', '50 °F', '40 °F', '30 °F', '20 °F'])
  })

  it('lays each isotherm of an even wall at its place', () => {
    const { items, view } = draw(ACROSS)
    // In the middle of the front wall the field falls evenly from 0.92 to 0.05 over its thickness.
    const y = view.origin.y - 200 * view.scale
    const inner = view.origin.x - (d.cavityWidth / 2) * view.scale
    const crossings = isotherms(items).flatMap(({ points }) =>
      points.slice(1).flatMap((b, i) => {
        const a = points[i] ?? b
        if (a.y <= y === b.y <= y) return []
        const x = a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)
        return x < inner ? [(inner - x) / view.scale] : []
      }),
    )
    const { levels } = deriveHeatScale(temperatures, 'c')
    const expected = levels.map(({ share }) => (d.wallThickness * (0.92 - share)) / 0.87)
    expect(crossings.sort((a, b) => b - a)).toHaveLength(expected.length)
    crossings.forEach((depth, i) => {
      expect(depth).toBeCloseTo(expected[i] ?? 0, 1)
    })
  })

  it('draws no isotherm and no colour in the air inside', () => {
    for (const plane of [ACROSS, ALONG]) {
      const { items, view } = draw(plane)
      const half = plane.axis === 'x' ? d.cavityWidth / 2 : d.cavityLength / 2
      const middle = plane.axis === 'x' ? 0 : d.cavityLength / 2
      const [x, y] = [view.origin.x + middle * view.scale, view.origin.y]
      const isInAir = (p: { x: number; y: number }) =>
        Math.abs(p.x - x) < (half - 0.1) * view.scale &&
        p.y < y - 0.1 &&
        p.y > y - (d.coverLedgeHeight - 0.1) * view.scale
      const coloured = items.flatMap((i) => (i.kind === 'colour' ? i.loops.flat() : []))
      expect(
        isotherms(items)
          .flatMap((i) => i.points)
          .filter(isInAir),
      ).toEqual([])
      expect(coloured.filter(isInAir)).toEqual([])
      expect(isotherms(items).length).toBeGreaterThan(0)
    }
  })

  it('leaves frames uncoloured and the stand out', () => {
    const { items } = draw(ALONG)
    const tags = (kind: DrawingItem['kind']) =>
      new Set(items.flatMap((i) => (i.kind === kind && 'tag' in i && i.tag ? [i.tag] : [])))
    expect(tags('colour')).toContain('left-wall/lining')
    const groups = new Map(hive.parts.map((p) => [p.id, p.group]))
    const groupsOf = (ids: ReadonlySet<string>) => new Set([...ids].map((id) => groups.get(id)))
    expect(groupsOf(tags('colour'))).not.toContain('frames')
    expect(groupsOf(tags('line'))).toContain('frames')
    expect(groupsOf(tags('line'))).not.toContain('stand')
  })

  it('has a legend with the air on both sides and a number for each isotherm', () => {
    const { items } = draw(ALONG)
    expect(words(items)).toContain('Temperature in °C: air outside -10, air inside 30')
    expect(words(items)).toEqual(expect.arrayContaining(['-5', '0', '5', '10', '15', '20', '25']))
  })

  it('stays within its size, in few items and little text', () => {
    for (const plane of [ACROSS, ALONG]) {
      const drawing = draw(plane)
      const area = { x0: 0, y0: 0, x1: drawing.widthMm, y1: drawing.heightMm }
      expect(drawing.items.filter((i) => !isInside(itemBounds(i), area))).toEqual([])
      expect(drawing.items.length).toBeLessThan(2000)
      expect(drawingToSvg(drawing).length).toBeLessThan(500_000)
    }
  })

  it('has only its title and the legend where the plane misses the hive', () => {
    const { items } = heatSectionDrawing(
      hive,
      { axis: 'x', at: 1e5 },
      { answer, temperatures, units: METRIC },
    )
    expect(items.some((i) => i.kind === 'polyline')).toBe(false)
    expect(words(items)[0]).toMatch(/^Temperatures across the hive {2}1:\d+$/)
  })

  it('has one colour and no lines when it is as warm outside as inside', () => {
    const { items } = heatSectionDrawing(hive, ACROSS, {
      answer,
      temperatures: { outsideC: 20, insideC: 20 },
      units: METRIC,
    })
    expect(isotherms(items)).toEqual([])
    const colours = items.flatMap((i) => (i.kind === 'colour' ? [JSON.stringify(i.colour)] : []))
    expect(new Set(colours).size).toBe(1)
  })
})
