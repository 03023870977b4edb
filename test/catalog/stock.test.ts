import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { nominalFor, STOCK_SECTIONS } from '../../src/catalog/stock.ts'

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

describe('nominalFor', () => {
  it('names the trade size and what it really measures', () => {
    expect(nominalFor(38.1, 88.9, 'us')).toBe('from 2x4 (38.1 × 88.9 actual)')
    expect(nominalFor(38, 63, 'metric')).toBe('from CLS 38 × 63')
  })

  it('takes the section with the least timber that still holds the part', () => {
    // 19 x 60: 1x3 (63.5 wide) holds it, 1x2 (38.1 wide) does not.
    expect(nominalFor(19, 60, 'us')).toBe('from 1x3 (19.05 × 63.5 actual)')
    // 30 x 30 is too thick for any 1x.
    expect(nominalFor(30, 30, 'us')).toBe('from 2x2 (38.1 × 38.1 actual)')
    // 24 x 44 is too thick for planed 20; 25 x 50 = 1250 mm² is the next.
    expect(nominalFor(24, 44, 'metric')).toBe('from sawn 25 × 50')
  })

  it('does not mistake the trade size for the real one', () => {
    // A true 2 x 4 inch part cannot come from a 2x4, nor from any other 2x.
    expect(nominalFor(50.8, 101.6, 'us')).toBeUndefined()
    // A 100 mm wide part cannot come from a planed "ex 100", which is 94.
    expect(nominalFor(20, 100, 'metric')).toBe('from sawn 25 × 100')
  })

  it('lets an 89 mm rail come from a 2x4, but not a 90 mm one', () => {
    expect(nominalFor(38, 89, 'us')).toBe('from 2x4 (38.1 × 88.9 actual)')
    expect(nominalFor(38, 90, 'us')).toBe('from 2x6 (38.1 × 139.7 actual)')
  })

  it('finds nothing for parts too large, and for sides that are not positive numbers', () => {
    expect(nominalFor(20, 400, 'metric')).toBeUndefined()
    for (const bad of [0, -5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(nominalFor(bad, 20, 'metric')).toBeUndefined()
      expect(nominalFor(20, bad, 'us')).toBeUndefined()
    }
  })

  it('gives the same answer whichever side is named first', () => {
    const side = fc.double({ min: 1, max: 300, noNaN: true })
    fc.assert(
      fc.property(side, side, fc.constantFrom('us', 'metric'), (a, b, system) => {
        expect(nominalFor(a, b, system)).toBe(nominalFor(b, a, system))
      }),
    )
  })
})
