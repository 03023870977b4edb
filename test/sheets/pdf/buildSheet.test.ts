import { beforeAll, describe, expect, it } from 'vitest'
import { CAUTIONS } from '../../../src/catalog/cautions.ts'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { formatDesign } from '../../../src/design/formatDesign.ts'
import type { Design } from '../../../src/design/schema.ts'
import {
  ATTACHED_DESIGN,
  buildSheetPdf,
  SHEET_ABORTED,
  type SheetProgress,
} from '../../../src/sheets/pdf/buildSheet.ts'
import { INCH } from '../../../src/units/preferences.ts'
import { COMPARISONS, withField } from '../heat/syntheticField.ts'
import { built, sheetInput } from '../sheetFixture.ts'
import { type PdfLine, type ReadPage, type ReadPdf, readPdf } from './readPdf.ts'

const MM_PER_PT = 25.4 / 72
const DEFAULT = built()

/** Lengths on paper of level lines of the thin pen (0.18 mm), mm. */
const thinLevelLengths = (page: ReadPage): readonly number[] =>
  page.lines
    .filter((l) => Math.abs(l.y1 - l.y0) < 1e-3 && isWidth(l, 0.18))
    .map((l) => Math.abs(l.x1 - l.x0) * MM_PER_PT)

const isWidth = (l: PdfLine, mm: number) => Math.abs(l.widthPt * MM_PER_PT - mm) < 0.005

const nearest = (lengths: readonly number[], wanted: number): number =>
  Math.min(...lengths.map((l) => Math.abs(l - wanted)))

const withTitle = (title: Partial<Design['title']>): Design => ({
  ...DEFAULT_DESIGN,
  title: { ...DEFAULT_DESIGN.title, ...title },
})

describe('buildSheetPdf on A4 in millimetres', () => {
  let bytes: Uint8Array
  let pdf: ReadPdf
  const steps: SheetProgress[] = []

  beforeAll(async () => {
    bytes = await buildSheetPdf(sheetInput(DEFAULT), (p) => {
      steps.push(p)
    })
    pdf = await readPdf(bytes)
  }, 60_000)

  it('numbers every page of the count, on paper of the size asked for', () => {
    const count = pdf.pages.length
    expect(count).toBeGreaterThanOrEqual(12)
    pdf.pages.forEach((page, i) => {
      expect(page.text).toContain(`Sheet ${i + 1} of ${count}`)
      expect(page.widthPt * MM_PER_PT).toBeCloseTo(297, 3)
      expect(page.heightPt * MM_PER_PT).toBeCloseTo(210, 3)
    })
    expect(pdf.bookmarks).toHaveLength(count)
  })

  it('has the name in each title block, with the unit and the date', () => {
    for (const page of pdf.pages) {
      expect(page.text).toContain(DEFAULT_DESIGN.title.name)
      expect(page.text).toContain('Lengths in mm')
      expect(page.text).toContain('2031-04-09')
    }
  })

  it('lists every part with its letter, count and name, the head on each page', () => {
    const pages = pdf.pages.filter((p) => p.runs.includes('Cut list') && p.runs.includes('Length'))
    expect(pages.length).toBeGreaterThan(1)
    for (const page of pages) {
      expect(page.runs).toEqual(
        expect.arrayContaining(['Part', 'Pieces', 'Width', 'Work and stock']),
      )
    }
    for (const row of DEFAULT.report.shop.cutList.filter((r) => !r.bought)) {
      const page = pages.find((p) => p.runs.includes(row.label))
      expect(page?.text).toContain(`${row.label} ${row.count} ${row.name}`)
    }
  })

  it('lists what is bought ready-made and every sundry', () => {
    const text = pdf.pages.map((p) => p.text).join(' ')
    for (const row of DEFAULT.report.shop.cutList.filter((r) => r.bought)) {
      expect(text).toContain(`${row.label} ${row.count} ${row.name}`)
    }
    for (const s of DEFAULT.report.shop.sundries) expect(text).toContain(s.name)
  })

  it('prints every caution in full', () => {
    const text = pdf.pages.map((p) => p.text).join(' ')
    for (const c of CAUTIONS) expect(text).toContain(c.text.normalize('NFKC'))
  })

  it('draws the length over the roof true to the stated scale', () => {
    const page = pdf.pages.find((p) => p.text.includes('Front view 1:10'))
    expect(page?.text).toContain('Scale 1:10')
    const { roofLength, outerLength, cavityLength } = DEFAULT.hive.dimensions
    const lengths = page ? thinLevelLengths(page) : []
    for (const mm of [roofLength, outerLength, cavityLength]) {
      // 0.05 mm of paper, and 0.1 mm of hive at 1:10 is 0.01 mm of paper.
      expect(nearest(lengths, mm / 10)).toBeLessThan(0.01)
    }
  })

  it('has a bar of 100 mm on each page that is drawn to scale', () => {
    const scaled = pdf.pages.filter((p) => p.text.includes('Scale 1:'))
    expect(scaled.length).toBeGreaterThanOrEqual(5)
    for (const page of scaled) {
      expect(page.text).toContain('measures 100 mm from end to end')
      const medium = page.lines
        .filter((l) => isWidth(l, 0.35) && l.y0 === l.y1)
        .map((l) => Math.abs(l.x1 - l.x0) * MM_PER_PT)
      expect(nearest(medium, 100)).toBeLessThan(0.05)
    }
  })

  it('draws no line thinner than 0.18 mm', () => {
    for (const line of pdf.pages.flatMap((p) => p.lines)) {
      expect(line.widthPt * MM_PER_PT).toBeGreaterThan(0.175)
    }
  })

  it('carries the design inside, letter for letter', () => {
    expect(pdf.attachments.get(ATTACHED_DESIGN)).toBe(formatDesign(DEFAULT_DESIGN))
  })

  it('tells of its progress from nothing to all', () => {
    const total = steps[0]?.total ?? 0
    expect(steps.map((s) => s.done)).toEqual(Array.from({ length: total + 1 }, (_, i) => i))
  })

  it('gives the same bytes for the same input', async () => {
    expect(await buildSheetPdf(sheetInput(DEFAULT))).toEqual(bytes)
  }, 60_000)

  it('stops when it is told to', async () => {
    const signal = { aborted: false }
    const seen: number[] = []
    const build = buildSheetPdf(
      sheetInput(DEFAULT),
      ({ done }) => {
        seen.push(done)
        signal.aborted = done === 2
      },
      signal,
    )
    await expect(build).rejects.toThrow(SHEET_ABORTED)
    expect(seen).toEqual([0, 1, 2])
  }, 60_000)
})

describe('buildSheetPdf on Letter in inches', () => {
  it('is drawn true to scale on its own paper, with a bar of four inches', async () => {
    const pdf = await readPdf(
      await buildSheetPdf(sheetInput(DEFAULT, { paper: 'letter', units: INCH })),
    )
    for (const page of pdf.pages) {
      expect([page.widthPt, page.heightPt]).toEqual([792, 612])
      expect(page.text).toContain('Lengths in inches')
    }
    const front = pdf.pages.find((p) => p.text.includes('Front view 1:'))
    const n = Number(/Front view 1:(\d+)/.exec(front?.text ?? '')?.[1])
    const lengths = front ? thinLevelLengths(front) : []
    expect(nearest(lengths, DEFAULT.hive.dimensions.roofLength / n)).toBeLessThan(0.01)
    const medium = (front?.lines ?? [])
      .filter((l) => isWidth(l, 0.35) && l.y0 === l.y1)
      .map((l) => Math.abs(l.x1 - l.x0) / 72)
    expect(nearest(medium, 4)).toBeLessThan(0.001)
  }, 60_000)
})

describe('buildSheetPdf with words that are hard to print', () => {
  it('prints all of them, with a mark and a count for what the typeface lacks', async () => {
    const run = 'W'.repeat(50)
    const note = `first line\r\n\u2028蜂 \u202e(a)\\b ${'M'.repeat(300)} end\u0000`
    const design = withTitle({ name: `蜂箱 👨‍👩‍👧 ${run}`, owner: 'שלום <b>&', note })
    const pdf = await readPdf(await buildSheetPdf(sheetInput({ ...DEFAULT, design })))
    const first = pdf.pages[0]?.text ?? ''
    expect(first).toContain('?? ?')
    expect(first).toContain('3 characters of the name are not in the printed typeface')
    expect(first).toContain('4 characters of the builder are')
    expect(first).toContain('1 character of the note is')
    expect(first).toContain('???? <b>&')
    const joined = pdf.pages.map((p) => p.text.replaceAll(' ', ''))
    for (const page of joined) expect(page).toContain(run)
    expect(joined.some((p) => p.includes(`(a)\\b${'M'.repeat(300)}end`))).toBe(true)
    expect(pdf.attachments.get(ATTACHED_DESIGN)).toBe(formatDesign(design))
  }, 60_000)

  it('has a page for a hive without a name', async () => {
    const design = withTitle({ name: '', owner: '', note: '' })
    const pdf = await readPdf(await buildSheetPdf(sheetInput({ ...DEFAULT, design })))
    expect(pdf.pages[0]?.text).toContain('Hive without a name')
  }, 60_000)
})

describe('buildSheetPdf with the heat in three dimensions', () => {
  it('has the pages for it, and grows by less than 300 kB', async () => {
    const plain = await buildSheetPdf(sheetInput(DEFAULT))
    const input = sheetInput(withField(DEFAULT), { comparisons: COMPARISONS })
    const bytes = await buildSheetPdf(input)
    expect(bytes.length - plain.length).toBeLessThan(300_000)
    const pdf = await readPdf(bytes)
    const text = pdf.pages.map((p) => p.text).join(' ')
    expect(text).toContain('certainly between 1.79 and 1.81 W/K')
    expect(text).toContain('A strip of foam over each rail')
    const section = pdf.pages.find((p) => p.text.includes('Temperatures along the hive 1:10'))
    expect(section?.text).toContain('Scale 1:10')
    expect(section?.runs).toContain('-5 °C')
    expect(await buildSheetPdf(input)).toEqual(bytes)
  }, 60_000)
})

describe('buildSheetPdf with a picture', () => {
  // One grey pixel.
  const PNG =
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg=='

  it('sets it on the first page and nowhere else', async () => {
    const bytes = Uint8Array.from(atob(PNG), (c) => c.charCodeAt(0))
    const picture = { bytes, widthPx: 1, heightPx: 1, kind: 'png' } as const
    const pdf = await readPdf(await buildSheetPdf({ ...sheetInput(DEFAULT), picture }))
    expect(pdf.pages.map((p) => p.images)).toEqual([1, ...pdf.pages.slice(1).map(() => 0)])
  }, 60_000)
})
