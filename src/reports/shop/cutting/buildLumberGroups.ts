import type { Design } from '../../../design/schema.ts'
import type { LumberPart } from '../../../solvers/cutting/lumber/lumberJob.ts'
import { type BoardOption, boardsFor } from './boardsFor.ts'
import { createBoardsLeft } from './boardsLeft.ts'
import { type BoardChoice, type BoardLack, chooseBoards, type Wanted } from './chooseBoards.ts'
import type { Blank, CuttingProblem, LumberGroup } from './cuttingPlan.ts'
import { describeLumberProblems, type LackingRow } from './lumberProblems.ts'
import type { WantedRow } from './wantedRows.ts'

/**
 * The rows of solid wood by the boards that they are sawn from, in the order of the cut list. Rows that
 * no board does are told as problems.
 */
export const buildLumberGroups = (
  design: Design,
  rows: readonly WantedRow[],
): { readonly groups: readonly LumberGroup[]; readonly problems: readonly CuttingProblem[] } => {
  const chosen = chooseAll(design, rows)
  const groups = new Map<BoardOption, OpenGroup>()
  const lacking: LackingRow[] = []
  for (const wantedRow of rows) {
    const found = chosen.get(wantedRow)
    if (found === undefined) continue
    const { wanted, choice } = found
    const { row } = wantedRow
    if (typeof choice === 'string') {
      lacking.push({ row, wanted, lack: choice })
      continue
    }
    const { option, blanks, across, layers } = choice
    const group = groups.get(option) ?? { row, blanks: [], parts: [] }
    groups.set(option, group)
    const { label, name } = row
    group.blanks.push({ label, name, ...wanted, across, layers })
    group.parts.push({ id: label, lengthMm: wanted.lengthMm, count: blanks })
  }
  return {
    groups: [...groups].map(([option, group]) => closeGroup(design, option, group)),
    problems: describeLumberProblems(design, lacking),
  }
}

interface OpenGroup {
  /** The first row, for the material. */
  readonly row: WantedRow['row']
  readonly blanks: Blank[]
  readonly parts: LumberPart[]
}

interface Chosen {
  readonly wanted: Wanted
  readonly choice: BoardChoice | BoardLack
}

/** Rows with much wood choose first, so that small ones can join them. */
const chooseAll = (design: Design, rows: readonly WantedRow[]): ReadonlyMap<WantedRow, Chosen> => {
  const { shop } = design
  const left = createBoardsLeft(shop)
  const sizes = rows.map((wantedRow) => ({ wantedRow, wanted: sizeOf(wantedRow) }))
  const volume = ({ lengthMm, widthMm, thicknessMm, parts }: Wanted): number =>
    lengthMm * widthMm * thicknessMm * parts
  sizes.sort((a, b) => volume(b.wanted) - volume(a.wanted))
  return new Map(
    sizes.map(({ wantedRow, wanted }) => {
      const options = boardsFor(design, wantedRow.row.material)
      return [wantedRow, { wanted, choice: chooseBoards(wanted, { options, shop, left }) }]
    }),
  )
}

/** A part as it lies in a board: its grain along it, its thinner side in the board's thickness. */
const sizeOf = ({ row, parts }: WantedRow): Wanted => {
  const isAcross = row.grain === 'width'
  const lengthMm = isAcross ? row.widthMm : row.lengthMm
  const other = isAcross ? row.lengthMm : row.widthMm
  return {
    lengthMm,
    widthMm: Math.max(other, row.thicknessMm),
    thicknessMm: Math.min(other, row.thicknessMm),
    parts,
  }
}

const closeGroup = (
  { shop }: Design,
  option: BoardOption,
  { row, blanks, parts }: OpenGroup,
): LumberGroup => {
  const { nominal, thicknessMm, widthMm, stocks } = option
  return {
    key: `${row.material} ${thicknessMm}×${widthMm}`,
    material: row.material,
    materialName: row.materialName,
    section: nominal,
    thicknessMm,
    widthMm,
    job: { stocks, kerfMm: shop.kerfMm, trimMm: shop.endTrimMm, parts },
    blanks,
  }
}
