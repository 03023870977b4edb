import { invertMatrix } from './invertMatrix.ts'

/** A way to cut one board of stock `bin`: so many copies of each of these kinds. */
export interface Column {
  readonly bin: number
  readonly kinds: readonly number[]
  readonly copies: readonly number[]
}

/**
 * The linear programme over known patterns: cover the demand at least cost, pay a penalty for what is
 * left uncovered, use no more boards than there are.
 */
export interface MasterInput {
  readonly demand: readonly number[]
  /** For each piece that is not covered, by kind. */
  readonly penalties: readonly number[]
  /** Boards at most, by stock; may be infinite. */
  readonly boards: readonly number[]
  readonly costs: readonly number[]
}

export interface Master {
  readonly addColumn: (column: Column) => void
  /** Improves the present basis for some milliseconds; true when no known column helps any more. */
  readonly solve: () => boolean
  /** Value of a piece more, by kind, after `solve`; never below 0. */
  readonly pieceDuals: () => Float64Array
  /** What one board more of a stock would save, by stock; 0 where they are unlimited. */
  readonly boardDuals: () => Float64Array
  /** Pieces that no pattern covers. */
  readonly uncovered: () => number
  /** The columns in use, with how often. */
  readonly values: () => readonly (readonly [Column, number])[]
}

const TINY = 1e-9
const MOST_PIVOTS = 20_000
const STEPS_PER_CALL = 1e6
const PIVOTS_PER_REFRESH = 80
/** Beyond this a new inverse takes longer than a pause may last, and is done without. */
const MOST_ROWS_TO_REFRESH = 150

/**
 * Primal revised simplex with a dense inverse (Dantzig & Orchard-Hays 1954), for some dozens of rows.
 * Variables in order: uncovered pieces, surplus pieces, unused boards, columns. It need not be exact:
 * what is built on its duals is worked out again in whole numbers.
 */
export const createMaster = (input: MasterInput): Master => {
  const wanted = input.demand.flatMap((count, kind) => (count > 0 ? [kind] : []))
  const limited = input.boards.flatMap((most, stock) => (most < Infinity ? [stock] : []))
  const kinds = wanted.length
  const rows = kinds + limited.length
  const rowOfKind = new Int32Array(input.demand.length).fill(-1)
  wanted.forEach((kind, row) => {
    rowOfKind[kind] = row
  })
  const rowOfStock = new Int32Array(input.boards.length).fill(-1)
  limited.forEach((stock, index) => {
    rowOfStock[stock] = kinds + index
  })
  const penalties = wanted.map((kind) => input.penalties[kind] ?? 0)
  const firstUnused = 2 * kinds
  const firstColumn = firstUnused + limited.length
  const columns: Column[] = []
  const right = Float64Array.from([
    ...wanted.map((kind) => input.demand[kind] ?? 0),
    ...limited.map((stock) => input.boards[stock] ?? 0),
  ])

  const basis = new Int32Array(rows)
  for (let row = 0; row < rows; row++) basis[row] = row < kinds ? row : firstUnused + row - kinds
  let inverse = identity(rows)
  const level = Float64Array.from(right)
  const duals = new Float64Array(rows)
  const direction = new Float64Array(rows)

  const costOf = (variable: number): number => {
    if (variable < kinds) return penalties[variable] ?? 0
    if (variable < firstColumn) return 0
    return input.costs[columns[variable - firstColumn]?.bin ?? 0] ?? 0
  }

  /** The entries of a variable's column that are not zero, as rows and values. */
  const entriesOf = (variable: number): (readonly [row: number, value: number])[] => {
    if (variable < kinds) return [[variable, 1]]
    if (variable < firstUnused) return [[variable - kinds, -1]]
    if (variable < firstColumn) return [[kinds + variable - firstUnused, 1]]
    const column = columns[variable - firstColumn]
    if (column === undefined) return []
    const row = rowOfStock[column.bin] ?? -1
    const entries = column.kinds.map(
      (kind, at) => [rowOfKind[kind] ?? 0, column.copies[at] ?? 0] as const,
    )
    return row < 0 ? entries : [...entries, [row, 1]]
  }

  const computeDuals = (): void => {
    duals.fill(0)
    for (let row = 0; row < rows; row++) {
      const cost = costOf(basis[row] ?? 0)
      if (cost !== 0) addScaled(duals, inverse, row * rows, cost)
    }
  }

  const reducedCost = ({ bin, kinds: held, copies }: Column): number => {
    let cost = input.costs[bin] ?? 0
    const row = rowOfStock[bin] ?? -1
    if (row >= 0) cost -= duals[row] ?? 0
    for (let at = 0; at < held.length; at++) {
      cost -= (copies[at] ?? 0) * (duals[rowOfKind[held[at] ?? 0] ?? 0] ?? 0)
    }
    return cost
  }

  /** The variable that lowers the objective fastest, or −1. */
  const entering = (): number => {
    let least = -1e-7
    let chosen = -1
    const offer = (variable: number, cost: number): void => {
      if (cost >= least) return
      least = cost
      chosen = variable
    }
    for (let kind = 0; kind < kinds; kind++) {
      const dual = duals[kind] ?? 0
      offer(kind, (penalties[kind] ?? 0) - dual)
      offer(kinds + kind, dual)
    }
    for (let row = kinds; row < rows; row++) offer(firstUnused + row - kinds, -(duals[row] ?? 0))
    for (let at = 0; at < columns.length; at++) {
      const column = columns[at]
      if (column !== undefined) offer(firstColumn + at, reducedCost(column))
    }
    return chosen
  }

  const computeDirection = (variable: number): void => {
    direction.fill(0)
    for (const [at, value] of entriesOf(variable)) {
      for (let row = 0; row < rows; row++) {
        direction[row] = (direction[row] ?? 0) + (inverse[row * rows + at] ?? 0) * value
      }
    }
  }

  /** The row whose variable reaches 0 first, or −1. */
  const leaving = (): number => {
    let least = Infinity
    let chosen = -1
    for (let row = 0; row < rows; row++) {
      const rate = direction[row] ?? 0
      if (rate <= TINY) continue
      const ratio = Math.max(0, level[row] ?? 0) / rate
      if (ratio > least + TINY) continue
      if (ratio > least - TINY && rate <= (direction[chosen] ?? 0)) continue
      least = Math.min(least, ratio)
      chosen = row
    }
    return chosen
  }

  const pivot = (row: number, variable: number): void => {
    const step = Math.max(0, level[row] ?? 0) / (direction[row] ?? 1)
    scale(inverse, row * rows, rows, 1 / (direction[row] ?? 1))
    for (let other = 0; other < rows; other++) {
      const rate = direction[other] ?? 0
      if (other === row || rate === 0) continue
      level[other] = (level[other] ?? 0) - step * rate
      for (let at = 0; at < rows; at++) {
        const index = other * rows + at
        inverse[index] = (inverse[index] ?? 0) - rate * (inverse[row * rows + at] ?? 0)
      }
    }
    level[row] = step
    basis[row] = variable
  }

  /** Works the inverse out anew, so that rounding does not add up. */
  const refresh = (): void => {
    const matrix = new Float64Array(rows * rows)
    basis.forEach((variable, at) => {
      for (const [row, value] of entriesOf(variable)) matrix[row * rows + at] = value
    })
    const fresh = invertMatrix(matrix, rows)
    if (fresh === undefined) return
    inverse = fresh
    for (let row = 0; row < rows; row++) {
      let sum = 0
      for (let at = 0; at < rows; at++) sum += (inverse[row * rows + at] ?? 0) * (right[at] ?? 0)
      level[row] = sum
    }
  }

  const pivotsPerCall = Math.max(4, Math.floor(STEPS_PER_CALL / (rows * rows + 1)))
  let pivots = 0
  return {
    addColumn: (column) => {
      columns.push(column)
    },
    solve: () => {
      for (let count = 0; count < pivotsPerCall; count++) {
        computeDuals()
        const variable = entering()
        if (variable < 0) return true
        computeDirection(variable)
        const row = leaving()
        if (row < 0) return true
        pivot(row, variable)
        pivots++
        if (pivots % PIVOTS_PER_REFRESH === 0 && rows <= MOST_ROWS_TO_REFRESH) refresh()
        if (pivots > MOST_PIVOTS) return true
      }
      return false
    },
    pieceDuals: () =>
      Float64Array.from(rowOfKind, (row) => (row < 0 ? 0 : Math.max(0, duals[row] ?? 0))),
    boardDuals: () =>
      Float64Array.from(rowOfStock, (row) => (row < 0 ? 0 : Math.max(0, -(duals[row] ?? 0)))),
    uncovered: () =>
      basis.reduce((sum, variable, row) => (variable < kinds ? sum + (level[row] ?? 0) : sum), 0),
    values: () =>
      Array.from(basis).flatMap((variable, row) => {
        const column = columns[variable - firstColumn]
        const value = level[row] ?? 0
        return column === undefined || value <= 1e-7 ? [] : [[column, value] as const]
      }),
  }
}

const identity = (rows: number): Float64Array => {
  const matrix = new Float64Array(rows * rows)
  for (let row = 0; row < rows; row++) matrix[row * rows + row] = 1
  return matrix
}

const addScaled = (sum: Float64Array, from: Float64Array, start: number, factor: number): void => {
  for (let at = 0; at < sum.length; at++) {
    sum[at] = (sum[at] ?? 0) + factor * (from[start + at] ?? 0)
  }
}

const scale = (values: Float64Array, start: number, count: number, factor: number): void => {
  for (let at = start; at < start + count; at++) values[at] = (values[at] ?? 0) * factor
}
