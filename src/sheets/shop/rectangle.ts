import type { PaperPoint, PolygonItem } from '../drawing.ts'

type Look = Pick<PolygonItem, 'stroke' | 'tint' | 'hatch'>

/** A rectangle square to the paper, from its top left corner. */
export const rectangle = (
  { x, y }: PaperPoint,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
  look: Look,
): PolygonItem => ({
  kind: 'polygon',
  points: [
    { x, y },
    { x: x + widthMm, y },
    { x: x + widthMm, y: y + heightMm },
    { x, y: y + heightMm },
  ],
  ...look,
})
