/** Reductions of ISO 5455 that a workshop scale rule has; the last only for hives over ten metres. */
export const SCALE_DENOMINATORS = [1, 2, 5, 10, 20, 50, 100] as const

export interface Size {
  readonly widthMm: number
  readonly heightMm: number
}

/** The N of the largest standard scale 1:N that suits; when none does, the smallest. */
export const firstScale = (suits: (scaleDenominator: number) => boolean): number =>
  SCALE_DENOMINATORS.find(suits) ?? 100

/**
 * The N of the largest standard scale 1:N at which a model of `size` (model mm) fits into `area` (paper
 * mm) beside things of fixed size, such as dimension lines. When nothing fits, the smallest scale.
 */
export const fitScale = (
  size: Size,
  area: Size,
  fixed: Size = { widthMm: 0, heightMm: 0 },
): number =>
  firstScale(
    (n) =>
      size.widthMm / n + fixed.widthMm <= area.widthMm &&
      size.heightMm / n + fixed.heightMm <= area.heightMm,
  )

/** Whether one size lies within another. */
export const fitsIn = (size: Size, area: Size): boolean =>
  size.widthMm <= area.widthMm && size.heightMm <= area.heightMm
