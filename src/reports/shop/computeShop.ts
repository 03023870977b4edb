import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { cutList } from './cutList.ts'
import { hiveMasses } from './hiveMasses.ts'
import { materialTotals } from './materialTotals.ts'
import type { ShopReport } from './shopReport.ts'
import { stockSystemOf } from './stockSystem.ts'

export type { CutListRow, MaterialTotal, ShopReport } from './shopReport.ts'

/** Everything that the workshop needs to know about the parts. Linear in the number of parts. */
export const computeShop = (
  design: Pick<Design, 'shop'>,
  hive: Pick<Hive, 'parts' | 'sundries'>,
): ShopReport => {
  const rows = cutList(hive.parts, stockSystemOf(design.shop.longestBoardMm))
  return {
    cutList: rows,
    totals: materialTotals(hive.parts),
    massKg: hiveMasses(hive.parts),
    partCount: hive.parts.length,
    distinctParts: rows.length,
    sundries: hive.sundries,
  }
}
