import type { DrawingItem, TextItem } from '../../src/sheets/drawing.ts'
import type { PaperBox } from '../../src/sheets/pages/paper.ts'
import { TYPE } from './sheetFixture.ts'

/** Where the ink of a text is, at most: from the tops of capitals to below the line, mm. */
export const textBounds = (item: TextItem): PaperBox => {
  const width = TYPE.measure(item.text, item)
  const before = item.anchor === 'start' ? 0 : item.anchor === 'middle' ? width / 2 : width
  const [rise, fall] = [0.74 * item.sizeMm, 0.24 * item.sizeMm]
  const { x, y } = item.at
  return item.angleDeg === 90
    ? { x0: x - rise, x1: x + fall, y0: y - (width - before), y1: y + before }
    : { x0: x - before, x1: x - before + width, y0: y - rise, y1: y + fall }
}

export const itemBounds = (item: DrawingItem): PaperBox => {
  switch (item.kind) {
    case 'text':
      return textBounds(item)
    case 'image':
      return {
        x0: item.at.x,
        x1: item.at.x + item.widthMm,
        y0: item.at.y,
        y1: item.at.y + item.heightMm,
      }
    case 'line':
    case 'polyline':
    case 'polygon':
    case 'colour': {
      const points =
        item.kind === 'line'
          ? [item.from, item.to]
          : item.kind === 'colour'
            ? item.loops.flat()
            : item.points
      const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)]
      return {
        x0: Math.min(...xs),
        x1: Math.max(...xs),
        y0: Math.min(...ys),
        y1: Math.max(...ys),
      }
    }
  }
}

export const isInside = (a: PaperBox, b: PaperBox, slack = 0.01): boolean =>
  a.x0 >= b.x0 - slack && a.x1 <= b.x1 + slack && a.y0 >= b.y0 - slack && a.y1 <= b.y1 + slack

/** Whether two boxes share more than `slack` mm in both directions. */
export const boxesOverlap = (a: PaperBox, b: PaperBox, slack = 0.1): boolean =>
  a.x0 < b.x1 - slack && b.x0 < a.x1 - slack && a.y0 < b.y1 - slack && b.y0 < a.y1 - slack
