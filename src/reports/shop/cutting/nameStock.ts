import { sectionText } from '../../../catalog/stock.ts'
import type { CutListRow } from '../shopReport.ts'
import type { CuttingJobs } from './cuttingPlan.ts'

/** The cut list with the section that each row of solid wood is sawn from, as the jobs chose it. */
export const nameStock = (
  cutList: readonly CutListRow[],
  { lumber }: Pick<CuttingJobs, 'lumber'>,
): readonly CutListRow[] => {
  const texts = new Map(
    lumber.flatMap(({ section, thicknessMm, widthMm, blanks }) => {
      const text = sectionText({ nominal: section, thicknessMm, widthMm })
      return blanks.map(({ label }) => [label, text] as const)
    }),
  )
  return cutList.map((row) => ({ ...row, stock: texts.get(row.label) }))
}
