import type { PartClass } from './sheetModel.ts'
import type { SliceNode } from './sliceTree.ts'

/**
 * Where a part can go in a tree of cuts:
 * `start` in an empty cell; `join` a row; `wrap`: beside one part of a row, across the row; `span`: beside
 * the first few pieces of a row, across it; `lift`: beside all that is in the cell.
 */
export interface Place {
  readonly kind: 'start' | 'join' | 'wrap' | 'span' | 'lift'
  readonly sheet: number
  readonly cell: number
  /** From the root to the branch, by child. */
  readonly path: readonly number[]
  /** The child that is wrapped, or the number of children spanned. */
  readonly child: number
  readonly turned: boolean
  /** For `start`: the row runs along the sheet's length. */
  readonly alongLength: boolean
}

/** The search's own memory, made once and used again. */
export interface PlaceSearch {
  readonly stages: number
  readonly random: () => number
  /** The share of places that are overlooked on purpose, so that a search does not repeat itself. */
  blink: number
  /** Nodes looked at so far: the measure of effort. */
  effort: number
  best: Place | undefined
  bestScore: number
  sheet: number
  cell: number
  part: PartClass | undefined
  along: number
  cross: number
  alongLength: boolean
  readonly branches: SliceNode[]
  readonly steps: number[]
}

export function createPlaceSearch(stages: number, random: () => number): PlaceSearch {
  return {
    stages,
    random,
    blink: 0,
    effort: 0,
    best: undefined,
    bestScore: Number.NEGATIVE_INFINITY,
    sheet: 0,
    cell: 0,
    part: undefined,
    along: 0,
    cross: 0,
    alongLength: true,
    branches: [],
    steps: [],
  }
}

/** Keeps a place that is better than the best so far, unless chance overlooks it. */
export function proposePlace(
  search: PlaceSearch,
  score: number,
  kind: Place['kind'],
  level: number,
  child: number,
  turn: number,
): void {
  if (score <= search.bestScore) return
  if (search.blink > 0 && search.random() < search.blink) return
  search.bestScore = score
  search.best = {
    kind,
    sheet: search.sheet,
    cell: search.cell,
    path: level > 0 ? search.steps.slice(0, level) : NO_STEPS,
    child,
    turned: turn === 1,
    alongLength: search.alongLength,
  }
}

const NO_STEPS: readonly number[] = []
