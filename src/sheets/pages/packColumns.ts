import type { DrawingItem, PaperPoint } from '../drawing.ts'
import type { PaperBox } from './paper.ts'

/** Something with a height of its own that is set in a column. */
export interface ColumnCell {
  readonly heightMm: number
  readonly draw: (at: PaperPoint, heightMm: number) => readonly DrawingItem[]
}

export interface ColumnPlan {
  /** What is free on the first page. */
  readonly first: PaperBox
  readonly others: PaperBox
  readonly across: number
  readonly gutter: number
}

/**
 * Sets cells down one column after the other, page after page, in their order. A cell taller than the
 * first page's room waits for the next page; one taller than any page overhangs its foot.
 */
export const packColumns = (
  cells: readonly ColumnCell[],
  { first, others, across, gutter }: ColumnPlan,
): readonly (readonly DrawingItem[])[] => {
  const pages: DrawingItem[][] = [[]]
  let box = first
  let column = 0
  let y = box.y0
  for (const cell of cells) {
    while (y + cell.heightMm > box.y1 + 1e-6 && (y > box.y0 || box === first)) {
      column += 1
      if (column === across) {
        pages.push([])
        column = 0
        box = others
      }
      y = box.y0
      if (box !== first && y + cell.heightMm > box.y1) break
    }
    const width = (box.x1 - box.x0 - gutter * (across - 1)) / across
    pages.at(-1)?.push(...cell.draw({ x: box.x0 + column * (width + gutter), y }, cell.heightMm))
    y += cell.heightMm + gutter
  }
  return pages
}
