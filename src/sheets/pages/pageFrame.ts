import { type DrawingItem, LABEL_SIZE_MM, type LineItem, solidLine, textItem } from '../drawing.ts'
import { LINE_SPACING } from '../type/typesetter.ts'
import type { PaperBox } from './paper.ts'
import { projectionSymbol } from './projectionSymbol.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

const SIZES = [5, 4.4, LABEL_SIZE_MM, 3.2, 2.8, 2.4, 2, 1.6]
const PAD = 1.8

/** Frame and title block of one page, after ISO 5457 and ISO 7200. `number` counts from 1. */
export const pageFrame = (
  page: SheetPage,
  content: SheetContent,
  place: { readonly number: number; readonly count: number },
): readonly DrawingItem[] => {
  const { paper, design, units } = content
  const block = paper.titleBlock
  const [firstRow, secondRow] = [block.y0 + 10.5, block.y0 + 18]
  const sheetX = block.x1 - 34
  const middleX = block.x0 + (block.x1 - block.x0) * 0.5
  const cell = (x0: number, x1: number, y0: number, y1: number): PaperBox => ({ x0, x1, y0, y1 })
  const unit = units.length === 'mm' ? 'mm' : 'inches'
  const third = [block.x0, block.x0 + 42, block.x0 + 78, block.x1 - 28] as const
  return [
    ...boxLines(paper.frame, 'thick'),
    ...boxLines(block, 'thick'),
    line(block.x0, firstRow, block.x1, firstRow),
    line(block.x0, secondRow, block.x1, secondRow),
    line(sheetX, block.y0, sheetX, firstRow),
    line(middleX, firstRow, middleX, secondRow),
    ...third.slice(1).map((x) => line(x, secondRow, x, block.y1)),
    ...cellText(content, cell(block.x0, sheetX, block.y0, firstRow), {
      text: design.title.name,
      weight: 'semibold',
      sizes: SIZES,
    }),
    ...cellText(content, cell(sheetX, block.x1, block.y0, firstRow), {
      text: `Sheet ${place.number} of ${place.count}`,
      weight: 'semibold',
      sizes: SIZES.slice(1),
    }),
    ...cellText(content, cell(block.x0, middleX, firstRow, secondRow), { text: page.title }),
    ...cellText(content, cell(middleX, block.x1, firstRow, secondRow), {
      text: design.title.owner,
    }),
    ...cellText(content, cell(third[0], third[1], secondRow, block.y1), {
      text: page.scale === '' ? 'No scale' : `Scale ${page.scale}`,
    }),
    ...cellText(content, cell(third[1], third[2], secondRow, block.y1), {
      text: `Lengths in ${unit}`,
    }),
    ...cellText(content, cell(third[2], third[3], secondRow, block.y1), { text: content.date }),
    ...projectionSymbol(
      { x: (third[3] + block.x1) / 2, y: (secondRow + block.y1) / 2 },
      paper.projection,
    ),
  ]
}

const line = (x0: number, y0: number, x1: number, y1: number): LineItem =>
  solidLine('thin', { x: x0, y: y0 }, { x: x1, y: y1 })

const boxLines = (b: PaperBox, weight: 'thick'): readonly LineItem[] => {
  const corners = [
    { x: b.x0, y: b.y0 },
    { x: b.x1, y: b.y0 },
    { x: b.x1, y: b.y1 },
    { x: b.x0, y: b.y1 },
  ] as const
  return corners.map((from, i) => solidLine(weight, from, corners[(i + 1) % 4] ?? from))
}

interface CellText {
  readonly text: string
  readonly weight?: 'regular' | 'semibold'
  readonly sizes?: readonly number[]
}

/** Text in a cell, as large as fits, set on the middle of the cell's height. */
const cellText = (
  { type }: SheetContent,
  cell: PaperBox,
  { text, weight = 'regular', sizes = SIZES.slice(2) }: CellText,
): readonly DrawingItem[] => {
  // A name is one line however it was typed.
  const flat = type.clean(text).text.replace(/\s+/g, ' ').trim()
  const fitted = type.fit(flat, weight, {
    widthMm: cell.x1 - cell.x0 - 2 * PAD,
    heightMm: cell.y1 - cell.y0 - 1,
    sizesMm: sizes,
  })
  const step = fitted.sizeMm * LINE_SPACING
  const middle = (cell.y0 + cell.y1) / 2
  // Capitals are about 0.7 of the type size, so this puts their middle on the cell's middle.
  const first = middle - ((fitted.lines.length - 1) * step) / 2 + fitted.sizeMm * 0.35
  return fitted.lines.map((l, i) =>
    textItem({ x: cell.x0 + PAD, y: first + i * step }, l, { sizeMm: fitted.sizeMm, weight }),
  )
}
