import { describe, expect, it } from 'vitest'
import type { DrawingItem } from '../../src/sheets/drawing.ts'
import { sectionDrawing } from '../../src/sheets/sectionDrawing.ts'
import { INCH, METRIC } from '../../src/units/preferences.ts'
import { built } from './sheetFixture.ts'

const { hive } = built()
const d = hive.dimensions

const dimension = (items: readonly DrawingItem[], name: string) => {
  const line = items.find((i) => i.kind === 'line' && i.tag === `dimension/${name}`)
  if (line?.kind !== 'line') throw new Error(`no ${name}`)
  return Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y)
}

describe('sectionDrawing', () => {
  it('draws the inside width and the ledges true to scale', () => {
    const across = sectionDrawing(hive, { axis: 'x', at: 300 }, METRIC)
    const n = across.scaleDenominator
    expect(dimension(across.items, 'cavityWidth') * n).toBeCloseTo(d.cavityWidth, 6)
    expect(dimension(across.items, 'restHeight') * n).toBeCloseTo(d.restHeight, 6)
  })

  it('cuts the long walls when cut across, and the end walls when cut along', () => {
    const tags = (axis: 'x' | 'z', at: number) =>
      new Set(
        sectionDrawing(hive, { axis, at }, METRIC).items.flatMap((i) =>
          i.kind === 'polygon' && i.tag ? [i.tag] : [],
        ),
      )
    expect(tags('x', 300)).toContain('front-wall/lining')
    expect(tags('x', 300)).not.toContain('left-wall/lining')
    expect(tags('z', 0)).toContain('left-wall/lining')
    expect(tags('z', 0)).not.toContain('front-wall/lining')
  })

  it('fills exactly the area that the cut parts have', () => {
    const { items, scaleDenominator: n } = sectionDrawing(hive, { axis: 'z', at: 0 }, METRIC)
    const lining = items.find((i) => i.kind === 'polygon' && i.tag === 'left-wall/lining')
    const points = lining?.kind === 'polygon' ? lining.points : []
    const [xs, ys] = [points.map((p) => p.x * n), points.map((p) => p.y * n)]
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(d.liningThickness, 6)
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(d.restHeight, 6)
  })

  it('shows inches to those who want them', () => {
    const { items } = sectionDrawing(hive, { axis: 'z', at: 0 }, INCH)
    // 763 mm are 30.04 in, to the nearest 1/32: 30 1/32.
    expect(items.filter((i) => i.kind === 'text').map((i) => i.text)).toContain('30 1/32 inside')
  })

  it('is empty but for the title where the plane misses the hive', () => {
    const { items } = sectionDrawing(hive, { axis: 'x', at: 1e5 }, METRIC)
    expect(items.map((i) => i.kind)).toEqual(['text'])
  })
})
