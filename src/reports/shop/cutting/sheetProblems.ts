import type { Design } from '../../../design/schema.ts'
import type { SheetPart, SheetStock } from '../../../solvers/cutting/sheets/sheetJob.ts'
import type { CutListRow } from '../shopReport.ts'
import type { CuttingProblem } from './cuttingPlan.ts'
import { fewerFramesRemedy } from './fewerFramesRemedy.ts'

/** A row that no sheet takes, with the sheets that there are. */
export interface LackingSheetRow {
  readonly row: CutListRow
  readonly part: SheetPart
  readonly stocks: readonly SheetStock[]
  readonly trimMm: number
  readonly lack: 'no-stock' | 'too-large'
}

/** One problem for all rows that lack the same thing and have the same ways out. */
export const describeSheetProblems = (
  design: Design,
  rows: readonly LackingSheetRow[],
): readonly CuttingProblem[] => {
  const problems = new Map<string, { labels: string[]; problem: Problem }>()
  for (const lacking of rows) {
    const problem = lacking.lack === 'no-stock' ? noSheets(lacking) : tooLarge(design, lacking)
    const key = JSON.stringify(problem)
    const same = problems.get(key) ?? { labels: [], problem }
    same.labels.push(lacking.row.label)
    problems.set(key, same)
  }
  return [...problems.values()].map(({ labels, problem }) => ({ labels, ...problem }))
}

type Problem = Omit<CuttingProblem, 'labels'>

const LIST_IT = { text: 'Put sheets that do in the list of your own stock.' }

const noSheets = ({ row }: LackingSheetRow): Problem => ({
  message: `There are no sheets of ${row.materialName} in this thickness to be had.`,
  remedies: [LIST_IT, { text: 'Choose another material or thickness for these parts.' }],
})

const tooLarge = (design: Design, { row, part, stocks, trimMm }: LackingSheetRow): Problem => {
  const excesses = stocks.map((stock) => excessOf(part, stock))
  // How far the nearest sheet is too small even with its factory edges, and in length alone.
  const least = Math.min(...excesses.map(({ lengthMm, widthMm }) => Math.max(lengthMm, widthMm)))
  const inLength = excesses.filter(({ widthMm }) => widthMm <= 0).map(({ lengthMm }) => lengthMm)
  const spareMm = Math.floor((-least / 2) * 10) / 10
  return {
    message: `No sheet of ${row.materialName} is large enough for these parts.`,
    remedies: [
      ...(trimMm > 0 && spareMm >= 0
        ? [
            {
              text: 'Cut less off the edges of the sheets.',
              changes: [{ field: 'shop.sheetTrimMm', value: spareMm }],
            },
          ]
        : []),
      ...(inLength.length > 0
        ? fewerFramesRemedy(design, row, Math.min(...inLength) + 2 * trimMm)
        : []),
      { text: 'Join it from two pieces where a rail or stud backs the joint.' },
      LIST_IT,
    ],
  }
}

/** How much larger a part is than an untrimmed sheet, the better way round. */
const excessOf = (part: SheetPart, stock: SheetStock) => {
  const laid = [
    { lengthMm: part.lengthMm - stock.lengthMm, widthMm: part.widthMm - stock.widthMm },
    ...(part.mayTurn
      ? [{ lengthMm: part.widthMm - stock.lengthMm, widthMm: part.lengthMm - stock.widthMm }]
      : []),
  ]
  const [first = { lengthMm: 0, widthMm: 0 }, ...others] = laid
  const worst = ({ lengthMm, widthMm }: typeof first): number => Math.max(lengthMm, widthMm)
  return others.reduce((best, way) => (worst(way) < worst(best) ? way : best), first)
}
