import type { Design } from '../design/schema.ts'
import type { Hive } from '../hive/hive.ts'
import { type Check, runChecks } from './checks/runChecks.ts'
import { computeHeat, type HeatReport } from './heat/computeHeat.ts'
import type { HeatFieldAnswer } from './heat/field/heatFieldAnswer.ts'
import { computeKeeper, type KeeperReport } from './keeper/computeKeeper.ts'
import { computeShop, type ShopReport } from './shop/computeShop.ts'
import type { CuttingPlan } from './shop/cutting/cuttingPlan.ts'

/** Every answer about one hive. Pure: the same design gives the same report. */
export interface Report {
  readonly heat: HeatReport
  readonly shop: ShopReport
  readonly keeper: KeeperReport
  readonly checks: readonly Check[]
}

/**
 * Runs all reports on a hive; the checks read the others' answers. The field takes longer than all
 * else together, so it is solved elsewhere and given when it is there; so is the cutting plan.
 */
export const runReports = (
  design: Design,
  hive: Hive,
  field?: HeatFieldAnswer,
  plan?: CuttingPlan,
): Report => {
  const heat = computeHeat(design, hive, field)
  const shop = computeShop(design, hive, plan)
  const keeper = computeKeeper(design, hive, shop)
  return { heat, shop, keeper, checks: runChecks({ design, hive, heat, shop, keeper }) }
}
