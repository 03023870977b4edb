import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'
import type { CutListRow } from '../shopReport.ts'

/** A cut list row and how many parts of it are still to be cut, for all hives; never 0. */
export interface WantedRow {
  readonly row: CutListRow
  readonly parts: number
}

/**
 * The rows that are cut from boards and from sheets, without the parts that are cut already. Those are
 * parts of the first hive. Bought things are left out, and batts, loose fill and wax, which are bought
 * by area, volume and sheet.
 */
export const wantedRows = (
  design: Pick<Design, 'shop' | 'made'>,
  cutList: readonly CutListRow[],
): { readonly boards: readonly WantedRow[]; readonly sheets: readonly WantedRow[] } => {
  const made = new Set(design.made.map(({ partId }) => partId))
  const boards: WantedRow[] = []
  const sheets: WantedRow[] = []
  for (const row of cutList) {
    if (row.bought) continue
    const done = made.size === 0 ? 0 : row.partIds.filter((id) => made.has(id)).length
    const parts = row.count * design.shop.hivesAtOnce - done
    if (parts <= 0) continue
    const { family, form } = materialById(row.material)
    if (family === 'wood') boards.push({ row, parts })
    else if (family !== 'wax' && form !== 'batt' && form !== 'loose') sheets.push({ row, parts })
  }
  return { boards, sheets }
}
