import { describe, expect, it } from 'vitest'
import { csvText } from '../../src/sheets/csvText.ts'
import { shopTables } from '../../src/sheets/shopCsv.ts'
import { INCH, METRIC } from '../../src/units/preferences.ts'
import { planned } from './sheetFixture.ts'

/** A reader of RFC 4180 that knows nothing of the writer. */
const readCsv = (text: string): readonly (readonly string[])[] => {
  const rows: string[][] = [[]]
  let cell = ''
  let isQuoted = false
  for (let i = 0; i < text.length; i += 1) {
    const c = text[i] ?? ''
    if (isQuoted) {
      if (c === '"' && text[i + 1] === '"') {
        cell += '"'
        i += 1
      } else if (c === '"') isQuoted = false
      else cell += c
    } else if (c === '"') isQuoted = true
    else if (c === ',' || c === '\r') {
      rows.at(-1)?.push(cell)
      cell = ''
    } else if (c === '\n') rows.push([])
    else cell += c
  }
  return rows.slice(0, -1)
}

const { report } = planned()

describe('shopTables', () => {
  const tables = shopTables(report.shop, METRIC.length)
  const table = (name: string) => readCsv(tables.find((t) => t.name === name)?.csv ?? '')

  it('has every list of the workshop, none of them empty, each row as wide as its head', () => {
    expect(tables.map((t) => t.name)).toEqual([
      'shopping list',
      'boards',
      'sheets',
      'set-ups',
      'fasteners',
      'hardware',
      'assembly',
      'labels',
    ])
    for (const { name, csv } of tables) {
      const [head = [], ...rows] = readCsv(csv)
      expect({ name, rows: rows.length }).not.toEqual({ name, rows: 0 })
      expect({ name, widths: new Set(rows.map((r) => r.length)) }).toEqual({
        name,
        widths: new Set([head.length]),
      })
    }
  })

  it('lists as many pieces of sheets as the plan has', () => {
    const [head = [], ...rows] = table('sheets')
    const alike = head.indexOf('Sheets cut alike')
    const pieces = rows.reduce((sum, row) => sum + Number(row[alike]), 0)
    const wanted = report.shop.cutting.sheets.flatMap((g) => g.job.parts.map((p) => p.count))
    expect(pieces).toBe(wanted.reduce((sum, n) => sum + n, 0))
  })

  it('sums up to the price of the shopping list', () => {
    const [head = [], ...rows] = table('shopping list')
    const total = rows.reduce((sum, row) => sum + Number(row[head.indexOf('Price')]), 0)
    expect(total).toBeCloseTo(report.shop.shopping.total, 2)
  })

  it('gives lengths in decimal inches, which spreadsheets do not take for dates', () => {
    const boards = shopTables(report.shop, INCH.length).find((t) => t.name === 'boards')?.csv ?? ''
    const [head = [], first = []] = readCsv(boards)
    const [metricHead = [], metricFirst = []] = table('boards')
    const mm = Number(metricFirst[metricHead.indexOf('Piece length (mm)')])
    expect(Number(first[head.indexOf('Piece length (in)')])).toBeCloseTo(mm / 25.4, 2)
  })
})

describe('csvText', () => {
  it('keeps text that would be a formula, a comma and a quote from doing harm', () => {
    const csv = csvText(
      ['a', 'b'],
      [
        ['=1+1', 'say "hi", twice'],
        [{ number: '-3' }, ' x'],
      ],
    )
    expect(csv).toBe('a,b\r\n\'=1+1,"say ""hi"", twice"\r\n-3," x"\r\n')
  })
})
