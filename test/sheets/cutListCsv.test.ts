import { describe, expect, it } from 'vitest'
import type { CutListRow } from '../../src/reports/shop/computeShop.ts'
import { cutListCsv } from '../../src/sheets/cutListCsv.ts'
import { INCH, METRIC } from '../../src/units/preferences.ts'

const ROW: CutListRow = {
  label: 'A',
  name: 'Long wall lining',
  material: 'plywood-softwood',
  materialName: 'Softwood plywood',
  lengthMm: 419.1,
  widthMm: 50.8,
  thicknessMm: 9.525,
  count: 2,
  grain: 'length',
  hand: 'none',
  massKgEach: 0.45359237,
  operations: [
    { kind: 'slot', width: 180, height: 8 },
    { kind: 'holes', diameter: 8, count: 2 },
  ],
  groups: ['front-wall'],
  partIds: ['x'],
  bought: false,
  stock: undefined,
}

const rowsOf = (csv: string) => csv.split('\r\n')
const csvOf = (change: Partial<CutListRow>, units = METRIC) =>
  cutListCsv({ cutList: [{ ...ROW, ...change }] }, units)

describe('cutListCsv', () => {
  it('names the units in the header and ends each line with CRLF', () => {
    const [header, row, end] = rowsOf(csvOf({}))
    expect(header).toContain('Length (mm),Width (mm),Thickness (mm)')
    expect(header).toContain('Mass each (kg)')
    expect(row).toBe(
      'A,2,Long wall lining,419.1,50.8,9.5,length,none,Softwood plywood,0.454,slot 180 × 8; 2 holes Ø 8,,no',
    )
    expect(end).toBe('')
  })

  it('writes inches as decimals, which no spreadsheet takes for a date', () => {
    const [header, row] = rowsOf(csvOf({ operations: [] }, INCH))
    expect(header).toContain('Length (in)')
    expect(row).toBe('A,2,Long wall lining,16.5,2,0.375,length,none,Softwood plywood,1.000,,,no')
  })

  it('quotes commas, quotes and line ends', () => {
    expect(csvOf({ name: 'Rail, "long"\nlow' })).toContain('"Rail, ""long""\nlow"')
  })

  it('disarms text that a spreadsheet would run', () => {
    for (const name of ['=1+1', '+1', '-1', '@SUM(A1)', ' =1', '\t=1', '\r=1']) {
      const cell = csvOf({ name }).split('\r\nA,2,')[1] ?? ''
      expect(cell.replace(/^"/, '').startsWith("'")).toBe(true)
    }
  })

  it('gives the header alone for no parts', () => {
    expect(rowsOf(cutListCsv({ cutList: [] }, METRIC))).toHaveLength(2)
  })
})
