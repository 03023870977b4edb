import { type Column, createMaster } from '../masterProgram.ts'
import type { CoverCut } from './coverCuts.ts'
import type { SheetCell } from './packedSheet.ts'
import type { PlaceSearch } from './placeSearch.ts'
import type { PartClass, SheetModel } from './sheetModel.ts'
import { createStripPricer, type StripPattern, type StripPricer } from './stripPricer.ts'

/** A pattern of strips, and how many sheets the linear programme cuts so. */
export interface UsedPattern {
  readonly stock: number
  readonly cell: SheetCell
  readonly times: number
}

export interface PatternPlan {
  readonly patterns: readonly UsedPattern[]
  /** The duals as a rule for purchases; it holds for two-stage plans only. */
  readonly cut: CoverCut | undefined
}

/** What is known of a job's patterns; grows from one linear programme to the next. */
export interface PatternSource {
  readonly pricers: readonly StripPricer[]
  readonly cells: Map<Column, SheetCell>
}

/** Undefined where parts end at too many points or sheets must be divided to be carried. */
export function createPatternSource(model: SheetModel): PatternSource | undefined {
  const isWhole = model.types.every(({ grids }) =>
    grids.every((grid) => grid.sections * grid.cells === 1),
  )
  if (!isWhole) return undefined
  const alongLength = createStripPricer(model, true)
  const alongWidth = createStripPricer(model, false)
  if (!alongLength || !alongWidth) return undefined
  return { pricers: [alongLength, alongWidth], cells: new Map() }
}

const MOST_ROUNDS = 300
/** What a round takes, in nodes of trees looked at. */
const EFFORT_PER_CLASS = 500

/**
 * Column generation over two-stage patterns (Gilmore & Gomory 1965), for jobs with many copies of few
 * sizes. The duals give a rule that every two-stage plan obeys (Farley 1990), whether or not the rounds
 * came to an end. Pauses after each round.
 */
export function* generatePatterns(
  model: SheetModel,
  search: PlaceSearch,
  { pricers, cells }: PatternSource,
): Generator<undefined, PatternPlan> {
  const dearest = Math.max(...model.types.map(({ price }) => price))
  const master = createMaster({
    demand: model.classes.map((part) => part.count),
    penalties: model.classes.map(() => 2 * dearest + 1),
    boards: model.types.map(({ count }) => count),
    costs: model.types.map(({ price }) => price),
  })
  for (const column of cells.keys()) master.addColumn(column)
  let cut: CoverCut | undefined
  for (let round = 0; round < MOST_ROUNDS; round++) {
    search.effort += model.classes.length * EFFORT_PER_CLASS
    master.solve()
    const duals = master.pieceDuals()
    const boardDuals = master.boardDuals()
    const best = pricers.map((price) => price(duals))
    cut = strictest(cut, readCut(model, duals, best), model)
    const columns = best.flatMap((patterns) => buildColumns(model, patterns, boardDuals))
    for (const { column, cell } of columns) {
      cells.set(column, cell)
      master.addColumn(column)
    }
    yield undefined
    if (columns.length === 0) break
  }
  master.solve()
  const patterns = master.values().flatMap(([column, times]) => {
    const cell = cells.get(column)
    return cell ? [{ stock: column.bin, cell, times }] : []
  })
  return { patterns, cut }
}

/** The patterns that are worth more than their sheet costs. */
function buildColumns(
  model: SheetModel,
  patterns: readonly StripPattern[],
  boardDuals: ArrayLike<number>,
): readonly { readonly column: Column; readonly cell: SheetCell }[] {
  return patterns.flatMap((pattern, index) => {
    const cost = (model.types[index]?.price ?? 0) + (boardDuals[index] ?? 0)
    if (pattern.value <= cost + 1e-7 * Math.max(1, cost)) return []
    const built = pattern.build()
    return built ? [{ column: toColumn(index, built.parts), cell: built.cell }] : []
  })
}

function toColumn(bin: number, parts: readonly PartClass[]): Column {
  const copiesById = new Map<number, number>()
  for (const part of parts) copiesById.set(part.id, (copiesById.get(part.id) ?? 0) + 1)
  return { bin, kinds: [...copiesById.keys()], copies: [...copiesById.values()] }
}

/** What rounding may have added to a value is taken off twice over. */
const SAFE = 1 + 1e-9

function readCut(
  model: SheetModel,
  duals: ArrayLike<number>,
  best: readonly (readonly StripPattern[])[],
): CoverCut | undefined {
  const needed = model.classes.reduce((sum, part) => sum + part.count * (duals[part.id] ?? 0), 0)
  if (!(needed > 0)) return undefined
  const holds = model.types.map((_, index) => {
    const most = Math.max(...best.map((patterns) => patterns[index]?.value ?? 0))
    return (most / needed) * SAFE
  })
  return { holds, name: 'linear programming over two-stage patterns' }
}

/** The rule that asks for more money, sheets in fractions. */
function strictest(
  a: CoverCut | undefined,
  b: CoverCut | undefined,
  model: SheetModel,
): CoverCut | undefined {
  if (!a || !b) return a ?? b
  const leastOf = (cut: CoverCut) =>
    Math.min(...model.types.map((type) => type.price / (cut.holds[type.stock] ?? 0)))
  return leastOf(b) > leastOf(a) ? b : a
}
