import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN, DEFAULT_LUMBER, DEFAULT_SHEET } from '../../src/design/defaults.ts'
import { type Design, designSchema, type LumberStockDesign } from '../../src/design/schema.ts'
import {
  addDefect,
  addLumberStock,
  addSheetStock,
  removeDefect,
  removeLumberStock,
  removeSheetStock,
} from '../../src/design/stockEdits.ts'

const withBoard = (board: Partial<LumberStockDesign>): Design => ({
  ...DEFAULT_DESIGN,
  stock: { lumber: [{ ...DEFAULT_LUMBER, ...board }], sheets: [], goods: [] },
})

const times = (count: number, edit: (design: Design) => Design, design: Design): Design =>
  Array.from({ length: count }).reduce<Design>(edit, design)

describe('addLumberStock', () => {
  it('adds one board on hand like the last, without its name and its bad places', () => {
    const defects = [{ fromMm: 1, toMm: 2 }]
    const own = { name: 'from the bed', material: 'oak', lengthMm: 1870, defects, count: 7 }
    const [, added] = addLumberStock(withBoard(own)).stock.lumber
    expect(added).toEqual({ ...DEFAULT_LUMBER, material: 'oak', lengthMm: 1870 })
    expect(added).toMatchObject({ name: '', count: 1, onHand: true, price: 0, defects: [] })
  })

  it('stops at 60 boards', () => {
    const full = times(60, (design) => addLumberStock(design), DEFAULT_DESIGN)
    expect(full.stock.lumber).toHaveLength(60)
    expect(addLumberStock(full)).toBe(full)
    expect(designSchema.safeParse(full).success).toBe(true)
  })
})

describe('addSheetStock', () => {
  it('adds one sheet on hand like the given one, and stops at 60', () => {
    const xps = { ...DEFAULT_SHEET, material: 'xps', price: 9, onHand: false }
    const one = addSheetStock(DEFAULT_DESIGN, xps)
    expect(one.stock.sheets).toEqual([{ ...DEFAULT_SHEET, material: 'xps' }])
    const full = times(60, (design) => addSheetStock(design), DEFAULT_DESIGN)
    expect(addSheetStock(full)).toBe(full)
  })
})

describe('removing', () => {
  it('takes the one row away, and nothing where there is none', () => {
    const two = addLumberStock(withBoard({ material: 'oak' }), DEFAULT_LUMBER)
    expect(removeLumberStock(two, 0).stock.lumber).toEqual([DEFAULT_LUMBER])
    expect(removeLumberStock(two, 2)).toBe(two)
    const sheet = addSheetStock(DEFAULT_DESIGN)
    expect(removeSheetStock(sheet, 0)).toEqual(DEFAULT_DESIGN)
    expect(removeSheetStock(sheet, 1)).toBe(sheet)
  })
})

describe('addDefect', () => {
  it('marks the middle of the longest clear length, 100 mm long', () => {
    const once = addDefect(withBoard({ lengthMm: 2000, defects: [{ fromMm: 0, toMm: 500 }] }), 0)
    // Clear from 500 to 2000: the middle is 1250.
    expect(once.stock.lumber[0]?.defects[1]).toEqual({ fromMm: 1200, toMm: 1300 })
    expect(removeDefect(once, 0, 0).stock.lumber[0]?.defects).toEqual([
      { fromMm: 1200, toMm: 1300 },
    ])
    expect(removeDefect(once, 0, 2)).toBe(once)
  })

  it('stops at 8 bad places, at a board that is bad throughout, and where there is no board', () => {
    const full = times(8, (design) => addDefect(design, 0), withBoard({ lengthMm: 2400 }))
    expect(full.stock.lumber[0]?.defects).toHaveLength(8)
    expect(addDefect(full, 0)).toBe(full)
    expect(designSchema.safeParse(full).success).toBe(true)
    const bad = withBoard({ lengthMm: 300, defects: [{ fromMm: 0, toMm: 300 }] })
    expect(addDefect(bad, 0)).toBe(bad)
    expect(addDefect(bad, 1)).toBe(bad)
  })
})
