import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { computeAssembly } from './assembly/computeAssembly.ts'
import { cutList } from './cutList.ts'
import { buildCuttingJobs } from './cutting/buildCuttingJobs.ts'
import { planFor } from './cutting/cuttingKey.ts'
import type { CuttingPlan } from './cutting/cuttingPlan.ts'
import { nameStock } from './cutting/nameStock.ts'
import { computeFasteners } from './fasteners/computeFasteners.ts'
import { hiveMasses } from './hiveMasses.ts'
import { materialTotals } from './materialTotals.ts'
import { computeSetUps } from './setups/computeSetUps.ts'
import { computeShopping } from './shopping/computeShopping.ts'
import type { ShopReport } from './shopReport.ts'

export type { CutListRow, MaterialTotal, ShopReport } from './shopReport.ts'

/**
 * Everything that the workshop needs to know about the parts. Linear in the number of parts. The cutting
 * plan takes longer than all else together, so it is made elsewhere and given when it is there.
 */
export const computeShop = (design: Design, hive: Hive, plan?: CuttingPlan): ShopReport => {
  const parts = cutList(hive.parts)
  const cutting = buildCuttingJobs(design, parts)
  const rows = nameStock(parts, cutting)
  const fasteners = computeFasteners(design, hive, rows)
  const cuttingPlan = planFor(cutting, plan)
  return {
    cutList: rows,
    totals: materialTotals(hive.parts),
    massKg: hiveMasses(hive.parts),
    partCount: hive.parts.length,
    distinctParts: rows.length,
    sundries: hive.sundries,
    cutting,
    plan: cuttingPlan,
    setUps: computeSetUps(design, rows, cutting),
    fasteners,
    assembly: computeAssembly({ design, hive, cutList: rows, fasteners }),
    shopping: computeShopping(design, { cutList: rows, cutting, plan: cuttingPlan, fasteners }),
  }
}
