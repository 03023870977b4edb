import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'
import type { CuttingJobs } from '../cutting/cuttingPlan.ts'
import type { CutListRow } from '../shopReport.ts'
import { adviseSetUp, usesStopBlock } from './advise.ts'
import { boardCuts, boardsByLabel, type RowBoard } from './boardCuts.ts'
import type { Cut } from './cut.ts'
import { describeStock, materialNames } from './describeStock.ts'
import { findNearTwins } from './findNearTwins.ts'
import { findProblem } from './findProblem.ts'
import { gatherCuts, type SharedCuts } from './gatherCuts.ts'
import { operationCuts } from './operationCuts.ts'
import type { SetUp, SetUpReport } from './setUpReport.ts'
import { sheetCuts } from './sheetCuts.ts'
import type { Shop } from './shop.ts'

/**
 * Every setting of every tool that the parts need, each once, in the order of work. One setting serves
 * all stock that it fits. Counts are for all hives that are built at once, without the parts that are
 * made; bought things and loose filling are not cut. Linear in the rows but for the near twins, which compare them in pairs.
 */
export const computeSetUps = (
  { shop, made }: Pick<Design, 'shop' | 'made'>,
  cutList: readonly CutListRow[],
  jobs: CuttingJobs,
): SetUpReport => {
  const boards = boardsByLabel(jobs)
  const pieces = piecesLeft(made, cutList, jobs.hives)
  const cutsByRow = cutList
    .filter(({ label }) => (pieces.get(label) ?? 0) > 0)
    .map((row) => ({ row, cuts: rowCuts(row, boards.get(row.label), shop) }))
  const shared = gatherCuts(cutsByRow.flatMap(({ cuts }) => cuts))
  const partCount = cutsByRow
    .filter(({ cuts }) => cuts.length > 0)
    .reduce((sum, { row }) => sum + (pieces.get(row.label) ?? 0), 0)
  return {
    setUps: shared.map((cuts, i) => buildSetUp(cuts, { number: i + 1, pieces, tools: shop.tools })),
    partCount,
    tools: [...new Set(shared.map(([{ tool }]) => tool.name))],
    nearTwins: findNearTwins(cutList),
  }
}

/** How many parts of each row are still to be cut, by label. Made parts are of the first hive. */
const piecesLeft = (
  made: Design['made'],
  cutList: readonly CutListRow[],
  hives: number,
): ReadonlyMap<string, number> => {
  const madeIds = new Set(made.map(({ partId }) => partId))
  return new Map(
    cutList
      .filter(({ bought }) => !bought)
      .map(({ label, count, partIds }) => [
        label,
        count * hives - (madeIds.size === 0 ? 0 : partIds.filter((id) => madeIds.has(id)).length),
      ]),
  )
}

const rowCuts = (row: CutListRow, board: RowBoard | undefined, shop: Shop): readonly Cut[] => {
  const sawn =
    board !== undefined || materialById(row.material).family === 'wood'
      ? boardCuts(row, board, shop)
      : sheetCuts(row, shop)
  return sawn.length === 0 ? [] : [...sawn, ...operationCuts(row, shop)]
}

const buildSetUp = (
  cuts: SharedCuts,
  {
    number,
    pieces,
    tools,
  }: {
    readonly number: number
    readonly pieces: ReadonlyMap<string, number>
    readonly tools: Shop['tools']
  },
): SetUp => {
  const [first] = cuts
  const rows = cuts.map(({ row }) => ({
    label: row.label,
    name: row.name,
    count: pieces.get(row.label) ?? 0,
  }))
  const total = rows.reduce((sum, { count }) => sum + count, 0)
  return {
    number,
    kind: first.kind,
    tool: first.tool.words,
    setting: first.setting,
    further: first.further,
    stock: describeStock(cuts),
    materialName: materialNames(cuts),
    rows,
    usesStopBlock: usesStopBlock(cuts, total),
    advice: adviseSetUp(cuts, total),
    problem: findProblem(cuts, tools),
  }
}
