import type { SheetRect } from '../../../src/solvers/cutting/sheets/sheetJob.ts'

/** Lengths that differ by less are alike, mm: far below what any saw does. */
export const EVEN_MM = 1e-6

/** True for rectangles of one size at one place. */
export const isAlike = (a: SheetRect, b: SheetRect): boolean =>
  Math.abs(a.xMm - b.xMm) <= EVEN_MM &&
  Math.abs(a.yMm - b.yMm) <= EVEN_MM &&
  Math.abs(a.lengthMm - b.lengthMm) <= EVEN_MM &&
  Math.abs(a.widthMm - b.widthMm) <= EVEN_MM

/** Where a rectangle begins and ends, along the sheet's length or its width. */
export const extentOf = (
  rect: SheetRect,
  axis: 'length' | 'width',
): { readonly from: number; readonly to: number } =>
  axis === 'length'
    ? { from: rect.xMm, to: rect.xMm + rect.lengthMm }
    : { from: rect.yMm, to: rect.yMm + rect.widthMm }

/** `2440 by 1220 at 0, 0` */
export const describeRect = ({ xMm, yMm, lengthMm, widthMm }: SheetRect): string =>
  `${lengthMm} by ${widthMm} at ${xMm}, ${yMm}`
