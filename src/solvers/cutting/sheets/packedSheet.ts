import type { CarryGrid } from './carryGrids.ts'
import type { SheetType } from './sheetModel.ts'
import type { SliceNode } from './sliceTree.ts'

/** A piece of a sheet that is carried whole, with its tree of cuts; most sheets are one such piece. */
export interface SheetCell {
  /** Undefined while it is empty. */
  readonly root: SliceNode | undefined
  /** The root's pieces follow each other along the sheet's length. */
  readonly alongLength: boolean
}

/** A sheet and what is cut from it. */
export interface PackedSheet {
  readonly type: SheetType
  readonly grid: CarryGrid
  /** Section by section. */
  readonly cells: readonly SheetCell[]
  readonly leaves: number
  readonly usedArea: number
}

/** How far a cell may reach while all others keep what they need. */
export interface CellRoom {
  readonly length: number
  readonly width: number
}

const EMPTY_CELL: SheetCell = { root: undefined, alongLength: true }

/** A sheet from which nothing is cut yet. */
export function openSheet(type: SheetType, grid: CarryGrid): PackedSheet {
  const cells = new Array<SheetCell>(grid.sections * grid.cells).fill(EMPTY_CELL)
  return { type, grid, cells, leaves: 0, usedArea: 0 }
}

/** The sheet with another tree in one of its cells. */
export function swapCell(sheet: PackedSheet, index: number, cell: SheetCell): PackedSheet {
  const cells = sheet.cells.map((old, at) => (at === index ? cell : old))
  let leaves = 0
  let usedArea = 0
  for (const each of cells) {
    leaves += each.root?.leaves ?? 0
    usedArea += each.root?.area ?? 0
  }
  return { type: sheet.type, grid: sheet.grid, cells, leaves, usedArea }
}

/** The least extents of a cell's parts along the sheet's length and width. */
function measureCell(cell: SheetCell): CellRoom {
  if (!cell.root) return { length: 0, width: 0 }
  const { reach, thick } = cell.root
  return cell.alongLength ? { length: reach, width: thick } : { length: thick, width: reach }
}

/** What a cell may take of its sheet at most. */
export function measureRoom(sheet: PackedSheet, index: number): CellRoom {
  const { grid, type } = sheet
  if (sheet.cells.length === 1) return type
  const section = Math.floor(index / grid.cells)
  const mains = listSectionSizes(sheet)
  const sizes = sheet.cells.map(measureCell)
  const cellSize = (at: number) => pick(sizes[at], !grid.sectionsAlongLength)
  let crossUsed = 0
  for (let at = section * grid.cells; at < (section + 1) * grid.cells; at++) {
    if (at !== index) crossUsed += cellSize(at)
  }
  let mainUsed = 0
  for (const [at, size] of mains.entries()) if (at !== section) mainUsed += size
  const main = pick(type, grid.sectionsAlongLength) - mainUsed
  const cross = pick(type, !grid.sectionsAlongLength) - crossUsed
  return grid.sectionsAlongLength
    ? { length: Math.min(main, grid.mostLength), width: Math.min(cross, grid.mostWidth) }
    : { length: Math.min(cross, grid.mostLength), width: Math.min(main, grid.mostWidth) }
}

/** What each section of a grid needs along the row of sections. */
function listSectionSizes(sheet: PackedSheet): readonly number[] {
  const { grid } = sheet
  const sizes = new Array<number>(grid.sections).fill(0)
  for (const [at, cell] of sheet.cells.entries()) {
    const section = Math.floor(at / grid.cells)
    const size = pick(measureCell(cell), grid.sectionsAlongLength)
    sizes[section] = Math.max(sizes[section] ?? 0, size)
  }
  return sizes
}

function pick(size: CellRoom | undefined, isLength: boolean): number {
  if (!size) return 0
  return isLength ? size.length : size.width
}
