import {
  type DrawingItem,
  LABEL_SIZE_MM,
  type PaperPoint,
  solidLine,
  textItem,
} from '../drawing.ts'
import { LINE_SPACING, type Typesetter } from '../type/typesetter.ts'
import type { TableBlock, TableColumn } from './blocks.ts'
import type { PaperBox } from './paper.ts'
import type { Strip } from './strip.ts'

const LINE = LABEL_SIZE_MM * LINE_SPACING
const PAD_X = 1.5
const PAD_Y = 1.1

interface PlacedColumn extends TableColumn {
  readonly x0: number
  readonly x1: number
}

/** A table as strips: the head, and one for each row with its text broken into the columns. */
export const layTable = (
  table: TableBlock,
  area: PaperBox,
  type: Typesetter,
): { readonly head: Strip; readonly rows: readonly Strip[] } => {
  const columns = placeColumns(table.columns, area)
  const head = rowStrip(
    columns.map((c) => ({ ...c, weight: 'semibold' as const })),
    columns.map((c) => c.title),
    type,
  )
  return {
    head: { ...head, draw: (y) => [...head.draw(y), rule(area, y + head.heightMm, 'medium')] },
    rows: table.rows.map((cells) => {
      const row = rowStrip(columns, cells, type)
      return { ...row, draw: (y) => [...row.draw(y), rule(area, y + row.heightMm, 'thin')] }
    }),
  }
}

const rule = (area: PaperBox, y: number, weight: 'medium' | 'thin'): DrawingItem =>
  solidLine(weight, { x: area.x0, y }, { x: area.x1, y })

const placeColumns = (columns: readonly TableColumn[], area: PaperBox): readonly PlacedColumn[] => {
  const total = columns.reduce((sum, c) => sum + c.share, 0)
  let x0 = area.x0
  return columns.map((c) => {
    const from = x0
    x0 += ((area.x1 - area.x0) * c.share) / total
    return { ...c, x0: from, x1: x0 }
  })
}

const rowStrip = (
  columns: readonly PlacedColumn[],
  cells: readonly string[],
  type: Typesetter,
): Strip => {
  const broken = columns.map((c, i) => {
    const style = { sizeMm: LABEL_SIZE_MM, weight: c.weight ?? 'regular' } as const
    return type.wrap(type.clean(cells[i] ?? '').text, style, c.x1 - c.x0 - 2 * PAD_X)
  })
  const most = Math.max(1, ...broken.map((lines) => lines.length))
  return {
    heightMm: most * LINE + 2 * PAD_Y,
    draw: (y) =>
      columns.flatMap((c, i) =>
        (broken[i] ?? []).map((line, k) =>
          textItem(cellPoint(c, y + PAD_Y + LABEL_SIZE_MM + k * LINE), line, {
            anchor: c.anchor ?? 'start',
            weight: c.weight ?? 'regular',
          }),
        ),
      ),
  }
}

const cellPoint = (c: PlacedColumn, y: number): PaperPoint => ({
  x: c.anchor === 'end' ? c.x1 - PAD_X : c.anchor === 'middle' ? (c.x0 + c.x1) / 2 : c.x0 + PAD_X,
  y,
})
