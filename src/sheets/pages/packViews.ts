import type { DrawingItem } from '../drawing.ts'
import type { Size } from '../fitScale.ts'
import { placeDrawing, type ViewDrawing } from '../view.ts'
import type { PaperBox } from './paper.ts'

/** Gap between drawings on one page, mm. */
export const VIEW_GAP = 6

/** Whether drawings stand side by side in the width of an area. */
export const rowSize = (views: readonly Size[]): Size => ({
  widthMm: views.reduce((sum, v) => sum + v.widthMm, 0) + VIEW_GAP * Math.max(0, views.length - 1),
  heightMm: Math.max(0, ...views.map((v) => v.heightMm)),
})

/** Drawings side by side, in line by the model's zero height, the row centred across the area. */
export const placeRow = (views: readonly ViewDrawing[], area: PaperBox): readonly DrawingItem[] => {
  const slack = area.x1 - area.x0 - rowSize(views).widthMm
  const deepest = Math.max(0, ...views.map((v) => v.view.origin.y))
  let x = area.x0 + Math.max(0, slack / 2)
  return views.flatMap((view) => {
    const at = { x, y: area.y0 + deepest - view.view.origin.y }
    x += view.widthMm + VIEW_GAP
    return placeDrawing(view, at)
  })
}

/** `1:10`, or `1:10 and 1:20` where a page has more than one. */
export const scaleWords = (views: readonly ViewDrawing[]): string =>
  [...new Set(views.map((v) => v.scaleDenominator))]
    .sort((a, b) => a - b)
    .map((n) => `1:${n}`)
    .join(' and ')
