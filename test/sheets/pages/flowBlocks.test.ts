import { describe, expect, it } from 'vitest'
import type { DrawingItem } from '../../../src/sheets/drawing.ts'
import { type Block, heading, paragraph } from '../../../src/sheets/pages/blocks.ts'
import { flowBlocks } from '../../../src/sheets/pages/flowBlocks.ts'
import { isInside, itemBounds } from '../itemBounds.ts'
import { TYPE } from '../sheetFixture.ts'

const AREA = { x0: 0, x1: 120, y0: 0, y1: 100 }

const texts = (items: readonly DrawingItem[]) =>
  items.flatMap((i) => (i.kind === 'text' ? [i.text] : []))

const table = (rows: readonly (readonly string[])[]): Block => ({
  kind: 'table',
  columns: [
    { title: 'Head', share: 1 },
    { title: 'Words', share: 2 },
  ],
  rows,
})

const flow = (...blocks: readonly Block[]) => flowBlocks(blocks, AREA, TYPE)

describe('flowBlocks', () => {
  it('repeats the head of a table on each page that it runs over', () => {
    const rows = Array.from({ length: 40 }, (_, i) => [`r${i}`, 'x'])
    const pages = flow(table(rows))
    expect(pages.length).toBeGreaterThan(2)
    for (const page of pages) expect(texts(page).slice(0, 2)).toEqual(['Head', 'Words'])
    const all = pages.flatMap(texts).filter((t) => /^r\d/.test(t))
    expect(all).toEqual(rows.map((r) => r[0]))
  })

  it('never parts a row, and stays in its area', () => {
    const long = Array.from({ length: 30 }, (_, i) => `${i} word`).join(' ')
    const pages = flow(table(Array.from({ length: 12 }, (_, i) => [`r${i}`, long])))
    for (const page of pages) {
      for (const item of page) expect(isInside(itemBounds(item), AREA)).toBe(true)
      const rows = texts(page).filter((t) => /^r\d/.test(t)).length
      // Each row's words begin with "0 word" and end with "29 word".
      const joined = texts(page).join(' ')
      expect(joined.match(/29 word/g)).toHaveLength(rows)
      expect(joined.match(/(?<!\d)0 word/g)).toHaveLength(rows)
    }
  })

  it('keeps a heading with what follows, and a short table whole', () => {
    const filler = Array.from({ length: 16 }, (_, i) => paragraph(`line ${i}`))
    const short = table(Array.from({ length: 5 }, (_, i) => [`r${i}`, 'x']))
    const pages = flow(...filler, heading('Title'), short)
    const last = pages.at(-1) ?? []
    expect(texts(last)).toEqual(expect.arrayContaining(['Title', 'Head', 'r0', 'r4']))
    expect(pages.slice(0, -1).flatMap(texts)).not.toContain('Title')
  })

  it('breaks a word that no column could hold', () => {
    const pages = flow(table([['x'.repeat(200), 'y']]))
    const xs = pages.flatMap(texts).filter((t) => /^x+$/.test(t))
    expect(xs.length).toBeGreaterThan(5)
    expect(xs.join('')).toBe('x'.repeat(200))
  })
})
