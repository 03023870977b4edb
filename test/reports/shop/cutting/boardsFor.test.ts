import { describe, expect, it } from 'vitest'
import type { Design } from '../../../../src/design/schema.ts'
import { boardsFor } from '../../../../src/reports/shop/cutting/boardsFor.ts'
import { stockName, stockRowPath } from '../../../../src/reports/shop/cutting/stockName.ts'
import { inShop } from './cutRow.ts'

const CLS = { material: 'spruce', thicknessMm: 38, widthMm: 63 }

const stocksOf = (design: Design, widthMm = 63, thicknessMm = 38) =>
  boardsFor(design, 'spruce').find(
    (option) => option.widthMm === widthMm && option.thicknessMm === thicknessMm,
  )?.stocks ?? []

describe('boardsFor', () => {
  it('has the catalogue’s lengths up to the longest board, by their sizes', () => {
    const ids = stocksOf(inShop({})).map(({ id }) => id)
    expect(ids).toEqual(['board spruce 38x63x1800', 'board spruce 38x63x2400'])
    const long = stocksOf(inShop({ shop: { longestBoardMm: 3600 } }))
    expect(long.map(({ lengthMm }) => lengthMm)).toEqual([1800, 2400, 3000, 3600])
  })

  it('speaks feet when the longest board is a whole number of them', () => {
    const options = boardsFor(inShop({ shop: { longestBoardMm: 2438.4 } }), 'spruce')
    expect(options.map(({ nominal }) => nominal)).toContain('2x4')
    expect(options.map(({ nominal }) => nominal)).not.toContain('CLS 38 x 63')
  })

  it('takes the design’s own price instead of the catalogue’s, for that size alone', () => {
    const own = { ...CLS, lengthMm: 2400, price: 1.5, supply: 'unlimited', onHand: false } as const
    const [short, ...rest] = stocksOf(inShop({ lumber: [own] }))
    expect(short).toMatchObject({ lengthMm: 1800 })
    expect(rest).toEqual([{ id: 'stock.lumber.0', lengthMm: 2400, price: 1.5 }])
  })

  it('leaves out what is not to be had', () => {
    const none = { ...CLS, lengthMm: 2400, supply: 'none', onHand: false } as const
    expect(stocksOf(inShop({ lumber: [none] })).map(({ lengthMm }) => lengthMm)).toEqual([1800])
  })

  it('has what is on hand for nothing, beside the catalogue, if it is to be used', () => {
    const own = { ...CLS, lengthMm: 2400, price: 7, count: 3 }
    const free = { id: 'stock.lumber.0', lengthMm: 2400, price: 0, count: 3 }
    expect(stocksOf(inShop({ lumber: [own] }))).toHaveLength(3)
    expect(stocksOf(inShop({ lumber: [own] }))).toContainEqual(free)
    const unused = inShop({ lumber: [own], shop: { useOnHand: false } })
    expect(stocksOf(unused)).toHaveLength(2)
    expect(stocksOf(inShop({ lumber: [{ ...own, count: 0 }] }))).toHaveLength(2)
  })

  it('has boards of a section that no yard sells, longer than the longest board too', () => {
    const design = inShop({ lumber: [{ ...CLS, thicknessMm: 22, widthMm: 120, lengthMm: 3100 }] })
    expect(stocksOf(design, 120, 22)).toEqual([
      { id: 'stock.lumber.0', lengthMm: 3100, price: 0, count: 1 },
    ])
    expect(boardsFor(design, 'pine').some(({ widthMm }) => widthMm === 120)).toBe(false)
  })

  it('has a board with bad places as its clear lengths, each as often as there are boards', () => {
    const defects = [{ fromMm: 900, toMm: 1000 }]
    const own = { ...CLS, name: 'old joist', lengthMm: 2400, count: 2, defects }
    const design = inShop({ lumber: [own] })
    const clear = stocksOf(design).filter(({ price }) => price === 0)
    expect(clear).toEqual([
      { id: 'stock.lumber.0, clear length 1', lengthMm: 900, price: 0, count: 2 },
      { id: 'stock.lumber.0, clear length 2', lengthMm: 1400, price: 0, count: 2 },
    ])
    expect(stockName(design, clear[1]?.id ?? '')).toBe('old joist, clear length 2')
    expect(stockRowPath(clear[1]?.id ?? '')).toBe('stock.lumber.0')
  })

  it('pays for a board with bad places once, by its longest clear length', () => {
    const defects = [{ fromMm: 900, toMm: 1000 }]
    const own = { ...CLS, lengthMm: 2700, price: 4, onHand: false, defects } as const
    const bought = stocksOf(inShop({ lumber: [own] })).filter(({ id }) => id.startsWith('stock'))
    expect(bought).toEqual([
      { id: 'stock.lumber.0, clear length 2', lengthMm: 1700, price: 4, count: 1 },
    ])
  })
})

describe('stockName', () => {
  it('numbers a board without a name, and knows nothing of the catalogue', () => {
    const design = inShop({ lumber: [{}, {}], sheets: [{ name: 'lid of a crate' }] })
    expect(stockName(design, 'stock.lumber.1')).toBe('Board 2')
    expect(stockName(design, 'stock.sheets.0')).toBe('lid of a crate')
    expect(stockName(design, 'stock.sheets.1')).toBeUndefined()
    expect(stockName(design, 'board spruce 38x63x1800')).toBeUndefined()
  })
})
