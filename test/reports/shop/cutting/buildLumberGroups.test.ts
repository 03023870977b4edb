import { describe, expect, it } from 'vitest'
import { STOCK_SECTIONS } from '../../../../src/catalog/stock.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { applyChanges } from '../../../../src/design/setField.ts'
import { buildCuttingJobs } from '../../../../src/reports/shop/cutting/buildCuttingJobs.ts'
import { nameStock } from '../../../../src/reports/shop/cutting/nameStock.ts'
import type { CutListRow } from '../../../../src/reports/shop/shopReport.ts'
import { cutRow, inShop } from './cutRow.ts'

/** The section and the way that each row is sawn, or that it is not. */
const sawn = (design: Design, ...rows: readonly Partial<CutListRow>[]) => {
  const { lumber, problems } = buildCuttingJobs(design, rows.map(cutRow))
  const blanks = lumber.flatMap(({ section, blanks, job }) =>
    blanks.map(({ across, layers }, i) => {
      return { section, across, layers, count: job.parts[i]?.count, job }
    }),
  )
  return { blanks, lumber, problems, first: blanks[0] }
}

const only = (design: Design, row: Partial<CutListRow>) => sawn(design, row).first

describe('the section that a row is sawn from', () => {
  it('is the one that needs the least planing, though another were cheaper', () => {
    // 19 x 124: planed 20 x 144 is dearer than sawn 25 x 150, which would lose 6 mm.
    expect(only(inShop({}), { widthMm: 124, thicknessMm: 19 })?.section).toBe('ex 25 x 150')
  })

  it('is named in the cut list as it was chosen', () => {
    const rows = [cutRow({ widthMm: 63, thicknessMm: 38 }), cutRow({ label: 'B', material: 'xps' })]
    const named = nameStock(rows, buildCuttingJobs(inShop({}), rows))
    expect(named.map(({ stock }) => stock)).toEqual(['from CLS 38 × 63', undefined])
  })

  it('speaks the system of the longest board, and lets 89 mm come from 88.9', () => {
    const us = inShop({ shop: { longestBoardMm: 2438.4 } })
    expect(only(us, { widthMm: 89, thicknessMm: 38 })?.section).toBe('2x4')
    expect(only(us, { widthMm: 90, thicknessMm: 38 })?.section).not.toBe('2x4')
  })

  it('does not mind which side is called the width', () => {
    const lying = only(inShop({}), { widthMm: 60, thicknessMm: 28 })
    expect(only(inShop({}), { widthMm: 28, thicknessMm: 60 })?.section).toBe(lying?.section)
    expect(lying?.section).toBe('planed 28 x 70')
  })

  it('joins a section that is bought anyway, rather than open another for a few parts', () => {
    const wide = { label: 'A', widthMm: 90, thicknessMm: 20, lengthMm: 1500, count: 3 }
    const narrow = { label: 'B', widthMm: 40, thicknessMm: 20, lengthMm: 300 }
    expect(only(inShop({}), narrow)?.section).toBe('ex 25 x 50')
    const { blanks } = sawn(inShop({}), wide, narrow)
    expect(blanks.map(({ section }) => section)).toEqual(['ex 25 x 100', 'ex 25 x 100'])
  })

  it('is the board on hand if there is enough of it', () => {
    const shed = { material: 'spruce', thicknessMm: 22, widthMm: 120, lengthMm: 1220, count: 1 }
    const row = { widthMm: 110, thicknessMm: 19, lengthMm: 590 }
    // 1220 - 20 of ends = 1200 = 590 + 3.2 + 590 and 16.8 over: two parts, not three.
    const two = sawn(inShop({ lumber: [shed] }), { ...row, count: 2 })
    expect(two.first).toMatchObject({ section: 'own 22 x 120', count: 2 })
    expect(sawn(inShop({ lumber: [shed] }), { ...row, count: 3 }).first?.section).toBe(
      'ex 25 x 150',
    )
    // What one row has taken is gone for the next.
    const both = sawn(
      inShop({ lumber: [shed] }),
      { ...row, count: 2 },
      { ...row, label: 'B', lengthMm: 500 },
    )
    expect(both.blanks.map(({ section }) => section)).toEqual(['own 22 x 120', 'ex 25 x 150'])
  })
})

describe('how many parts a length of board becomes', () => {
  const saws = (tools: Design['shop']['tools'], kerfMm = 3.2) => inShop({ shop: { tools, kerfMm } })

  it('rips strips side by side, with a saw cut between two', () => {
    const board = { material: 'spruce', thicknessMm: 20, widthMm: 144, lengthMm: 2400, count: 9 }
    const strips = (kerfMm: number) =>
      only(inShop({ lumber: [board], shop: { kerfMm, tools: 'circular-saw' } }), {
        widthMm: 46,
        thicknessMm: 20,
        count: 7,
      })
    // 3 x 46 + 2 x 3 = 144; a wider cut leaves room for two.
    expect(strips(3)).toMatchObject({ across: 3, layers: 1, count: 3 })
    expect(strips(4)).toMatchObject({ across: 2, count: 4 })
  })

  it('splits thin parts from a thick board with a table saw alone', () => {
    const bars = { material: 'pine', widthMm: 35, thicknessMm: 9.5, count: 40 }
    // 2 x 9.5 + 3.2 + 2 x 1.5 = 25.2, within the tolerance of a board 25 thick.
    expect(only(saws('table-saw'), bars)).toMatchObject({ layers: 2 })
    expect(only(saws('table-saw', 3.5), bars)?.section).not.toMatch(/^sawn 25/)
    expect(only(saws('circular-saw'), bars)).toMatchObject({ layers: 1 })
    // Too wide for the blade, or too few to set the saw for.
    expect(only(saws('table-saw'), { ...bars, widthMm: 80 })).toMatchObject({ layers: 1 })
    expect(only(saws('table-saw'), { ...bars, count: 3 })).toMatchObject({ layers: 1 })
  })

  it('is one by hand, from a board within 2 mm of the part', () => {
    const hand = saws('hand-tools')
    expect(only(hand, { widthMm: 61, thicknessMm: 36.5 })).toMatchObject({
      section: 'CLS 38 x 63',
      across: 1,
      layers: 1,
    })
    const { blanks, problems } = sawn(hand, { widthMm: 60.9, thicknessMm: 36.5 })
    expect(blanks).toEqual([])
    expect(problems).toMatchObject([
      { labels: ['A'], remedies: [{}, { changes: [{ field: 'shop.tools' }] }] },
    ])
  })

  it('lays the grain along the board', () => {
    const { job } = only(inShop({}), { lengthMm: 130, widthMm: 90, grain: 'width' }) ?? {}
    expect(job?.parts).toEqual([{ id: 'A', lengthMm: 90, count: 1 }])
  })

  it('counts all hives, without the parts that are cut already', () => {
    const row = { widthMm: 63, thicknessMm: 38, count: 4 }
    const three = inShop({ shop: { hivesAtOnce: 3 }, made: ['A-0', 'A-3', 'other'] })
    expect(only(three, row)).toMatchObject({ count: 3 * 4 - 2 })
    const all = sawn(inShop({ made: ['A-0', 'A-1', 'A-2', 'A-3'] }), row)
    expect([all.blanks, all.problems]).toEqual([[], []])
  })
})

describe('rows that no board does', () => {
  /** The only problem; each change that it offers, done to the design, must solve it. */
  const solvedByChanges = (design: Design, row: Partial<CutListRow>) => {
    const { problems, blanks } = sawn(design, row)
    expect(blanks).toEqual([])
    expect(problems).toHaveLength(1)
    const changes = problems.flatMap(({ remedies }) => remedies.flatMap((r) => r.changes ?? []))
    return {
      problem: problems[0],
      fields: changes.map(({ field }) => field),
      solved: changes.map((change) => sawn(applyChanges(design, [change]), row).problems.length),
    }
  }

  it('are told when they are too long, with longer boards as the way out', () => {
    const { problem, fields, solved } = solvedByChanges(inShop({}), { lengthMm: 2700 })
    expect(problem?.message).toBe('No board of Spruce is long enough, with its ends cut off.')
    expect(fields[0]).toBe('shop.longestBoardMm')
    expect(solved[0]).toBe(0)
    expect(problem?.remedies.map(({ text }) => text).join(' ')).toMatch(/rail or stud/)
  })

  it('may only need less cut off the ends', () => {
    const { fields, solved } = solvedByChanges(inShop({}), { lengthMm: 2390 })
    expect(fields.slice(0, 2)).toEqual(['shop.endTrimMm', 'shop.longestBoardMm'])
    expect(solved.slice(0, 2)).toEqual([0, 0])
  })

  it('are told when they are too wide: glued up, or of plywood', () => {
    const row = { material: 'spruce', widthMm: 420, thicknessMm: 19, name: 'Long wall cladding' }
    const { problem, fields } = solvedByChanges(inShop({}), row)
    expect(problem?.message).toBe('No board of Spruce is wide enough.')
    // 420 / (225 - 4) is a little under two.
    expect(problem?.remedies[0]?.text).toBe('Glue it up from 2 boards, edge to edge.')
    expect(fields).toContain('walls.claddingMaterial')
  })

  it('are told when there is no such wood, or too few boards of it', () => {
    const legs = { material: 'oak', widthMm: 70, thicknessMm: 45, lengthMm: 800, count: 4 }
    const noOak = boardRows('oak').map(
      (row) => ({ ...row, supply: 'none', onHand: false }) as const,
    )
    const hidden = inShop({ lumber: noOak, shop: { longestBoardMm: 1000 } })
    expect(sawn(hidden, legs).problems).toMatchObject([
      { labels: ['A'], message: expect.stringMatching(/no boards of .*oak to be had/i) },
    ])
    const three = { material: 'oak', thicknessMm: 46, widthMm: 72, lengthMm: 850, count: 3 }
    const few = inShop({ lumber: [...noOak, three], shop: { longestBoardMm: 1000 } })
    expect(sawn(few, legs).problems).toMatchObject([
      { message: expect.stringMatching(/not enough/) },
    ])
    expect(sawn(few, { ...legs, count: 3 }).first).toMatchObject({ section: 'own 46 x 72' })
  })

  it('are told together when they lack the same', () => {
    const long = { lengthMm: 3000 }
    const { problems, blanks } = sawn(inShop({}), long, { ...long, label: 'B' }, { label: 'C' })
    expect(problems.map(({ labels }) => labels)).toEqual([['A', 'B']])
    expect(blanks).toHaveLength(1)
  })
})

/** A row for each section of the metric catalogue, in boards of 1 m. */
const boardRows = (material: string) =>
  METRIC.map(([thicknessMm, widthMm]) => ({ material, thicknessMm, widthMm, lengthMm: 1000 }))

const METRIC = STOCK_SECTIONS.filter(({ system }) => system === 'metric').map(
  ({ thicknessMm, widthMm }) => [thicknessMm, widthMm] as const,
)
