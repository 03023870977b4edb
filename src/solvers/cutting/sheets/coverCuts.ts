import { type DualFunction, listDualFunctions } from './dualFeasible.ts'
import type { PartClass, SheetModel, SheetType } from './sheetModel.ts'

/**
 * A rule that every purchase that takes all parts obeys: the sum of `holds[type]` times the number of
 * sheets of that type is at least 1.
 */
export interface CoverCut {
  readonly holds: readonly number[]
  readonly name: string
}

/**
 * Rules from area and from pairs of dual feasible functions, one for each side (Fekete & Schepers 2001):
 * parts weigh f(length) × g(width), the lesser of both ways round where they may turn, and a sheet holds
 * no more than f(its length) × g(its width). Rules that another makes needless are left out. Pauses
 * often.
 */
export function* listCoverCuts(model: SheetModel): Generator<undefined, readonly CoverCut[]> {
  const { types, classes } = model
  const cuts: CoverCut[] = []
  yield* addCuts(cuts, classes, types, types.length)
  // Parts that only some types take must be covered by these alone.
  const most = types.length <= MOST_TYPES_IN_SETS ? 2 ** types.length - 1 : 0
  for (let set = 1; set < most; set++) {
    const inside = types.filter((_, index) => (set & (1 << index)) !== 0)
    const outside = types.filter((_, index) => (set & (1 << index)) === 0)
    const bound = classes.filter((part) => !outside.some((type) => hasRoomFor(type, part)))
    if (bound.length > 0) yield* addCuts(cuts, bound, inside, types.length)
  }
  return cuts
}

/** The part lies within the sheet one way round at least. */
function hasRoomFor(type: SheetType, part: PartClass): boolean {
  return (
    (part.length <= type.length && part.width <= type.width) ||
    (part.mayTurn && part.width <= type.length && part.length <= type.width)
  )
}

const MOST_TYPES_IN_SETS = 6
const MOST_CUTS = 60
/** Products of weights between two pauses: a millisecond or two. */
const WORK_PER_STEP = 100_000

function* addCuts(
  cuts: CoverCut[],
  classes: readonly PartClass[],
  types: readonly SheetType[],
  typeCount: number,
): Generator<undefined, void> {
  if (classes.length === 0 || types.length === 0) return
  const longest = Math.max(...types.map((type) => type.length))
  const widest = Math.max(...types.map((type) => type.width))
  const sides = classes.flatMap((part) =>
    part.mayTurn ? [part.length, part.width] : [part.length],
  )
  const acrossSides = classes.flatMap((part) =>
    part.mayTurn ? [part.length, part.width] : [part.width],
  )
  const lengthFunctions = listDualFunctions(longest, distinct(sides))
  const widthFunctions = listDualFunctions(widest, distinct(acrossSides))
  const along = lengthFunctions.map((each) => tabulate(each, classes, types))
  const across = widthFunctions.map((each) => tabulate(each, classes, types))
  let work = 0
  for (const f of along) {
    for (const g of across) {
      const needed = sumWeights(f, g, classes, { longest, widest })
      if (needed <= 0) continue
      const holds = new Array<number>(typeCount).fill(0)
      for (const [at, type] of types.entries()) {
        // A little more than it holds, so that rounding never makes a rule too strict.
        holds[type.stock] = (((f.typeLengths[at] ?? 0) * (g.typeWidths[at] ?? 0)) / needed) * SAFE
      }
      addUndominated(cuts, { holds, name: nameOf(f.name, g.name) })
    }
    work += across.length * classes.length
    if (work < WORK_PER_STEP) continue
    yield undefined
    work = 0
  }
}

/** Parts that fill their sheets to the last must not seem too much because sums are rounded. */
export const SAFE = 1 + 1e-9

interface Table {
  readonly name: string
  readonly lengths: Float64Array
  readonly widths: Float64Array
  readonly typeLengths: readonly number[]
  readonly typeWidths: readonly number[]
}

function tabulate(
  { name, valueAt }: DualFunction,
  classes: readonly PartClass[],
  types: readonly SheetType[],
): Table {
  return {
    name,
    lengths: Float64Array.from(classes, (part) => valueAt(part.length)),
    widths: Float64Array.from(classes, (part) => valueAt(part.width)),
    typeLengths: types.map((type) => valueAt(type.length)),
    typeWidths: types.map((type) => valueAt(type.width)),
  }
}

function sumWeights(
  f: Table,
  g: Table,
  classes: readonly PartClass[],
  { longest, widest }: { readonly longest: number; readonly widest: number },
): number {
  let sum = 0
  for (let at = 0; at < classes.length; at++) {
    const part = classes[at]
    if (!part) continue
    const drawn = (f.lengths[at] ?? 0) * (g.widths[at] ?? 0)
    const turned = (f.widths[at] ?? 0) * (g.lengths[at] ?? 0)
    const fitsDrawn = part.length <= longest && part.width <= widest
    const fitsTurned = part.mayTurn && part.width <= longest && part.length <= widest
    if (fitsDrawn && fitsTurned) sum += part.count * Math.min(drawn, turned)
    else sum += part.count * (fitsTurned ? turned : drawn)
  }
  return sum
}

function addUndominated(cuts: CoverCut[], cut: CoverCut): void {
  for (const other of cuts) if (isStricter(other, cut)) return
  let kept = 0
  for (const other of cuts) if (!isStricter(cut, other)) cuts[kept++] = other
  cuts.length = kept
  if (cuts.length < MOST_CUTS) cuts.push(cut)
}

function isStricter(a: CoverCut, b: CoverCut): boolean {
  for (let at = 0; at < a.holds.length; at++) {
    if ((a.holds[at] ?? 0) > (b.holds[at] ?? 0) + 1e-12) return false
  }
  return true
}

function nameOf(along: string, across: string): string {
  if (along === 'length' && across === 'length') return 'area'
  return `dual feasible functions: ${along} × ${across}`
}

function distinct(values: readonly number[]): readonly number[] {
  return [...new Set(values)]
}
