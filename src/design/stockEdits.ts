import { clearLengths } from './clearLengths.ts'
import { DEFAULT_LUMBER, DEFAULT_SHEET } from './defaults.ts'
import {
  type Design,
  type LumberStockDesign,
  MAX_DEFECTS,
  MAX_STOCK_ROWS,
  type SheetStockDesign,
} from './schema.ts'

/**
 * Adds one board on hand, of the wood and size of `model`, at first of the last board listed. The same
 * design when there are as many rows as may be.
 */
export function addLumberStock(
  design: Design,
  model: LumberStockDesign = design.stock.lumber.at(-1) ?? DEFAULT_LUMBER,
): Design {
  const { lumber } = design.stock
  if (lumber.length >= MAX_STOCK_ROWS) return design
  return withLumber(design, [...lumber, { ...model, ...ONE_ON_HAND, defects: [] }])
}

/** Takes the board row of that number away, counted from 0; the same design when there is none. */
export function removeLumberStock(design: Design, index: number): Design {
  const { lumber } = design.stock
  return lumber[index] === undefined ? design : withLumber(design, lumber.toSpliced(index, 1))
}

/** Adds one sheet on hand, like `addLumberStock`. */
export function addSheetStock(
  design: Design,
  model: SheetStockDesign = design.stock.sheets.at(-1) ?? DEFAULT_SHEET,
): Design {
  const { sheets } = design.stock
  if (sheets.length >= MAX_STOCK_ROWS) return design
  return withSheets(design, [...sheets, { ...model, ...ONE_ON_HAND }])
}

/** Takes the sheet row of that number away, counted from 0; the same design when there is none. */
export function removeSheetStock(design: Design, index: number): Design {
  const { sheets } = design.stock
  return sheets[index] === undefined ? design : withSheets(design, sheets.toSpliced(index, 1))
}

/**
 * Marks a bad place in the middle of the longest clear length of a board. The same design when the
 * board has as many as may be, or nothing clear is left.
 */
export function addDefect(design: Design, index: number): Design {
  const board = design.stock.lumber[index]
  if (board === undefined || board.defects.length >= MAX_DEFECTS) return design
  const [first, ...others] = clearLengths(board)
  if (first === undefined) return design
  const lengthOf = ({ fromMm, toMm }: typeof first): number => toMm - fromMm
  const longest = others.reduce((best, s) => (lengthOf(s) > lengthOf(best) ? s : best), first)
  const middle = Math.round((longest.fromMm + longest.toMm) / 2)
  const half = Math.min(DEFECT_MM, lengthOf(longest)) / 2
  const defect = { fromMm: Math.max(0, middle - half), toMm: middle + half }
  return withBoard(design, index, { ...board, defects: [...board.defects, defect] })
}

/** Takes a bad place of a board away; the same design when there is none of that number. */
export function removeDefect(design: Design, index: number, defectIndex: number): Design {
  const board = design.stock.lumber[index]
  if (board?.defects[defectIndex] === undefined) return design
  return withBoard(design, index, { ...board, defects: board.defects.toSpliced(defectIndex, 1) })
}

const ONE_ON_HAND = { name: '', price: 0, supply: 'counted', count: 1, onHand: true } as const

/** A knot with the crooked grain about it (common practice). */
const DEFECT_MM = 100

function withBoard(design: Design, index: number, board: LumberStockDesign): Design {
  return withLumber(design, design.stock.lumber.with(index, board))
}

function withLumber(design: Design, lumber: readonly LumberStockDesign[]): Design {
  return { ...design, stock: { ...design.stock, lumber } }
}

function withSheets(design: Design, sheets: readonly SheetStockDesign[]): Design {
  return { ...design, stock: { ...design.stock, sheets } }
}
