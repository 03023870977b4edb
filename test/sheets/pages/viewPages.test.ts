import { describe, expect, it } from 'vitest'
import type { DrawingItem, LineItem } from '../../../src/sheets/drawing.ts'
import { viewPages } from '../../../src/sheets/pages/viewPages.ts'
import { INCH, METRIC } from '../../../src/units/preferences.ts'
import { built, type SheetOptions, sheetContent } from '../sheetFixture.ts'

const BUILT = built()
const d = BUILT.hive.dimensions

const lineOf = (items: readonly DrawingItem[], tag: string): LineItem => {
  const line = items.find((i): i is LineItem => i.kind === 'line' && i.tag === tag)
  if (line === undefined) throw new Error(`no line ${tag}`)
  return line
}

const lengthOf = ({ from, to }: LineItem) => Math.hypot(to.x - from.x, to.y - from.y)

const titleY = (items: readonly DrawingItem[], start: string) =>
  items.find((i) => i.kind === 'text' && i.text.startsWith(start))

describe('viewPages', () => {
  it.each<readonly [string, SheetOptions]>([
    ['A4', { paper: 'a4', units: METRIC }],
    ['Letter', { paper: 'letter', units: INCH }],
  ])('draws every leading dimension true to scale on %s', (_paper, options) => {
    const [first] = viewPages(sheetContent(BUILT, options))
    const n = Number(first?.scale.slice(2))
    const items = first?.items ?? []
    const expected = {
      roofLength: d.roofLength,
      outerLength: d.outerLength,
      cavityLength: d.cavityLength,
      roofWidth: d.roofWidth,
      outerWidth: d.outerWidth,
      cavityWidth: d.cavityWidth,
      workingHeight: d.frameTop - d.groundHeight,
      wallTopHeight: d.wallTop - d.groundHeight,
      roofTopHeight: d.roofTop - d.groundHeight,
      restHeight: d.restHeight - d.groundHeight,
      coverLedgeHeight: d.coverLedgeHeight - d.groundHeight,
    }
    for (const [name, mm] of Object.entries(expected)) {
      expect(lengthOf(lineOf(items, `dimension/${name}`)) * n).toBeCloseTo(mm, 6)
    }
  })

  it('shows the working height that the design asks for', () => {
    const items = viewPages(sheetContent(BUILT)).flatMap((p) => p.items)
    const words = items.flatMap((i) => (i.kind === 'text' ? [i.text] : []))
    expect(words).toContain(`${BUILT.design.stand.workingHeightMm} to the top bars`)
  })

  it('draws the outline as long as the roof', () => {
    const [first] = viewPages(sheetContent(BUILT))
    const n = Number(first?.scale.slice(2))
    const lengths = (first?.items ?? [])
      .filter((i): i is LineItem => i.kind === 'line' && i.weight === 'thick')
      .map((l) => lengthOf(l) * n)
    expect(Math.min(...lengths.map((l) => Math.abs(l - d.roofLength)))).toBeLessThan(0.01)
  })

  it('stands the views on one level, the right-hand end at the right in third angle', () => {
    const [first] = viewPages(sheetContent(BUILT, { paper: 'letter' }))
    const items = first?.items ?? []
    const grounds = items.filter((i): i is LineItem => i.kind === 'line' && i.tag === 'ground')
    expect(grounds).toHaveLength(2)
    expect(grounds[0]?.from.y).toBeCloseTo(grounds[1]?.from.y ?? 0, 9)
    expect(titleY(items, 'View from the right end')).toBeDefined()
  })

  it('sets the left-hand end at the right in first angle', () => {
    const [first] = viewPages(sheetContent(BUILT, { paper: 'a4' }))
    expect(titleY(first?.items ?? [], 'View from the left end')).toBeDefined()
  })
})
