import { describe, expect, it } from 'vitest'
import { readCutFile } from '../../scripts/cutFile.ts'
import { planCuts } from '../../scripts/planCuts.ts'

const planOf = (json: object, limitMs = 200) => {
  const read = readCutFile(JSON.stringify(json))
  if (read.kind === 'bad') throw new Error(read.messages.join('\n'))
  return planCuts(read.file, limitMs)
}

const BOARD = { lengthMm: 1000, price: 2.5 }
const SHEET = { lengthMm: 1000, widthMm: 500, price: 9.99 }

describe('planCuts', () => {
  it('plans nothing for nothing', () => {
    const { plans, refusals } = planOf({
      lumber: { stocks: [BOARD], kerfMm: 3, parts: [] },
      sheets: { stocks: [SHEET], kerfMm: 3, parts: [{ lengthMm: 10, widthMm: 10, count: 0 }] },
    })
    expect(refusals).toEqual([])
    expect(plans.lumber).toMatchObject({ price: 0, bound: 0, proven: true, bars: [] })
    expect(plans.sheets).toMatchObject({ price: 0, bound: 0, proven: true, layouts: [] })
  })

  it('refuses to cut from nothing, also from a stock of which there are 0', () => {
    const parts = [{ id: 'leg', lengthMm: 10, widthMm: 10 }]
    for (const stocks of [[], [{ ...BOARD, ...SHEET, count: 0 }]]) {
      const job = { stocks, kerfMm: 3, parts }
      const { plans, refusals } = planOf({ lumber: job, sheets: job })
      expect(plans).toEqual({})
      expect(refusals.map((text) => text.slice(0, 8))).toEqual(['lumber: ', 'sheets: '])
    }
  })

  it('names the part that is too large for all stock, and what is too much for counted stock', () => {
    const [long, large] = planOf({
      lumber: { stocks: [BOARD], kerfMm: 3, trimMm: 1, parts: [{ id: 'ridge', lengthMm: 1000 }] },
      sheets: {
        stocks: [SHEET],
        kerfMm: 3,
        parts: [{ id: 'floor', lengthMm: 500, widthMm: 1000, mayTurn: false }],
      },
    }).refusals
    expect(long).toContain('ridge')
    expect(large).toContain('floor')
    const few = planOf({
      lumber: { stocks: [{ ...BOARD, count: 1 }], kerfMm: 3, parts: [{ lengthMm: 501, count: 2 }] },
      sheets: {
        stocks: [{ ...SHEET, count: 1 }],
        kerfMm: 3,
        parts: [{ lengthMm: 501, widthMm: 500, count: 2 }],
      },
    })
    expect(few.refusals).toHaveLength(2)
    expect(few.plans).toEqual({})
  })

  it.each([
    // Without kerf four quarters fill board and sheet; with one of 10 mm only three fit.
    [0, 2.5, 9.99],
    [10, 5, 19.98],
  ])('keeps a kerf of %d mm', (kerfMm, boards, sheets) => {
    const { plans } = planOf({
      lumber: { stocks: [BOARD], kerfMm, parts: [{ lengthMm: 250, count: 4 }] },
      sheets: {
        stocks: [SHEET],
        kerfMm,
        stages: 7,
        parts: [{ lengthMm: 250, widthMm: 500, count: 4 }],
      },
    })
    expect(plans.lumber).toMatchObject({ price: boards, proven: true })
    expect(plans.sheets).toMatchObject({ price: sheets, proven: true })
  })

  it('takes free boards first, as many as there are', () => {
    const { plans } = planOf({
      lumber: {
        stocks: [BOARD, { ...BOARD, price: 0, count: 2 }],
        kerfMm: 3,
        parts: [{ lengthMm: 900, count: 3 }],
      },
    })
    expect(plans.lumber).toMatchObject({ price: 2.5, bound: 2.5, proven: true, boards: 3 })
    expect(plans.lumber?.bars.map(({ stock, count }) => [stock, count]).sort()).toEqual([
      [0, 1],
      [1, 2],
    ])
  })

  it('leaves the trim off each end of a board by half, and off each edge of a sheet in full', () => {
    const { plans } = planOf({
      lumber: { stocks: [BOARD], kerfMm: 3, trimMm: 20, parts: [{ lengthMm: 980 }] },
      sheets: { stocks: [SHEET], kerfMm: 3, trimMm: 20, parts: [{ lengthMm: 960, widthMm: 460 }] },
    })
    expect(plans.lumber?.bars[0]?.pieces[0]?.fromMm).toBe(10)
    expect(plans.sheets?.layouts[0]?.pieces[0]).toMatchObject({ xMm: 20, yMm: 20 })
  })

  it('has a plan for 400 parts, however little time there is', () => {
    const parts = Array.from({ length: 100 }, (_, i) => ({
      lengthMm: 100 + 7 * i,
      widthMm: 50 + ((31 * i) % 300),
      count: 4,
      mayTurn: i % 2 === 0,
    }))
    const { plans } = planOf(
      {
        lumber: { stocks: [BOARD, { lengthMm: 2400, price: 5.1 }], kerfMm: 3, parts },
        sheets: { stocks: [{ lengthMm: 2440, widthMm: 1220, price: 40 }], kerfMm: 3, parts },
      },
      1,
    )
    for (const plan of [plans.lumber, plans.sheets]) {
      expect(plan?.bound).toBeLessThanOrEqual(plan?.price ?? 0)
    }
  })
})
