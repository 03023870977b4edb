import { describe, expect, it } from 'vitest'
import type { Design } from '../../../../src/design/schema.ts'
import { applyChanges } from '../../../../src/design/setField.ts'
import { buildCuttingJobs } from '../../../../src/reports/shop/cutting/buildCuttingJobs.ts'
import type { CutListRow } from '../../../../src/reports/shop/shopReport.ts'
import { cutRow, inShop } from './cutRow.ts'

const PLY = { material: 'plywood-softwood', lengthMm: 900, widthMm: 450, thicknessMm: 12 }

const sheetsOf = (design: Design, ...rows: readonly Partial<CutListRow>[]) =>
  buildCuttingJobs(design, rows.map(cutRow))

const jobOf = (design: Design, row: Partial<CutListRow>) => sheetsOf(design, row).sheets[0]?.job

describe('the sheets of a job', () => {
  it('are of one material and thickness each', () => {
    const { sheets } = sheetsOf(
      inShop({}),
      PLY,
      { ...PLY, label: 'B', thicknessMm: 9 },
      { ...PLY, label: 'C' },
    )
    expect(sheets.map(({ key, labels }) => [key, labels])).toEqual([
      ['plywood-softwood 12', ['A', 'C']],
      ['plywood-softwood 9', ['B']],
    ])
  })

  it('are the catalogue’s with the design’s own prices, and what is on hand for nothing', () => {
    const size = { material: 'plywood-softwood', thicknessMm: 12 }
    const own = { ...size, lengthMm: 2440, widthMm: 1220, price: 20, onHand: false } as const
    const piece = { ...size, lengthMm: 950, widthMm: 700, count: 2, price: 9 }
    const other = { ...piece, thicknessMm: 9 }
    const stocks = jobOf(inShop({ sheets: [own, piece, other] }), PLY)?.stocks ?? []
    expect(stocks.filter(({ lengthMm }) => lengthMm === 2440)).toEqual([
      { id: 'stock.sheets.0', lengthMm: 2440, widthMm: 1220, price: 20, count: 1 },
    ])
    expect(stocks).toContainEqual({
      id: 'stock.sheets.1',
      lengthMm: 950,
      widthMm: 700,
      price: 0,
      count: 2,
    })
    expect(stocks.filter(({ price }) => price === 0)).toHaveLength(1)
    const gone = { ...own, supply: 'none' } as const
    const without = jobOf(inShop({ sheets: [gone] }), PLY)?.stocks ?? []
    expect(without.some(({ lengthMm }) => lengthMm === 2440)).toBe(false)
  })
})

describe('how sheets are cut', () => {
  it('keeps the grain along the sheet, whichever way it runs on the part', () => {
    const sizes = (row: Partial<CutListRow>) => {
      const { lengthMm, widthMm, mayTurn } = jobOf(inShop({}), { ...PLY, ...row })?.parts[0] ?? {}
      return [lengthMm, widthMm, mayTurn]
    }
    expect(sizes({ grain: 'length' })).toEqual([900, 450, false])
    expect(sizes({ grain: 'width' })).toEqual([450, 900, false])
    expect(sizes({ grain: 'none', material: 'xps' })).toEqual([900, 450, true])
  })

  it('follows the workshop: stages, trimming, and pieces that can be carried', () => {
    const manner = (shop: Partial<Design['shop']>, material = PLY.material) =>
      jobOf(inShop({ shop }), { ...PLY, material })
    expect(manner({ sheetStages: 'two', sheetTrimMm: 7, kerfMm: 2.5 })).toMatchObject({
      stages: 2,
      trimMm: 7,
      kerfMm: 2.5,
    })
    expect(manner({ sheetStages: 'any' })).toMatchObject({ stages: 'any' })
    expect(manner({})).not.toHaveProperty('carry')
    const carry = manner({ cutToCarry: true, carryLengthMm: 1300, carryWidthMm: 900 })?.carry
    expect(carry).toEqual({ lengthMm: 1300, widthMm: 900 })
    // Foam is sawn but not trimmed; metal is cut with shears.
    expect(manner({}, 'xps')).toMatchObject({ trimMm: 0, kerfMm: 3.2 })
    expect(manner({}, 'aluminium-sheet')).toMatchObject({ trimMm: 0, kerfMm: 0 })
  })

  it('leaves loose fill, batts and bought wax to the shopping list', () => {
    const rows = ['straw', 'sheep-wool', 'beeswax-foundation'].map((material) =>
      cutRow({ material }),
    )
    const { sheets, problems } = buildCuttingJobs(inShop({}), rows)
    expect([sheets, problems]).toEqual([[], []])
  })
})

describe('rows that no sheet takes', () => {
  it('may only need less cut off the edges', () => {
    const row = { ...PLY, lengthMm: 2436, widthMm: 1245 }
    const design = inShop({})
    const { problems, sheets } = sheetsOf(design, row)
    expect(sheets).toEqual([])
    const [first] = problems[0]?.remedies ?? []
    // The sheet of 2500 x 1250 is 5 mm wider than the part.
    expect(first?.changes).toEqual([{ field: 'shop.sheetTrimMm', value: 2.5 }])
    expect(sheetsOf(applyChanges(design, first?.changes ?? []), row).problems).toEqual([])
  })

  it('are told, and the others of the material planned', () => {
    const { problems, sheets } = sheetsOf(
      inShop({}),
      { ...PLY, lengthMm: 2600 },
      { ...PLY, label: 'B' },
      { ...PLY, label: 'C', lengthMm: 1300, widthMm: 1300 },
    )
    expect(problems.flatMap(({ labels }) => labels)).toEqual(['A', 'C'])
    expect(problems[0]?.message).toMatch(/No sheet of .* is large enough/)
    expect(sheets[0]?.labels).toEqual(['B'])
  })

  it('offer a shorter hive when they are too long by a few frames', () => {
    const row = { ...PLY, lengthMm: 2600 }
    const { problems } = sheetsOf(inShop({}), row)
    // 2600 + 2 x 5 - 2500 = 110 mm: four frames of 35 mm, of twenty.
    const changes = problems[0]?.remedies.flatMap((remedy) => remedy.changes ?? [])
    expect(changes).toEqual([{ field: 'cavity.frames', value: 16 }])
  })
})
