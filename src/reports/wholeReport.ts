import type { Design } from '../design/schema.ts'
import type { Hive } from '../hive/hive.ts'
import type { HeatFieldAnswer } from './heat/field/heatFieldAnswer.ts'
import { type Report, runReports } from './report.ts'
import type { WholeShop } from './shop/benchReport.ts'
import { computeBench } from './shop/computeBench.ts'
import type { CuttingPlan } from './shop/cutting/cuttingPlan.ts'

/** Every answer about one hive with all that the workshop wants: what is printed and exported. */
export interface WholeReport extends Report {
  readonly shop: WholeShop
}

/** The report with the workshop's lists. */
export const completeReport = (design: Design, hive: Hive, report: Report): WholeReport => ({
  ...report,
  shop: computeBench(design, hive, report.shop),
})

/** As `runReports`, and complete. */
export const runWholeReports = (
  design: Design,
  hive: Hive,
  field?: HeatFieldAnswer,
  plan?: CuttingPlan,
): WholeReport => completeReport(design, hive, runReports(design, hive, field, plan))
