import type { Blank, CuttingJobs } from '../cutting/cuttingPlan.ts'
import type { CutListRow } from '../shopReport.ts'
import { type Cut, type CutStock, lengthSetting, type Tool } from './cut.ts'
import { HAND_PLANED_MM } from './limits.ts'
import type { Shop } from './shop.ts'
import { GUIDED_SAW, toolFor } from './toolProfile.ts'

/** The board that a row is cut from, and how the row lies in it. */
export interface RowBoard {
  readonly boardThicknessMm: number
  readonly boardWidthMm: number
  readonly blank: Blank
}

/** A part is left as it is when the board is larger by no more than a rip fence repeats to, mm. */
const NO_CUT_MM = 0.2
/** Up to this a planer takes off, above it a saw parts the board, mm. Common practice. */
const MOST_PLANED_MM = 6

/** Which board each row comes from, by label. */
export const boardsByLabel = ({ lumber }: CuttingJobs): ReadonlyMap<string, RowBoard> =>
  new Map(
    lumber.flatMap(({ thicknessMm, widthMm, blanks }) =>
      blanks.map((blank) => [
        blank.label,
        { boardThicknessMm: thicknessMm, boardWidthMm: widthMm, blank },
      ]),
    ),
  )

/**
 * Rip to width, bring to thickness, crosscut to length. Without a board of known section the row is
 * ripped from a board of its own thickness.
 */
export const boardCuts = (
  row: CutListRow,
  board: RowBoard | undefined,
  shop: Shop,
): readonly Cut[] => {
  const stock = boardStock(row, board)
  const [along, across] =
    row.grain === 'width' ? [row.widthMm, row.lengthMm] : [row.lengthMm, row.widthMm]
  const crosscut: Cut = {
    kind: 'crosscut',
    tool: toolFor(shop.tools, 'crosscut'),
    setting: lengthSetting(along),
    further: [],
    stock,
    row,
  }
  return board === undefined
    ? [rip(row, across, stock, shop), crosscut]
    : [...widthCuts(row, board, stock, shop), ...thicknessCuts(row, board, stock, shop), crosscut]
}

const boardStock = (row: CutListRow, board: RowBoard | undefined): CutStock => ({
  materialName: row.materialName,
  thicknessMm: board?.boardThicknessMm ?? row.thicknessMm,
  widthMm: board?.boardWidthMm,
})

const rip = (row: CutListRow, mm: number, stock: CutStock, shop: Shop): Cut => {
  const tool =
    shop.tools === 'table-saw' && mm > shop.ripLimitMm ? GUIDED_SAW : toolFor(shop.tools, 'rip')
  return {
    kind: 'rip',
    tool,
    setting: lengthSetting(mm),
    further: guidePlace(tool, mm, shop),
    stock,
    row,
  }
}

const widthCuts = (
  row: CutListRow,
  { boardWidthMm, blank: { widthMm } }: RowBoard,
  stock: CutStock,
  shop: Shop,
): readonly Cut[] => {
  const surplusMm = boardWidthMm - widthMm
  if (surplusMm <= NO_CUT_MM) return []
  // A handsaw can't take off a shaving along the grain, a plane can.
  return shop.tools === 'hand-tools' && surplusMm <= HAND_PLANED_MM
    ? [thinner('plane', widthMm, surplusMm, { row, stock, shop })]
    : [rip(row, widthMm, stock, shop)]
}

const thicknessCuts = (
  row: CutListRow,
  { boardThicknessMm, blank: { thicknessMm, layers } }: RowBoard,
  stock: CutStock,
  shop: Shop,
): readonly Cut[] => {
  const surplusMm = boardThicknessMm - thicknessMm
  if (surplusMm <= NO_CUT_MM) return []
  const kind = layers > 1 || surplusMm > MOST_PLANED_MM ? 'resaw' : 'plane'
  return [thinner(kind, thicknessMm, surplusMm, { row, stock, shop })]
}

const thinner = (
  kind: 'resaw' | 'plane',
  mm: number,
  surplusMm: number,
  { row, stock, shop }: { readonly row: CutListRow; stock: CutStock; shop: Shop },
): Cut => ({
  kind,
  tool: toolFor(shop.tools, kind),
  setting: lengthSetting(mm),
  further: [],
  stock,
  row,
  surplusMm,
})

/**
 * Where the guide's edge lies, measured from the same edge as the size. The guide lies on the waste, so
 * the saw's cut falls between it and the line, and the offset counts up to the piece that is kept.
 */
export const guidePlace = (tool: Tool, mm: number, shop: Shop): Cut['further'] =>
  tool === GUIDED_SAW
    ? [
        {
          name: 'Guide on the waste side, from the same edge',
          setting: lengthSetting(mm + shop.guideOffsetMm),
        },
      ]
    : []
