import { describe, expect, it } from 'vitest'
import { findSmallerRows } from '../../../../src/reports/shop/made/findSmallerRows.ts'
import type { CutListRow } from '../../../../src/reports/shop/shopReport.ts'
import { cutRow } from '../setups/cutRows.ts'

/** Spoiled: 500 × 100 × 28, from a row of 520 × 100. */
const spoiled = (changes: Partial<CutListRow> = {}) => ({
  row: cutRow('A', { lengthMm: 520, widthMm: 100, ...changes }),
  size: [500, 100, 28] as const,
})

const labelsFrom = (
  rows: readonly CutListRow[],
  from: ReturnType<typeof spoiled> = spoiled(),
  made: readonly string[] = [],
) => findSmallerRows([from.row, ...rows], from, new Set(made)).map(({ label }) => label)

describe('findSmallerRows', () => {
  it('takes rows that are no longer and no wider, the largest first', () => {
    const rows = [
      cutRow('B', { lengthMm: 300, widthMm: 60 }),
      cutRow('C', { lengthMm: 500, widthMm: 100 }),
      cutRow('D', { lengthMm: 501, widthMm: 60 }),
      cutRow('E', { lengthMm: 300, widthMm: 101 }),
    ]
    expect(labelsFrom(rows)).toEqual(['C', 'B'])
  })

  it('wants the same material and thickness, to be cut and not made yet', () => {
    const small = { lengthMm: 300, widthMm: 60 }
    const rows = [
      cutRow('B', { ...small, material: 'larch' }),
      cutRow('C', { ...small, thicknessMm: 27 }),
      cutRow('D', { ...small, bought: true }),
      cutRow('E', { ...small, partIds: ['e1', 'e2'] }),
    ]
    expect(labelsFrom(rows)).toEqual(['E'])
    expect(labelsFrom(rows, spoiled(), ['e1'])).toEqual(['E'])
    expect(labelsFrom(rows, spoiled(), ['e1', 'e2'])).toEqual([])
  })

  it('turns a piece only where there is no grain, or where the grain wants it', () => {
    const across = { lengthMm: 90, widthMm: 400 }
    expect(labelsFrom([cutRow('B', across)])).toEqual([])
    expect(labelsFrom([cutRow('B', { ...across, grain: 'width' })])).toEqual(['B'])
    expect(labelsFrom([cutRow('B', { ...across, grain: 'none' })])).toEqual(['B'])
    const lengthwise = { lengthMm: 400, widthMm: 90, grain: 'width' } as const
    expect(labelsFrom([cutRow('B', lengthwise)])).toEqual([])
  })
})
