import type { SheetGroup } from '../../reports/shop/cutting/cuttingPlan.ts'
import type { SheetLayout, SheetRect } from '../../solvers/cutting/sheets/sheetJob.ts'
import { formatLength, type LengthUnit } from '../../units/length.ts'
import { type DrawingItem, LABEL_SIZE_MM, type PaperPoint, textItem } from '../drawing.ts'
import type { Typesetter } from '../type/typesetter.ts'
import { rectangle } from './rectangle.ts'

export interface SheetLook {
  readonly at: PaperPoint
  /** Paper mm for a mm of sheet. */
  readonly scale: number
  readonly unit: LengthUnit
  readonly type: Typesetter
}

/**
 * One sheet to scale, its length across the paper and its corner at the top left: pieces with letter
 * and size, and what is left over hatched. Nothing is written where it would not fit.
 */
export const sheetPlanItems = (
  group: SheetGroup,
  layout: SheetLayout,
  look: SheetLook,
): readonly DrawingItem[] => {
  const stock = group.job.stocks[layout.stock]
  if (stock === undefined) return []
  const whole = { xMm: 0, yMm: 0, lengthMm: stock.lengthMm, widthMm: stock.widthMm }
  return [
    rectItem(whole, look, 'outline'),
    ...layout.offcuts.map((rect) => rectItem(rect, look, 'rest')),
    ...layout.pieces.flatMap((piece) => [
      rectItem(piece, look, 'piece'),
      ...pieceWords(group.labels[piece.part] ?? '', piece, look),
    ]),
  ]
}

const rectItem = (
  rect: SheetRect,
  { at, scale }: SheetLook,
  role: 'outline' | 'piece' | 'rest',
): DrawingItem => {
  const corner = { x: at.x + rect.xMm * scale, y: at.y + rect.yMm * scale }
  const size = { widthMm: rect.lengthMm * scale, heightMm: rect.widthMm * scale }
  return rectangle(corner, size, {
    stroke: { weight: role === 'outline' ? 'medium' : 'thin', dash: 'solid' },
    tint: role === 'piece' ? 'paper' : 'light',
    hatch: role === 'rest' ? 'wood' : 'none',
  })
}

/** The letter, and under it the size if both fit; upright where the piece is tall and narrow. */
const pieceWords = (
  label: string,
  rect: SheetRect,
  { at, scale, unit, type }: SheetLook,
): readonly DrawingItem[] => {
  const [across, down] = [rect.lengthMm * scale, rect.widthMm * scale]
  const isUpright = down > across && across < 18
  const [room, height] = isUpright ? [down, across] : [across, down]
  const middle = { x: at.x + rect.xMm * scale + across / 2, y: at.y + rect.yMm * scale + down / 2 }
  const size = `${formatLength(rect.lengthMm, unit)} × ${formatLength(rect.widthMm, unit)}`
  const letterMm = 4.6
  const fits = (text: string, sizeMm: number, weight: 'regular' | 'semibold') =>
    type.measure(text, { sizeMm, weight }) <= room - 1
  const withSize = height >= letterMm + LABEL_SIZE_MM + 2.4 && fits(size, LABEL_SIZE_MM, 'regular')
  if (height < letterMm + 0.4 || !fits(label, letterMm, 'semibold')) return []
  const angleDeg = isUpright ? 90 : 0
  const put = (text: string, below: number, sizeMm: number, weight: 'regular' | 'semibold') =>
    textItem(
      isUpright ? { x: middle.x + below, y: middle.y } : { x: middle.x, y: middle.y + below },
      text,
      { anchor: 'middle', sizeMm, weight, angleDeg },
    )
  return withSize
    ? [
        put(label, -0.4, letterMm, 'semibold'),
        put(size, LABEL_SIZE_MM + 0.6, LABEL_SIZE_MM, 'regular'),
      ]
    : [put(label, letterMm * 0.35, letterMm, 'semibold')]
}
