import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { cutList } from './cutList.ts'
import { buildCuttingJobs } from './cutting/buildCuttingJobs.ts'
import { planFor } from './cutting/cuttingKey.ts'
import type { CuttingPlan } from './cutting/cuttingPlan.ts'
import { nameStock } from './cutting/nameStock.ts'
import { hiveMasses } from './hiveMasses.ts'
import { materialTotals } from './materialTotals.ts'
import { computeSetUps } from './setups/computeSetUps.ts'
import type { ShopReport } from './shopReport.ts'

export type { CutListRow, MaterialTotal, ShopReport } from './shopReport.ts'

/**
 * What the workshop needs to know about the parts as the design changes; `computeBench` adds the rest.
 * Linear in the number of parts. The cutting plan takes longer than all else together, so it is made
 * elsewhere and given when it is there.
 */
export const computeShop = (design: Design, hive: Hive, plan?: CuttingPlan): ShopReport => {
  const parts = cutList(hive.parts)
  const cutting = buildCuttingJobs(design, parts)
  const rows = nameStock(parts, cutting)
  return {
    cutList: rows,
    totals: materialTotals(hive.parts),
    massKg: hiveMasses(hive.parts),
    partCount: hive.parts.length,
    distinctParts: rows.length,
    sundries: hive.sundries,
    cutting,
    plan: planFor(cutting, plan),
    setUps: computeSetUps(design, rows, cutting),
  }
}
