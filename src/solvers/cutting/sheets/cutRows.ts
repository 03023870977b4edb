import type { CutNode, SheetRect } from './sheetJob.ts'

/** Two cuts nearer than this are one: far below any saw, far above the noise of sums. */
export const SAME_MM = 1e-6

/** A piece of a row: how much of it, and what becomes of its rectangle. */
export interface RowPiece {
  readonly thickMm: number
  readonly cut: (rect: SheetRect) => CutNode
}

export interface RowDirection {
  /** The pieces follow each other along the sheet's length. */
  readonly alongLength: boolean
  readonly kerfMm: number
  readonly isCarry: boolean
}

/**
 * Cuts a row's pieces off a rectangle one by one; what is behind the last is an offcut. No cut where a
 * piece ends flush; where less than a kerf is left, the cut eats it and the offcut has no size.
 */
export function cutRow(
  rect: SheetRect,
  direction: RowDirection,
  pieces: readonly RowPiece[],
): CutNode {
  const [piece, ...others] = pieces
  if (!piece) return { kind: 'offcut', rect }
  const [own, behind] = splitRect(rect, direction, piece.thickMm)
  if (!behind) return piece.cut(own)
  const { alongLength, isCarry } = direction
  return {
    kind: 'cut',
    rect,
    along: alongLength ? 'width' : 'length',
    atMm: alongLength ? own.xMm + own.lengthMm : own.yMm + own.widthMm,
    isCarry,
    first: piece.cut(own),
    second: cutRow(behind, direction, others),
  }
}

/** A rectangle's extent along the sheet's length or its width. */
export function measureExtentMm(rect: SheetRect, alongLength: boolean): number {
  return alongLength ? rect.lengthMm : rect.widthMm
}

function splitRect(
  rect: SheetRect,
  { alongLength, kerfMm }: RowDirection,
  thickMm: number,
): readonly [SheetRect, SheetRect | undefined] {
  const totalMm = measureExtentMm(rect, alongLength)
  if (totalMm - thickMm < SAME_MM) return [rect, undefined]
  const startMm = Math.min(thickMm + kerfMm, totalMm)
  const restMm = totalMm - startMm
  // A sliver of rounding noise is nothing.
  const [fromMm, leftMm] = restMm < SAME_MM ? [totalMm, 0] : [startMm, restMm]
  return alongLength
    ? [
        { ...rect, lengthMm: thickMm },
        { ...rect, xMm: rect.xMm + fromMm, lengthMm: leftMm },
      ]
    : [
        { ...rect, widthMm: thickMm },
        { ...rect, yMm: rect.yMm + fromMm, widthMm: leftMm },
      ]
}
