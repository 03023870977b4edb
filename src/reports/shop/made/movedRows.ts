import type { CutListRow } from '../shopReport.ts'
import type { MadeRemedy } from './madeReport.ts'
import { rowSize, SIDES } from './partSize.ts'

/** The cut list is in hundredths; less is no change. */
const NO_MOVE_MM = 0.005

/**
 * What moved between two cut lists, part by part: rows are told apart by their parts, because labels
 * shift when a row comes or goes. Parts in `madeIds` and bought ones are left out. A part that only one
 * of the lists has counts as a length from 0 or to 0. Labels are those of `before`, for new parts those
 * of `after`. Linear in the parts.
 */
export const movedRows = (
  before: readonly CutListRow[],
  after: readonly CutListRow[],
  madeIds: ReadonlySet<string> = new Set(),
): MadeRemedy['moved'] => {
  const afterById = rowsById(after)
  const beforeById = rowsById(before)
  const changed = before.flatMap((row) =>
    partners(row, afterById, madeIds).flatMap((other) =>
      other === undefined ? [lengthMove(row, row.lengthMm, 0)] : sideMoves(row, other),
    ),
  )
  const added = after
    .filter((row) => partners(row, beforeById, madeIds).includes(undefined))
    .map((row) => lengthMove(row, 0, row.lengthMm))
  return [...changed, ...added]
}

const rowsById = (rows: readonly CutListRow[]): ReadonlyMap<string, CutListRow> =>
  new Map(rows.flatMap((row) => row.partIds.map((id) => [id, row] as const)))

/** The rows of the other list that have this row's parts, each once; undefined for parts it lacks. */
const partners = (
  row: CutListRow,
  byId: ReadonlyMap<string, CutListRow>,
  madeIds: ReadonlySet<string>,
): readonly (CutListRow | undefined)[] =>
  row.bought
    ? []
    : [...new Set(row.partIds.filter((id) => !madeIds.has(id)).map((id) => byId.get(id)))]

type Move = MadeRemedy['moved'][number]

const sideMoves = (row: CutListRow, other: CutListRow): readonly Move[] => {
  const [from, to] = [rowSize(row), rowSize(other)]
  return SIDES.flatMap((side, i) => {
    const [beforeMm = 0, afterMm = 0] = [from[i], to[i]]
    return Math.abs(afterMm - beforeMm) > NO_MOVE_MM
      ? [{ label: row.label, name: row.name, side, beforeMm, afterMm }]
      : []
  })
}

const lengthMove = ({ label, name }: CutListRow, beforeMm: number, afterMm: number): Move => ({
  label,
  name,
  side: 'length',
  beforeMm,
  afterMm,
})
