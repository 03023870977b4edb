import { type CarryGrid, listCarryGrids } from './carryGrids.ts'
import type { SheetJob } from './sheetJob.ts'
import { findWholeUnit, roundDown, roundUp } from './wholeUnits.ts'

/** Parts of one size, the saw cut beside them included, in whole units. */
export interface PartClass {
  readonly id: number
  /** Along the sheet's length as drawn. */
  readonly length: number
  readonly width: number
  readonly area: number
  readonly mayTurn: boolean
  readonly count: number
  /** Indices in the job's parts, once for each copy. */
  readonly copies: readonly number[]
}

/** Sheets of one size, trimmed, one saw cut added, in whole units. */
export interface SheetType {
  /** Index in the job's stocks. */
  readonly stock: number
  readonly length: number
  readonly width: number
  readonly area: number
  readonly price: number
  /** Infinity where unlimited. */
  readonly count: number
  /** The ways to divide it into pieces that can be carried, the fewest pieces first. */
  readonly grids: readonly CarryGrid[]
}

/**
 * A job without saw cuts: every part and sheet is a kerf larger, so packing rectangles edge to edge is
 * the same as cutting them (cuts from edge to edge only).
 */
export interface SheetModel {
  readonly classes: readonly PartClass[]
  readonly types: readonly SheetType[]
  /** Levels of cuts; a large number for any. */
  readonly stages: number
  /** Lengths are whole units without rounding, so the plan's model is also the bound's. */
  readonly isExact: boolean
  /** Of a part. */
  readonly meanArea: number
  /** Parts in all. */
  readonly parts: number
}

const ANY_STAGES = 99

/**
 * Rounds so that every plan of the model can be cut (`plan`), or so that every plan that can be cut is
 * one of the model (`bound`). Expects a job that `checkSheetJob` accepts.
 */
export function buildSheetModel(job: SheetJob, purpose: 'plan' | 'bound'): SheetModel {
  const sheetMm = (lengthMm: number) => lengthMm - 2 * job.trimMm + job.kerfMm
  const partMm = (lengthMm: number) => lengthMm + job.kerfMm
  const carry = job.carry
  const unit = findWholeUnit([
    ...job.stocks.flatMap((stock) => [sheetMm(stock.lengthMm), sheetMm(stock.widthMm)]),
    ...job.parts.flatMap((part) => [partMm(part.lengthMm), partMm(part.widthMm)]),
    ...(carry ? [partMm(carry.lengthMm), partMm(carry.widthMm)] : []),
  ])
  const [forSheets, forParts] = purpose === 'plan' ? [roundDown, roundUp] : [roundUp, roundDown]
  const limit = carry && {
    length: forSheets(partMm(carry.lengthMm), unit),
    width: forSheets(partMm(carry.widthMm), unit),
  }
  const types = job.stocks.map((stock, index) => {
    const length = forSheets(sheetMm(stock.lengthMm), unit)
    const width = forSheets(sheetMm(stock.widthMm), unit)
    return {
      stock: index,
      length,
      width,
      area: length * width,
      price: stock.price,
      count: stock.count ?? Number.POSITIVE_INFINITY,
      grids: listCarryGrids({ length, width }, limit),
    }
  })
  const classes = groupParts(job, (lengthMm) => forParts(partMm(lengthMm), unit))
  const stages = job.stages === 'any' ? ANY_STAGES : job.stages
  const parts = classes.reduce((sum, part) => sum + part.count, 0)
  const area = classes.reduce((sum, part) => sum + part.count * part.area, 0)
  return {
    classes,
    types,
    stages,
    isExact: unit.isExact,
    parts,
    meanArea: area / Math.max(1, parts),
  }
}

function groupParts(job: SheetJob, toUnits: (lengthMm: number) => number): readonly PartClass[] {
  const copiesByKey = new Map<string, number[]>()
  for (const [index, part] of job.parts.entries()) {
    const key = [toUnits(part.lengthMm), toUnits(part.widthMm), part.mayTurn ? 1 : 0].join(' ')
    const copies = copiesByKey.get(key) ?? []
    for (let copy = 0; copy < part.count; copy++) copies.push(index)
    if (copies.length > 0) copiesByKey.set(key, copies)
  }
  return [...copiesByKey].map(([key, copies], id) => {
    const [length = 0, width = 0, turn = 0] = key.split(' ').map(Number)
    const mayTurn = turn === 1 && length !== width
    return { id, length, width, area: length * width, mayTurn, count: copies.length, copies }
  })
}
