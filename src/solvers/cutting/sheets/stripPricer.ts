import type { SheetCell } from './packedSheet.ts'
import type { PartClass, SheetModel } from './sheetModel.ts'
import { buildBranch, buildLeaf } from './sliceTree.ts'

/** The most valuable way to cut a sheet of one type into strips and the strips into parts. */
export interface StripPattern {
  readonly value: number
  /** Calls back for each part. */
  readonly build: () =>
    | { readonly cell: SheetCell; readonly parts: readonly PartClass[] }
    | undefined
}

/** Finds the best two-stage pattern of each type, in the model's order, for values of parts by id. */
export type StripPricer = (values: ArrayLike<number>) => readonly StripPattern[]

/** A part, one way round, in a strip. */
interface Lying {
  readonly part: PartClass
  readonly turned: boolean
  readonly along: number
  readonly across: number
}

/** More end points than this take too long. */
const MOST_POINTS = 4000

/**
 * Two-stage patterns by dynamic programming (Gilmore & Gomory 1965): strips along the sheet's length or
 * its width, as many copies of a part as fit, a last cut to trim parts that are narrower than the strip.
 * Undefined where parts end at too many different points.
 */
export function createStripPricer(
  model: SheetModel,
  stripsAlongLength: boolean,
): StripPricer | undefined {
  const lying = listLying(model, stripsAlongLength)
  const sizes = model.types.map((type) =>
    stripsAlongLength ? [type.length, type.width] : [type.width, type.length],
  )
  const alongs = lying.map(({ along }) => along)
  const acrosses = lying.map(({ across }) => across)
  const mostAlong = Math.max(...sizes.map(([along = 0]) => along))
  const mostAcross = Math.max(...sizes.map(([, across = 0]) => across))
  const row = createKnapsackRow(alongs, mostAlong)
  const stack = createKnapsackRow(acrosses, mostAcross)
  if (!row || !stack) return undefined
  // Strips as wide as the widest part in them: one for each of the parts' widths.
  return (values) => {
    row.solve(lying.map(({ part }) => values[part.id] ?? 0))
    return sizes.map(([along = 0, across = 0]) => {
      const stripValues = lying.map((_, last) => row.valueAt(last, along))
      stack.solve(stripValues)
      const value = stack.valueAt(lying.length - 1, across)
      const build = () => {
        stack.solve(lying.map((_, last) => row.valueAt(last, along)))
        const strips = stack.trace(lying.length - 1, across).map((last) => row.trace(last, along))
        return buildCell(lying, strips, stripsAlongLength)
      }
      return { value, build }
    })
  }
}

function listLying(model: SheetModel, stripsAlongLength: boolean): readonly Lying[] {
  return model.classes
    .flatMap((part) => {
      const ways = part.mayTurn ? [false, true] : [false]
      return ways.map((turned) => {
        const isAlong = turned !== stripsAlongLength
        return {
          part,
          turned,
          along: isAlong ? part.length : part.width,
          across: isAlong ? part.width : part.length,
        }
      })
    })
    .sort((a, b) => a.across - b.across)
}

function buildCell(
  lying: readonly Lying[],
  strips: readonly (readonly number[])[],
  stripsAlongLength: boolean,
): { readonly cell: SheetCell; readonly parts: readonly PartClass[] } | undefined {
  const parts: PartClass[] = []
  const rows = strips.flatMap((strip) => {
    const pieces = strip.flatMap((index) => lying[index] ?? [])
    parts.push(...pieces.map(({ part }) => part))
    const [only] = pieces
    if (!only) return []
    // A strip of one part is the part itself in the row of strips.
    if (pieces.length === 1) return [buildLeaf(only.part, only.turned, !stripsAlongLength)]
    return [buildBranch(pieces.map((each) => buildLeaf(each.part, each.turned, stripsAlongLength)))]
  })
  if (rows.length === 0) return undefined
  return { cell: { root: buildBranch(rows), alongLength: !stripsAlongLength }, parts }
}

interface KnapsackRow {
  readonly solve: (values: readonly number[]) => void
  /** The most that the first items, up to `last`, are worth in a length. */
  readonly valueAt: (last: number, length: number) => number
  /** Those items, by index. */
  readonly trace: (last: number, length: number) => readonly number[]
}

/** An unbounded knapsack for all lengths and all beginnings of the list of items. */
function createKnapsackRow(sizes: readonly number[], most: number): KnapsackRow | undefined {
  const points = listEndPoints(sizes, most)
  if (!points) return undefined
  const count = points.length
  const rests = sizes.map((size) =>
    Int32Array.from(points, (point) => floorIndex(points, point - size)),
  )
  const tables = sizes.map(() => new Float64Array(count))
  const none = new Float64Array(count)
  let values: readonly number[] = []
  return {
    solve: (given) => {
      values = given
      for (const [item, table] of tables.entries()) {
        const before = tables[item - 1] ?? none
        const rest = rests[item]
        const value = values[item] ?? 0
        let last = 0
        for (let at = 0; at < count; at++) {
          const from = rest?.[at] ?? -1
          const taken = from >= 0 ? (table[from] ?? 0) + value : 0
          last = Math.max(last, before[at] ?? 0, taken)
          table[at] = last
        }
      }
    },
    valueAt: (last, length) => tables[last]?.[floorIndex(points, length)] ?? 0,
    trace: (last, length) => {
      const items: number[] = []
      let item = last
      let at = floorIndex(points, length)
      while (item >= 0 && at >= 0) {
        const value = tables[item]?.[at] ?? 0
        if (value === 0) break
        if (value === (tables[item - 1]?.[at] ?? 0)) item--
        else if (at > 0 && value === (tables[item]?.[at - 1] ?? 0)) at--
        else {
          items.push(item)
          at = rests[item]?.[at] ?? -1
        }
      }
      return items
    },
  }
}

/** All sums of sizes up to `most`, rising (Christofides & Whitlock 1977); undefined when too many. */
function listEndPoints(sizes: readonly number[], most: number): readonly number[] | undefined {
  const points = new Set([0])
  for (const size of new Set(sizes)) {
    // A set hands out what is added while it is walked, so all multiples are reached.
    for (const point of points) if (point + size <= most) points.add(point + size)
    if (points.size > MOST_POINTS) return undefined
  }
  return [...points].sort((a, b) => a - b)
}

/** Index of the last point that is not above `length`, or −1. */
function floorIndex(points: readonly number[], length: number): number {
  let low = 0
  let high = points.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((points[middle] ?? 0) <= length) low = middle + 1
    else high = middle
  }
  return low - 1
}
