import { BOARD_LENGTHS_MM } from '../../../catalog/boardsForSale.ts'
import type { Design } from '../../../design/schema.ts'
import type { CutListRow } from '../shopReport.ts'
import { stockSystemOf } from '../stockSystem.ts'
import { type BoardOption, boardsFor } from './boardsFor.ts'
import type { BoardLack, Wanted } from './chooseBoards.ts'
import type { CuttingProblem } from './cuttingPlan.ts'
import { fewerFramesRemedy } from './fewerFramesRemedy.ts'
import { sheetInstead } from './sheetInstead.ts'

/** A row of solid wood that no board does. */
export interface LackingRow {
  readonly row: CutListRow
  readonly wanted: Wanted
  readonly lack: BoardLack
}

/** One problem for all rows that lack the same thing and have the same ways out. */
export const describeLumberProblems = (
  design: Design,
  rows: readonly LackingRow[],
): readonly CuttingProblem[] => {
  const problems = new Map<string, { labels: string[]; problem: Omit<CuttingProblem, 'labels'> }>()
  for (const lacking of rows) {
    const problem = DESCRIBE[lacking.lack](design, lacking)
    const key = JSON.stringify(problem)
    const same = problems.get(key) ?? { labels: [], problem }
    same.labels.push(lacking.row.label)
    problems.set(key, same)
  }
  return [...problems.values()].map(({ labels, problem }) => ({ labels, ...problem }))
}

type Problem = Omit<CuttingProblem, 'labels'>
type Remedy = CuttingProblem['remedies'][number]

const LIST_IT: Remedy = { text: 'Put boards that do in the list of your own stock.' }

const noStock = (_: Design, { row }: LackingRow): Problem => ({
  message: `There are no boards of ${row.materialName} to be had.`,
  remedies: [LIST_IT, { text: 'Choose another wood for these parts.' }],
})

const notEnough = (_: Design, { row }: LackingRow): Problem => ({
  message: `There is not enough ${row.materialName} in the sections that would do.`,
  remedies: [
    {
      text: 'Count more boards of it in the list of your own stock, or set one to “as many as wanted”.',
    },
  ],
})

const handTools = (): Problem => ({
  message: 'No board is sold in the section of these parts, and by hand boards are not ripped.',
  remedies: [
    { text: 'Buy them planed to width and thickness; many people buy their frames ready made.' },
    {
      text: 'Rip them with a circular saw along a guide.',
      changes: [{ field: 'shop.tools', value: 'circular-saw' }],
    },
  ],
})

const tooLong = (design: Design, { row, wanted }: LackingRow): Problem => {
  const { shop } = design
  const options = boardsFor(design, row.material)
  const longestMm = longestOf(options)
  const spareMm = Math.floor(longestMm - wanted.lengthMm)
  const neededMm = wanted.lengthMm + shop.endTrimMm
  const sold = BOARD_LENGTHS_MM[stockSystemOf(shop.longestBoardMm)].find((mm) => mm >= neededMm)
  return {
    message: `No board of ${row.materialName} is long enough, with its ends cut off.`,
    remedies: [
      ...(spareMm >= 0
        ? [
            {
              text: 'Cut less off the ends of the boards.',
              changes: [{ field: 'shop.endTrimMm', value: spareMm }],
            },
          ]
        : []),
      ...(sold !== undefined && sold > shop.longestBoardMm
        ? [
            {
              text: 'Buy longer boards.',
              changes: [{ field: 'shop.longestBoardMm', value: sold }],
            },
          ]
        : []),
      ...fewerFramesRemedy(design, row, neededMm - longestMm),
      { text: 'Join it from two lengths, end to end where a rail or stud backs the joint.' },
      LIST_IT,
    ],
  }
}

const tooLarge = (design: Design, { row, wanted }: LackingRow): Problem => {
  const options = boardsFor(design, row.material)
  const widest = Math.max(
    0,
    ...options.filter((o) => o.thicknessMm >= wanted.thicknessMm).map((o) => o.widthMm),
  )
  if (widest === 0) {
    return {
      message: `No board of ${row.materialName} is thick enough.`,
      remedies: [{ text: 'Glue it up from two boards, face to face.' }, LIST_IT],
    }
  }
  const boards = Math.max(2, Math.ceil(wanted.widthMm / (widest - JOINTED_MM)))
  return {
    message: `No board of ${row.materialName} is wide enough.`,
    remedies: [
      { text: `Glue it up from ${boards} boards, edge to edge.` },
      ...sheetInstead(design, row),
      ...narrowerCladding(design, row, widest),
      LIST_IT,
    ],
  }
}

/** Planed off the edges of a board that is glued to another (common practice). */
const JOINTED_MM = 4

/** Cladding boards are as wide as one likes. */
const narrowerCladding = (
  { walls }: Design,
  { groups }: CutListRow,
  widestMm: number,
): readonly Remedy[] =>
  groups.some((group) => group.endsWith('-wall')) &&
  walls.claddingForm === 'boards' &&
  walls.boardWidthMm > widestMm
    ? [
        {
          text: 'Make the cladding of narrower boards.',
          changes: [{ field: 'walls.boardWidthMm', value: Math.floor(widestMm) }],
        },
      ]
    : []

const longestOf = (options: readonly BoardOption[]): number =>
  Math.max(0, ...options.flatMap(({ stocks }) => stocks.map((stock) => stock.lengthMm)))

const DESCRIBE: Readonly<Record<BoardLack, (design: Design, row: LackingRow) => Problem>> = {
  'no-stock': noStock,
  'not-enough': notEnough,
  'hand-tools': handTools,
  'too-long': tooLong,
  'too-large': tooLarge,
}
