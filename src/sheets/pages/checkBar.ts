import { type DrawingItem, solidLine, textItem } from '../drawing.ts'
import type { Paper } from './paper.ts'

/** The bar to hold a rule against, in the foot of a sheet that is drawn to scale. */
export const checkBar = ({ foot, checkBar: bar }: Paper): readonly DrawingItem[] => {
  const x0 = foot.x0 + 1
  const y = foot.y1 - 7
  const step = bar.lengthMm / bar.parts
  const end = x0 + bar.lengthMm
  return [
    textItem({ x: x0, y: foot.y0 + 5 }, 'Print at 100 %, not “fit to page”. Then this bar'),
    textItem({ x: x0, y: foot.y0 + 10 }, `measures ${bar.words} from end to end:`),
    solidLine('medium', { x: x0, y }, { x: end, y }, 'check-bar'),
    ...Array.from({ length: bar.parts + 1 }, (_, i) => {
      const isEnd = i === 0 || i === bar.parts
      const x = x0 + i * step
      return solidLine('medium', { x, y: y - (isEnd ? 3 : 1.5) }, { x, y: y + (isEnd ? 3 : 0) })
    }),
  ]
}
