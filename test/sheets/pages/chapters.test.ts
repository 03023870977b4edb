import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { EXAMPLES } from '../../../src/design/examples.ts'
import type { Design } from '../../../src/design/schema.ts'
import type { TextItem } from '../../../src/sheets/drawing.ts'
import { SHEET_CHAPTERS } from '../../../src/sheets/pages/chapters.ts'
import { pageFrame } from '../../../src/sheets/pages/pageFrame.ts'
import { INCH, METRIC } from '../../../src/units/preferences.ts'
import { boxesOverlap, isInside, itemBounds, textBounds } from '../itemBounds.ts'
import { planned, type SheetOptions, sheetContent } from '../sheetFixture.ts'

const A4: SheetOptions = { paper: 'a4', units: METRIC }
const LETTER: SheetOptions = { paper: 'letter', units: INCH }

const D = DEFAULT_DESIGN
const odd = (name: string, change: Partial<Design>): readonly [string, Design, SheetOptions] => [
  name,
  { ...D, ...change },
  LETTER,
]

const CASES: readonly (readonly [string, Design, SheetOptions])[] = [
  ...EXAMPLES.map(({ design }) => [design.title.name, design, A4] as const),
  ['the first example in inches', D, LETTER],
  odd('120 frames, widely spaced', {
    frame: { ...D.frame, spacingMm: 50 },
    cavity: { ...D.cavity, frames: 120 },
  }),
  odd('no stand and a flat lid', {
    stand: { ...D.stand, form: 'none' },
    lid: { ...D.lid, form: 'flat' },
  }),
  odd('very thick walls', {
    walls: { ...D.walls, coreMm: 250 },
    lid: { ...D.lid, coreMm: 250 },
    stand: { ...D.stand, workingHeightMm: 1300 },
  }),
  odd('words that fill every line', {
    title: { name: 'W'.repeat(80), owner: 'M'.repeat(80), note: 'Wm '.repeat(200) },
  }),
]

describe.each(CASES)('all pages of %s', (_name, design, options) => {
  const content = sheetContent(planned(design), options)
  const pages = SHEET_CHAPTERS.flatMap((compose) => compose(content))
  const { frame, titleBlock } = content.paper

  it('stay inside the frame and clear of the title block', () => {
    for (const page of pages) {
      const outside = page.items.filter((item) => {
        const bounds = itemBounds(item)
        return !isInside(bounds, frame) || boxesOverlap(bounds, titleBlock)
      })
      expect({ page: page.title, outside }).toEqual({ page: page.title, outside: [] })
    }
  })

  it('set nothing in type under 10 points', () => {
    const texts = pages.flatMap((p) => p.items).filter((i): i is TextItem => i.kind === 'text')
    const points = texts.map((t) => (t.sizeMm * 72) / 25.4)
    expect(Math.min(...points)).toBeGreaterThanOrEqual(10)
  })

  it('have no two texts in one place, title block included', () => {
    for (const page of pages) {
      const framed = pageFrame(page, content, { number: 88, count: 99 })
      const texts = [...page.items, ...framed].filter((i): i is TextItem => i.kind === 'text')
      const boxes = texts.map(textBounds)
      const clashes = texts.flatMap((a, i) =>
        texts.slice(i + 1).flatMap((b, k) => {
          const [p, q] = [boxes[i], boxes[i + 1 + k]]
          return p && q && boxesOverlap(p, q) ? [`${a.text} | ${b.text}`] : []
        }),
      )
      expect({ page: page.title, clashes }).toEqual({ page: page.title, clashes: [] })
    }
  })
})
