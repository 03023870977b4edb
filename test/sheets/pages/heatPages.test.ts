import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { EXAMPLES } from '../../../src/design/examples.ts'
import type { DrawingItem, TextItem } from '../../../src/sheets/drawing.ts'
import { heatPages } from '../../../src/sheets/pages/heatPages.ts'
import { pageFrame } from '../../../src/sheets/pages/pageFrame.ts'
import { INCH, METRIC } from '../../../src/units/preferences.ts'
import { COMPARISONS, withField } from '../heat/syntheticField.ts'
import { boxesOverlap, isInside, itemBounds, textBounds } from '../itemBounds.ts'
import { built, type SheetOptions, sheetContent } from '../sheetFixture.ts'

const BUILT = built()
const WITH_FIELD = withField(BUILT)

/** All words of the pages in order; lines of one paragraph joined. */
const wordsOf = (items: readonly DrawingItem[]) =>
  items.flatMap((i) => (i.kind === 'text' ? [i.text] : [])).join(' ')

const textOf = (options: SheetOptions = {}, hive = WITH_FIELD) =>
  heatPages(sheetContent(hive, options))
    .map((p) => wordsOf(p.items))
    .join(' ')

describe('heatPages without a field', () => {
  const text = textOf({}, BUILT)

  it('says that corners and edges are left out, and shows nothing of a field', () => {
    expect(text).toContain('Left out: the extra heat through corners and edges')
    expect(text).toContain('All panels together lose')
    expect(text).not.toContain('In this hive')
    expect(text).not.toContain('Temperatures across')
  })

  it('does not show comparisons alone', () => {
    expect(textOf({ comparisons: COMPARISONS }, BUILT)).toBe(text)
  })
})

describe('heatPages with a field', () => {
  const text = textOf()

  it('sets three R-values of each panel side by side', () => {
    for (const p of BUILT.report.heat.panels) {
      const show = (r: number) => `RSI ${r.toFixed(2)}`
      expect(text).toContain(
        [p.betweenRailsM2KPerW, p.withRailsM2KPerW, 0.7 * p.withRailsM2KPerW].map(show).join(' '),
      )
    }
  })

  it('gives the whole loss with its band, its shares, and the sum of the panels', () => {
    const sum = BUILT.report.heat.panels.reduce((s, p) => s + p.conductanceWPerK, 0)
    expect(text).toContain('loses 1.80 W/K, for the hive as modelled certainly between 1.79 and')
    expect(text).toContain(`by themselves would lose ${sum.toFixed(2)} W/K.`)
    expect(text).toContain('Lid 25.0 % 0.45 W/K')
    expect(text).toContain('Entrances and vents 5.0 % 0.090 W/K')
  })

  it('puts corners and edges in plain words, and the coldest place', () => {
    // 0.04 + 0.12 + 0.10 + 0.03 W/K, times the 1.6 m²K/W of the invented wall: 0.464 m².
    expect(text).toContain(
      'All edges, corners and openings together cost as much as another 0.46 m²',
    )
    expect(text).toContain('The corners cost as much as another 0.06 m² of wall.')
    // -10 °C outside and 12 °C inside: -10 + 0.56 · 22 = 2.3 °C.
    expect(text).toContain('the floor meet. With -10 °C outside and 12 °C inside')
    expect(text).toContain('2 °C. Its temperature factor fRsi is 0.56')
  })

  it('says what this model leaves out, and no more that corners are', () => {
    expect(text).toContain('makes simpler: Air that moves through cracks is left out.')
    expect(text).not.toContain('Left out: the extra heat through corners')
  })

  it('owns up to a first look and to a reckoning that did not settle', () => {
    const change = (field: object) => {
      const { heat } = WITH_FIELD.report
      if (heat.field === undefined) throw new Error('no field')
      const report = { ...WITH_FIELD.report, heat: { ...heat, field: { ...heat.field, ...field } } }
      return textOf({}, { ...WITH_FIELD, report })
    }
    expect(text).not.toMatch(/first look|did not settle/)
    expect(change({ quality: 'preview' })).toContain('quick first look')
    expect(change({ hasConverged: false })).toContain('did not settle')
  })

  it('lists remedies, the best first, and other homes, the warmest first', () => {
    const all = textOf({ comparisons: COMPARISONS })
    expect(all).toContain('saves 0.10 W/K, 5.6 %')
    expect(all).toContain('costs 0.040 W/K, 2.2 %')
    expect(all.indexOf('A strip of foam')).toBeLessThan(all.indexOf('Staggered rails'))
    expect(all.indexOf('This hive')).toBeLessThan(all.indexOf('Plain single-wall box'))
    expect(all).toContain('3.56')
    expect(text).not.toContain('Staggered')
  })

  it('ends with the sections at a stated scale, with a bar to check it', () => {
    const last = heatPages(sheetContent(WITH_FIELD)).at(-1)
    expect(last?.scale).toBe('1:10')
    expect(wordsOf(last?.items ?? [])).toMatch(/across the hive {2}1:10.*along the hive {2}1:10/)
    expect(last?.items.some((i) => i.kind === 'line' && i.tag === 'check-bar')).toBe(true)
  })
})

const CASES: readonly (readonly [string, typeof WITH_FIELD, SheetOptions])[] = [
  ...EXAMPLES.map(
    ({ design }) =>
      [design.title.name, withField(built(design)), { comparisons: COMPARISONS }] as const,
  ),
  ['the first in inches', WITH_FIELD, { paper: 'letter', units: INCH, comparisons: COMPARISONS }],
  [
    '120 frames',
    withField(built({ ...DEFAULT_DESIGN, cavity: { ...DEFAULT_DESIGN.cavity, frames: 120 } })),
    { paper: 'letter', units: METRIC },
  ],
]

describe.each(CASES)('heat pages of %s', (_name, hive, options) => {
  const content = sheetContent(hive, options)
  const pages = heatPages(content)

  it('stay inside the frame and clear of the title block', () => {
    const { frame, titleBlock } = content.paper
    for (const { items } of pages) {
      const outside = items.filter((item) => {
        const bounds = itemBounds(item)
        return !isInside(bounds, frame) || boxesOverlap(bounds, titleBlock)
      })
      expect(outside).toEqual([])
    }
  })

  it('have no two texts in one place and none under 10 points', () => {
    for (const page of pages) {
      const framed = pageFrame(page, content, { number: 88, count: 99 })
      const texts = [...page.items, ...framed].filter((i): i is TextItem => i.kind === 'text')
      expect(Math.min(...texts.map((t) => (t.sizeMm * 72) / 25.4))).toBeGreaterThanOrEqual(10)
      const boxes = texts.map(textBounds)
      const clashes = boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          .flatMap((b, k) =>
            boxesOverlap(a, b) ? [[texts[i]?.text, texts[i + 1 + k]?.text]] : [],
          ),
      )
      expect(clashes).toEqual([])
    }
  })
})
