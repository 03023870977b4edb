import type { Column } from '../masterProgram.ts'
import { createKnapsack, type Knapsack } from './knapsack.ts'

/** Sizes of pieces and boards, with the patterns found so far: what packing in them needs. */
export interface PackingSpace {
  readonly weights: readonly number[]
  readonly caps: readonly number[]
  readonly knapsack: Knapsack
  /** Patterns that linear programmes have used; grows. */
  readonly pool: Column[]
  readonly known: Set<string>
}

export const createSpace = (weights: readonly number[], caps: readonly number[]): PackingSpace => ({
  weights,
  caps,
  knapsack: createKnapsack(weights, Math.max(0, ...caps)),
  pool: [],
  known: new Set(),
})

/** The same pieces and boards with one more board size: its pattern pool starts from what is known. */
export const withBoard = (space: PackingSpace, cap: number): PackingSpace => ({
  ...space,
  caps: [...space.caps, cap],
  pool: [...space.pool],
  known: new Set(space.known),
})

/** Remembers a pattern; false when it was known. */
export const rememberColumn = (space: PackingSpace, column: Column): boolean => {
  const key = `${column.bin}:${column.kinds.join(',')}:${column.copies.join(',')}`
  if (space.known.has(key)) return false
  space.known.add(key)
  space.pool.push(column)
  return true
}

export const toColumn = (bin: number, counts: readonly number[]): Column => {
  const kinds = counts.flatMap((count, kind) => (count > 0 ? [kind] : []))
  return { bin, kinds, copies: kinds.map((kind) => counts[kind] ?? 0) }
}
