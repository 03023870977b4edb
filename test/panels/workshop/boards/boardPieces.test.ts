import { describe, expect, it } from 'vitest'
import {
  countPieces,
  drawBoard,
  stripWords,
} from '../../../../src/panels/workshop/boards/boardPieces.ts'
import type { Blank } from '../../../../src/reports/shop/cutting/cuttingPlan.ts'
import type { BarPattern, LumberJob } from '../../../../src/solvers/cutting/lumber/lumberJob.ts'

const blank = (label: string, lengthMm: number): Blank => ({
  label,
  name: label,
  lengthMm,
  widthMm: 70,
  thicknessMm: 28,
  parts: 1,
  across: 1,
  layers: 1,
})

const BLANKS = [blank('A', 900), blank('B', 400)]

const JOB: LumberJob = {
  stocks: [{ id: 'board', lengthMm: 2000, price: 5 }],
  kerfMm: 4,
  trimMm: 20,
  parts: [
    { id: 'A', lengthMm: 900, count: 1 },
    { id: 'B', lengthMm: 400, count: 2 },
  ],
}

// 10 trim, 900, 4, 400, 4, 400, 4, rest, 10 trim: the rest is 268.
const PATTERN: BarPattern = {
  stock: 0,
  count: 3,
  pieces: [
    { part: 0, fromMm: 10, lengthMm: 900 },
    { part: 1, fromMm: 914, lengthMm: 400 },
    { part: 1, fromMm: 1318, lengthMm: 400 },
  ],
  offcutMm: 268,
}

const CONTEXT = { job: JOB, blanks: BLANKS, keepMm: 300, fullMm: 4000 }

describe('drawBoard', () => {
  it('lays trim, pieces, saw cuts and the rest one behind another without a gap', () => {
    const { marks } = drawBoard(PATTERN, CONTEXT)
    expect(marks.map(({ kind }) => kind)).toEqual([
      'trim',
      'piece',
      'kerf',
      'piece',
      'kerf',
      'piece',
      'kerf',
      'waste',
      'trim',
    ])
    let at = 0
    for (const { from, length } of marks) {
      expect(from * 4000).toBeCloseTo(at, 6)
      at += length * 4000
    }
    expect(at).toBeCloseTo(2000, 6)
  })

  it('measures the board against the longest of its group', () => {
    expect(drawBoard(PATTERN, CONTEXT).length).toBe(0.5)
  })

  it('keeps a rest from the least length on', () => {
    const kept = drawBoard(PATTERN, { ...CONTEXT, keepMm: 268 })
    expect(kept.marks.find(({ kind }) => kind === 'kept')?.lengthMm).toBe(268)
  })

  it('draws no rest where the last piece ends at the trimmed end', () => {
    const full: BarPattern = {
      stock: 0,
      count: 1,
      pieces: [{ part: 0, fromMm: 10, lengthMm: 1980 }],
      offcutMm: 0,
    }
    const { marks } = drawBoard(full, CONTEXT)
    expect(marks.map(({ kind }) => kind)).toEqual(['trim', 'piece', 'trim'])
  })
})

describe('countPieces', () => {
  it('puts alike pieces together in their order', () => {
    const counted = countPieces(PATTERN, BLANKS)
    expect(counted.map(({ count, blank: b }) => [count, b?.label])).toEqual([
      [1, 'A'],
      [2, 'B'],
    ])
  })
})

describe('stripWords', () => {
  it('says how many parts a length becomes, and nothing for one', () => {
    expect(stripWords({ across: 1, layers: 1 })).toBe('')
    expect(stripWords({ across: 3, layers: 2 })).toBe('3 strips side by side, 2 from the thickness')
  })
})
