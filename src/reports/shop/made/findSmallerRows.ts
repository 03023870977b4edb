import type { CutListRow } from '../shopReport.ts'
import type { MistakeAnswer } from './madeReport.ts'
import { rowSize, SAME_SIZE_MM, type Size } from './partSize.ts'

/**
 * Rows that a spoiled piece of this row, now of the given size, can be cut down to, largest first: the
 * same material and thickness, no longer and no wider, its grain along the same side. Rows whose parts
 * are all made are left out, and so are bought ones.
 */
export const findSmallerRows = (
  cutList: readonly CutListRow[],
  spoiled: { readonly row: CutListRow; readonly size: Size },
  madeIds: ReadonlySet<string>,
): MistakeAnswer['canBecome'] =>
  cutList
    .filter(
      (row) =>
        row !== spoiled.row &&
        !row.bought &&
        row.material === spoiled.row.material &&
        row.partIds.some((id) => !madeIds.has(id)) &&
        fitsInto(row, spoiled),
    )
    .sort((a, b) => b.lengthMm * b.widthMm - a.lengthMm * a.widthMm)
    .map((row) => ({ label: row.label, name: row.name, sizeMm: rowSize(row) }))

const fitsInto = (
  row: CutListRow,
  { row: from, size: [length, width, thickness] }: { readonly row: CutListRow; size: Size },
): boolean => {
  if (Math.abs(row.thicknessMm - thickness) > SAME_SIZE_MM) return false
  const asItLies = row.lengthMm <= length && row.widthMm <= width
  const turned = row.lengthMm <= width && row.widthMm <= length
  if (row.grain === 'none' || from.grain === 'none') return asItLies || turned
  return row.grain === from.grain ? asItLies : turned
}
