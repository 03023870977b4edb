import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN, DEFAULT_LUMBER } from '../../src/design/defaults.ts'
import { setPrice, setStockPrice } from '../../src/design/priceEdits.ts'
import { parseStockItemId, stockItemId } from '../../src/design/stockItem.ts'

describe('setPrice', () => {
  const size = {
    material: 'western-red-cedar',
    thicknessMm: 38.1,
    widthMm: 88.9,
    lengthMm: 2438.4,
  }
  const id = stockItemId({ kind: 'board', ...size })

  it('makes a row of the design’s own for a price of the catalogue, and changes it after', () => {
    const once = setPrice(DEFAULT_DESIGN, id, 7.5)
    const row = { ...DEFAULT_LUMBER, ...size, price: 7.5, supply: 'unlimited', onHand: false }
    expect(once.stock.lumber).toEqual([row])
    expect(setPrice(once, id, 8).stock.lumber).toEqual([{ ...row, price: 8 }])
    expect(setPrice(once, 'stock.lumber.0', 9).stock.lumber).toEqual([{ ...row, price: 9 }])
    const clear = 'stock.lumber.0, clear length 2'
    expect(setPrice(once, clear, 9).stock.lumber).toEqual([{ ...row, price: 9 }])
  })

  it('leaves what is on hand alone, though it has the same size', () => {
    const onHand = { ...DEFAULT_LUMBER, ...size }
    const stock = { lumber: [onHand], sheets: [], goods: [] }
    const { lumber } = setPrice({ ...DEFAULT_DESIGN, stock }, id, 4).stock
    expect(lumber[0]).toBe(onHand)
    expect(lumber[1]).toMatchObject({ onHand: false, price: 4 })
  })

  it('does the same for sheets, and tells thin ones apart', () => {
    const sheet = { kind: 'sheet', material: 'aluminium-sheet', lengthMm: 2000, widthMm: 1000 }
    const thin = { ...sheet, kind: 'sheet', thicknessMm: 0.7 } as const
    const thick = { ...thin, thicknessMm: 0.8 } as const
    const both = setStockPrice(setStockPrice(DEFAULT_DESIGN, thin, 40), thick, 50)
    expect(both.stock.sheets.map(({ price }) => price)).toEqual([40, 50])
  })

  it('keeps the price of any other article under its id', () => {
    const once = setPrice(DEFAULT_DESIGN, 'hinge-75', 8)
    expect(once.stock.goods).toEqual([{ id: 'hinge-75', price: 8 }])
    expect(setPrice(once, 'hinge-75', -3).stock.goods).toEqual([{ id: 'hinge-75', price: 0 }])
    const full = Array.from({ length: 60 }, (_, i) => i).reduce(
      (design, i) => setPrice(design, `article-${i}`, 1),
      DEFAULT_DESIGN,
    )
    expect(setPrice(full, 'one-more', 1)).toBe(full)
    expect(setPrice(full, 'article-59', 2).stock.goods.at(-1)?.price).toBe(2)
  })
})

describe('parseStockItemId', () => {
  it('reads back what stockItemId wrote, and nothing else', () => {
    const item = {
      kind: 'sheet',
      material: 'pir-foil',
      thicknessMm: 12.7,
      widthMm: 1200,
      lengthMm: 2400,
    } as const
    expect(stockItemId(item)).toBe('sheet pir-foil 12.7x1200x2400')
    expect(parseStockItemId(stockItemId(item))).toEqual(item)
    for (const other of ['', 'sheet xps', 'box of screws 1x2x3', 'hinge-75']) {
      expect(parseStockItemId(other)).toBeUndefined()
    }
  })
})
