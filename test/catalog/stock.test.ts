import { describe, expect, it } from 'vitest'
import { STOCK_SECTIONS, sectionText } from '../../src/catalog/stock.ts'

describe('STOCK_SECTIONS', () => {
  it('gives every row its own id, positive sides and a source', () => {
    expect(new Set(STOCK_SECTIONS.map((row) => row.id)).size).toBe(STOCK_SECTIONS.length)
    for (const row of STOCK_SECTIONS) {
      expect(row.id).toMatch(/^(us|metric)-[a-z0-9/-]+$/)
      expect(row.thicknessMm).toBeGreaterThan(0)
      expect(row.widthMm).toBeGreaterThanOrEqual(row.thicknessMm)
      expect(Number.isFinite(row.widthMm)).toBe(true)
      expect(row.source.length).toBeGreaterThan(10)
    }
  })

  it('has the actual sizes of PS 20, dry dressed', () => {
    // PS 20, restated at mail.vterrain.org/Hawaii/Ben/lumber.htm; widths 2 and 3 from memory.
    const actualWidthIn = new Map([
      [2, 1.5],
      [3, 2.5],
      [4, 3.5],
      [6, 5.5],
      [8, 7.25],
      [10, 9.25],
      [12, 11.25],
    ])
    const actualThicknessIn = new Map([
      [1, 0.75],
      [2, 1.5],
    ])
    const expected = [...actualThicknessIn].flatMap(([thick, thickIn]) =>
      [...actualWidthIn].map(([wide, wideIn]) => [
        `${thick}x${wide}`,
        thickIn * 25.4,
        wideIn * 25.4,
      ]),
    )
    const rows = STOCK_SECTIONS.filter((row) => row.system === 'us' && row.nominal !== '5/4x6')
    expect(rows.length).toBe(14)
    for (const [nominal, thicknessMm, widthMm] of expected) {
      const row = rows.find((candidate) => candidate.nominal === nominal)
      expect(row?.thicknessMm, `${nominal}`).toBeCloseTo(Number(thicknessMm), 9)
      expect(row?.widthMm, `${nominal}`).toBeCloseTo(Number(widthMm), 9)
    }
  })

  it('has the Canadian lumber sizes that European yards stock', () => {
    // From memory: EN 1313-1 UK annex, Table NA.3.
    const cls = STOCK_SECTIONS.filter((row) => row.nominal.startsWith('CLS'))
    expect(cls.map((row) => [row.thicknessMm, row.widthMm])).toEqual([
      [38, 63],
      [38, 89],
      [38, 140],
    ])
  })
})

describe('sectionText', () => {
  const named = (nominal: string): string => {
    const row = STOCK_SECTIONS.find((candidate) => candidate.nominal === nominal)
    if (row === undefined) throw new Error(nominal)
    return sectionText(row)
  }

  it('names the trade size and what it really measures', () => {
    expect(named('2x4')).toBe('from 2x4 (38.1 × 88.9 actual)')
    expect(named('ex 25 x 100')).toBe('from ex 25 × 100 (20 × 94 actual)')
  })

  it('says a section whose name is its size only once', () => {
    expect(named('CLS 38 x 63')).toBe('from CLS 38 × 63')
    expect(sectionText({ nominal: 'own 22 x 120', thicknessMm: 22, widthMm: 120 })).toBe(
      'from own 22 × 120',
    )
  })
})
