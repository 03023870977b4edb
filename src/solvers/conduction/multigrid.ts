import { type Coarser, coarsen, medianSpacing, type Spacing } from './coarsen.ts'
import { residualOf } from './conjugateGradients.ts'
import type { Operator } from './operator.ts'
import { sweepBackward, sweepForward } from './smooth.ts'

interface Level {
  readonly operator: Operator
  /** Into the next coarser level; empty on the coarsest. */
  readonly parent: Int32Array
  /** What is to be corrected, and the correction. The finest level uses the caller's arrays. */
  readonly right: Float64Array
  readonly correction: Float64Array
  /** What a first correction leaves, and the second one; empty where one is enough. */
  readonly left: Float64Array
  readonly second: Float64Array
}

/** A stack of ever coarser operators that together undo an operator roughly. */
export interface Multigrid {
  readonly levels: readonly Level[]
  readonly bytes: number
}

/** With so few unknowns left, a few sweeps solve the rest. */
const FEW = 300
const SWEEPS_AT_THE_END = 6
/**
 * On so many levels below the finest, the correction is made twice. Merged places make too little of
 * smooth errors, and more so the finer the grid; twice keeps the iterations from growing with it, and
 * costs little because the levels are small.
 */
const LEVELS_MADE_TWICE = 2

/** Builds the stack, yielding after each level so that the caller may stop. */
export function* buildMultigrid(
  finest: Operator,
  spacing: Spacing,
): Generator<undefined, Multigrid> {
  const levels: Level[] = []
  let operator = finest
  let widths = spacing
  let target = 2 * medianSpacing(spacing)
  let failures = 0
  for (;;) {
    const { length, count } = operator.layout
    const depth = levels.length
    const coarser = count > FEW && failures < 40 ? coarsen(operator, widths, target) : undefined
    if (coarser === undefined && count > FEW && failures < 40) {
      // Nothing is small enough yet to be merged.
      failures++
      target *= 2
      continue
    }
    levels.push({
      operator,
      parent: coarser?.parent ?? new Int32Array(0),
      right: new Float64Array(depth === 0 ? 0 : length),
      correction: new Float64Array(depth === 0 ? 0 : length),
      left: new Float64Array(isMadeTwice(depth, coarser) ? length : 0),
      second: new Float64Array(isMadeTwice(depth, coarser) ? length : 0),
    })
    yield
    if (coarser === undefined) break
    operator = coarser.operator
    widths = coarser.spacing
    target *= 2
  }
  return { levels, bytes: sizeOf(levels) }
}

const isMadeTwice = (depth: number, coarser: Coarser | undefined): boolean =>
  depth > 0 && depth <= LEVELS_MADE_TWICE && coarser !== undefined

/** Bytes of all levels but the finest operator, which the caller has anyway. */
const sizeOf = (levels: readonly Level[]): number =>
  levels.reduce((sum, { operator, parent, right, correction, left, second }, i) => {
    const { layout, linkX, linkY, linkZ, toAir, diagonal, inverse } = operator
    const arrays = [linkX, linkY, linkZ, toAir, diagonal, inverse, layout.numberAt, layout.runs]
    const own = i === 0 ? 0 : arrays.reduce((n, a) => n + a.byteLength, 0)
    return (
      sum + own + [parent, right, correction, left, second].reduce((n, a) => n + a.byteLength, 0)
    )
  }, 0)

/**
 * One cycle down and up: writes into `z` roughly what the finest operator would need to give `r`, and returns
 * r·z. The sweeps before and after mirror each other, so that it suits conjugate gradients (Tatebe
 * 1993, The multigrid preconditioned conjugate gradient method).
 */
export const applyMultigrid = ({ levels }: Multigrid, r: Float64Array, z: Float64Array): number =>
  descend(levels, 0, r, z)

const descend = (
  levels: readonly Level[],
  depth: number,
  r: Float64Array,
  z: Float64Array,
): number => {
  const level = levels[depth]
  if (level === undefined) return 0
  const next = levels[depth + 1]
  if (next === undefined) return solveCoarsest(level.operator, r, z)
  next.right.fill(0)
  sweepForward(level.operator, r, z, level.parent, next.right)
  descend(levels, depth + 1, next.right, next.correction)
  if (next.second.length > 0) {
    residualOf(next.operator, next.right, next.correction, next.left)
    descend(levels, depth + 1, next.left, next.second)
    addTo(next.correction, next.second)
  }
  return sweepBackward(level.operator, r, z, level.parent, next.correction)
}

const addTo = (sum: Float64Array, more: Float64Array): void => {
  for (let i = 0; i < sum.length; i++) sum[i] = (sum[i] ?? 0) + (more[i] ?? 0)
}

const NONE = new Int32Array(0)
const EMPTY = new Float64Array(0)

const solveCoarsest = (operator: Operator, r: Float64Array, z: Float64Array): number => {
  // From 0 forward, then symmetric pairs of sweeps that start from what is there.
  sweepForward(operator, r, z, NONE, EMPTY)
  let dot = sweepBackward(operator, r, z, NONE, EMPTY)
  for (let n = 1; n < SWEEPS_AT_THE_END; n++) {
    resweepForward(operator, r, z)
    dot = sweepBackward(operator, r, z, NONE, EMPTY)
  }
  return dot
}

/** A forward sweep over what `z` already holds. */
const resweepForward = (
  { layout, linkX: lx, linkY: ly, linkZ: lz, inverse }: Operator,
  r: Float64Array,
  z: Float64Array,
): void => {
  const { runs } = layout
  for (let n = 0; n < runs.length; n += 6) {
    const end = runs[n + 1] ?? 0
    const [yl, yh] = [runs[n + 2] ?? 0, runs[n + 3] ?? 0]
    const [zl, zh] = [runs[n + 4] ?? 0, runs[n + 5] ?? 0]
    for (let c = runs[n] ?? 0; c < end; c++) {
      z[c] =
        (inverse[c] ?? 0) *
        ((r[c] ?? 0) +
          (lx[c] ?? 0) * (z[c - 1] ?? 0) +
          (lx[c + 1] ?? 0) * (z[c + 1] ?? 0) +
          (ly[c] ?? 0) * (z[c + yl] ?? 0) +
          (ly[c + yh] ?? 0) * (z[c + yh] ?? 0) +
          (lz[c] ?? 0) * (z[c + zl] ?? 0) +
          (lz[c + zh] ?? 0) * (z[c + zh] ?? 0))
    }
  }
}
