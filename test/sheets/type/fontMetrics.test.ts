import PDFDocument from 'pdfkit'
import { describe, expect, it } from 'vitest'
import { readFontMetrics } from '../../../src/sheets/type/fontMetrics.ts'
import { FONTS } from '../sheetFixture.ts'

describe('readFontMetrics', () => {
  const metrics = readFontMetrics(FONTS.regular)

  it('knows what IBM Plex Sans has and lacks', () => {
    for (const c of '×½⅞°″−≤≥²³→√•') expect(metrics.covers(c.codePointAt(0) ?? 0)).toBe(true)
    for (const c of '⌀△蜂א') expect(metrics.covers(c.codePointAt(0) ?? 0)).toBe(false)
  })

  it('agrees with an independent reader on the widths of figures', () => {
    const pdf = new PDFDocument({ font: '', autoFirstPage: false })
    pdf.registerFont('face', FONTS.regular)
    pdf.font('face').fontSize(1000)
    for (const c of '0123456789 AMWimx½é') {
      expect(1000 * metrics.advance(c.codePointAt(0) ?? 0)).toBeCloseTo(pdf.widthOfString(c), 6)
    }
  })

  it('refuses bytes that are no font', () => {
    expect(() => readFontMetrics(new Uint8Array(64))).toThrow('head')
  })
})
