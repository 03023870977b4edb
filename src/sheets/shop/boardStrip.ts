import type { LumberGroup } from '../../reports/shop/cutting/cuttingPlan.ts'
import type { BarPattern } from '../../solvers/cutting/lumber/lumberJob.ts'
import { formatLength, type LengthUnit } from '../../units/length.ts'
import { type DrawingItem, LABEL_SIZE_MM, solidLine, textItem } from '../drawing.ts'
import type { PaperBox } from '../pages/paper.ts'
import type { Strip } from '../pages/strip.ts'
import type { Typesetter } from '../type/typesetter.ts'
import { rectangle } from './rectangle.ts'

const BAR_HEIGHT = 9
/** Left of the board: how many are cut alike, and how long it is. */
const COUNT_WIDTH = 30
const HEIGHT = BAR_HEIGHT + LABEL_SIZE_MM + 3.6

export interface BoardLook {
  readonly area: PaperBox
  /** The length that fills the page's width, mm of board; equal for all boards of a group. */
  readonly longestMm: number
  readonly unit: LengthUnit
  readonly type: Typesetter
}

/**
 * One board with its pieces in their order, to scale along its length: each with its letter, and its
 * length under it where there is room. Trimmed ends and what is left over are hatched.
 */
export const boardStrip = (group: LumberGroup, pattern: BarPattern, look: BoardLook): Strip => ({
  heightMm: HEIGHT,
  draw: (y) => {
    const stock = group.job.stocks[pattern.stock]
    const lengthMm = stock?.lengthMm ?? look.longestMm
    const x0 = look.area.x0 + COUNT_WIDTH
    const scale = (look.area.x1 - x0) / look.longestMm
    const trim = group.job.trimMm / 2
    const last = pattern.pieces.at(-1)
    const used = last === undefined ? trim : last.fromMm + last.lengthMm
    const place = (mm: number): number => x0 + mm * scale
    const piece = boxes(y)
    return [
      ...countWords(pattern.count, lengthMm, { y, look }),
      ...(trim > 0 ? [piece(place(0), place(trim), 'wood')] : []),
      ...pattern.pieces.flatMap((cut) => {
        const [from, to] = [place(cut.fromMm), place(cut.fromMm + cut.lengthMm)]
        const blank = group.blanks[cut.part]
        return [
          piece(from, to, 'none'),
          ...fitted(blank?.label ?? '', [from, to], {
            y: y + BAR_HEIGHT * 0.5 + 1.5,
            size: 4.2,
            look,
          }),
          ...fitted(formatLength(cut.lengthMm, look.unit), [from, to], {
            y: y + BAR_HEIGHT + LABEL_SIZE_MM,
            size: LABEL_SIZE_MM,
            look,
          }),
        ]
      }),
      ...restItems(pattern, [used + group.job.kerfMm, lengthMm], { y, place, look }),
      solidLine('medium', { x: place(0), y }, { x: place(lengthMm), y }),
      solidLine(
        'medium',
        { x: place(0), y: y + BAR_HEIGHT },
        { x: place(lengthMm), y: y + BAR_HEIGHT },
      ),
    ]
  },
})

const countWords = (
  count: number,
  lengthMm: number,
  { y, look }: { readonly y: number; readonly look: BoardLook },
): readonly DrawingItem[] => [
  textItem({ x: look.area.x0, y: y + BAR_HEIGHT * 0.5 + 1.6 }, `${count} ×`, {
    sizeMm: 5,
    weight: 'semibold',
  }),
  textItem(
    { x: look.area.x0, y: y + BAR_HEIGHT + LABEL_SIZE_MM },
    formatLength(lengthMm, look.unit, { withUnit: true }),
  ),
]

const boxes =
  (y: number) =>
  (from: number, to: number, hatch: 'none' | 'wood'): DrawingItem =>
    rectangle(
      { x: from, y },
      { widthMm: to - from, heightMm: BAR_HEIGHT },
      {
        stroke: { weight: 'thin', dash: 'solid' },
        tint: hatch === 'none' ? 'paper' : 'light',
        hatch,
      },
    )

/** Words in the middle of a stretch, left out where they would not fit. */
const fitted = (
  text: string,
  [from, to]: readonly [number, number],
  { y, size, look }: { readonly y: number; readonly size: number; readonly look: BoardLook },
): readonly DrawingItem[] => {
  const weight = size > LABEL_SIZE_MM ? 'semibold' : 'regular'
  if (look.type.measure(text, { sizeMm: size, weight }) > to - from - 0.6) return []
  return [textItem({ x: (from + to) / 2, y }, text, { sizeMm: size, anchor: 'middle', weight })]
}

/** What is left at the end: hatched, with its length when it is worth keeping. */
const restItems = (
  pattern: BarPattern,
  [from, to]: readonly [number, number],
  {
    y,
    place,
    look,
  }: { readonly y: number; readonly place: (mm: number) => number; readonly look: BoardLook },
): readonly DrawingItem[] => {
  if (to <= from) return []
  const span = [place(from), place(to)] as const
  return [
    boxes(y)(span[0], span[1], 'wood'),
    ...(pattern.offcutMm > 0
      ? fitted(`left ${formatLength(pattern.offcutMm, look.unit)}`, span, {
          y: y + BAR_HEIGHT + LABEL_SIZE_MM,
          size: LABEL_SIZE_MM,
          look,
        })
      : []),
  ]
}
