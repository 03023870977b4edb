import type { SheetRect } from '../../../solvers/cutting/sheets/sheetJob.ts'

/** Narrower than half the least length to keep, a strip is no use for the next job. */
const LEAST_SHAPE = 0.5

/** Whether what is left of a sheet is worth keeping. */
export const isKept = (rect: SheetRect, keepMm: number): boolean => {
  const { lengthMm, widthMm } = rect
  return (
    Math.max(lengthMm, widthMm) >= keepMm && Math.min(lengthMm, widthMm) >= keepMm * LEAST_SHAPE
  )
}
