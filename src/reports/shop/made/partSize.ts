import type { MadeSizeDesign } from '../../../design/schema.ts'
import type { Part } from '../../../hive/part.ts'
import type { CutListRow } from '../shopReport.ts'

export type Side = 'length' | 'width' | 'thickness'

/** Length, width, thickness, mm. */
export type Size = readonly [number, number, number]

export const SIDES: readonly Side[] = ['length', 'width', 'thickness']
export const SIDE_INDEX: Readonly<Record<Side, 0 | 1 | 2>> = { length: 0, width: 1, thickness: 2 }

/** A made part is as planned when it is no further off than a calliper tells on wood, mm. */
export const SAME_SIZE_MM = 0.05

export const rowSize = (row: CutListRow | MadeSizeDesign): Size => [
  row.lengthMm,
  row.widthMm,
  row.thicknessMm,
]

export const partSize = ({ size }: Part): Size => [size.length, size.width, size.thickness]

export const isSameSize = (a: Size, b: Size): boolean =>
  a.every((mm, i) => Math.abs(mm - (b[i] ?? 0)) <= SAME_SIZE_MM + 1e-9)

/**
 * The size with one side as it was measured. Without grain the longer side is the length whatever is
 * cut off, as in the cut list.
 */
export const withSide = (
  size: Size,
  side: Side,
  measured: { readonly mm: number; readonly hasGrain: boolean },
): Size => {
  const sides = size.map((mm, i) => (i === SIDE_INDEX[side] ? measured.mm : mm))
  const [length = 0, width = 0, thickness = 0] = measured.hasGrain
    ? sides
    : sides.sort((a, b) => b - a)
  return [length, width, thickness]
}
