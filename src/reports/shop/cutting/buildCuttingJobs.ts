import type { Design } from '../../../design/schema.ts'
import type { CutListRow } from '../shopReport.ts'
import { buildLumberGroups } from './buildLumberGroups.ts'
import { buildSheetGroups } from './buildSheetGroups.ts'
import type { CuttingJobs } from './cuttingPlan.ts'
import { wantedRows } from './wantedRows.ts'

/**
 * What is to be cut from which boards and sheets, for all hives that are built at once. Every part that
 * is cut is in exactly one job or one problem. Solving the jobs is left to `planCutting`.
 */
export const buildCuttingJobs = (design: Design, cutList: readonly CutListRow[]): CuttingJobs => {
  const rows = wantedRows(design, cutList)
  const lumber = buildLumberGroups(design, rows.boards)
  const sheets = buildSheetGroups(design, rows.sheets)
  return {
    hives: design.shop.hivesAtOnce,
    lumber: lumber.groups,
    sheets: sheets.groups,
    problems: [...lumber.problems, ...sheets.problems],
  }
}
