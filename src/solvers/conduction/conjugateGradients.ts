import type { Operator } from './operator.ts'

/** Writes into `z` roughly what the operator would need to give `r`; returns r·z. */
export type Preconditioner = (r: Float64Array, z: Float64Array) => number

export interface SolveProgress {
  readonly iterations: number
  /** Norm of the residual, relative to the norm of the source. */
  readonly relativeResidual: number
}

export interface Solved extends SolveProgress {
  readonly hasConverged: boolean
  readonly bytes: number
}

/** Far above what any sound world needs; reaching it is reported, never an endless loop. */
const MOST_ITERATIONS = 2000

/**
 * Preconditioned conjugate gradients (Hestenes and Stiefel 1952) on `u` in place, from what it holds.
 * Yields after each iteration.
 */
export function* solveByConjugateGradients(
  operator: Operator,
  source: Float64Array,
  u: Float64Array,
  precondition: Preconditioner,
  tolerance: number,
): Generator<SolveProgress, Solved> {
  const { length } = operator.layout
  const [r, z, p, q] = [0, 1, 2, 3].map(() => new Float64Array(length))
  if (r === undefined || z === undefined || p === undefined || q === undefined) {
    throw new Error('solveByConjugateGradients: no memory')
  }
  const bytes = 4 * r.byteLength
  const norm = Math.sqrt(dotOf(source, source))
  const limit = tolerance * norm
  residualOf(operator, source, u, r)
  let size = Math.sqrt(dotOf(r, r))
  let iterations = 0
  let rho = 0
  const state = (): SolveProgress => ({
    iterations,
    relativeResidual: norm > 0 ? size / norm : 0,
  })
  while (size > limit && iterations < MOST_ITERATIONS) {
    const before = rho
    rho = precondition(r, z)
    const energy = turnAndApply(operator, z, before > 0 ? rho / before : 0, p, q)
    // Rounding has used up all that could be gained.
    if (!(energy > 0)) break
    size = Math.sqrt(step(rho / energy, p, q, u, r))
    iterations++
    yield state()
  }
  return { ...state(), hasConverged: size <= limit, bytes }
}

const dotOf = (a: Float64Array, b: Float64Array): number => {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0)
  return sum
}

/** Moves along p; returns the square of the new residual's norm. */
const step = (
  alpha: number,
  p: Float64Array,
  q: Float64Array,
  u: Float64Array,
  r: Float64Array,
): number => {
  let sum = 0
  for (let i = 0; i < p.length; i++) {
    u[i] = (u[i] ?? 0) + alpha * (p[i] ?? 0)
    const left = (r[i] ?? 0) - alpha * (q[i] ?? 0)
    r[i] = left
    sum += left * left
  }
  return sum
}

/** p = z + beta p and q = (operator) p, slab by slab; returns p·q. */
const turnAndApply = (
  operator: Operator,
  z: Float64Array,
  beta: number,
  p: Float64Array,
  q: Float64Array,
): number => {
  const { runs, slabRuns } = operator.layout
  const slabs = slabRuns.length - 1
  let sum = 0
  turn(runs, slabRuns, 0, z, beta, p)
  for (let k = 0; k < slabs; k++) {
    // The operator needs p of the next slab as well.
    if (k + 1 < slabs) turn(runs, slabRuns, k + 1, z, beta, p)
    sum += applyRuns(operator, slabRuns[k] ?? 0, slabRuns[k + 1] ?? 0, p, q)
  }
  return sum
}

const turn = (
  runs: Int32Array,
  slabRuns: Int32Array,
  k: number,
  z: Float64Array,
  beta: number,
  p: Float64Array,
): void => {
  const [from, to] = [slabRuns[k] ?? 0, slabRuns[k + 1] ?? 0]
  if (from === to) return
  const end = runs[(to - 1) * 6 + 1] ?? 0
  for (let c = runs[from * 6] ?? 0; c < end; c++) p[c] = (z[c] ?? 0) + beta * (p[c] ?? 0)
}

const applyRuns = (
  { layout, linkX: lx, linkY: ly, linkZ: lz, diagonal }: Operator,
  from: number,
  to: number,
  p: Float64Array,
  q: Float64Array,
): number => {
  const { runs } = layout
  let sum = 0
  for (let n = from * 6; n < to * 6; n += 6) {
    const end = runs[n + 1] ?? 0
    const yl = runs[n + 2] ?? 0
    const yh = runs[n + 3] ?? 0
    const zl = runs[n + 4] ?? 0
    const zh = runs[n + 5] ?? 0
    for (let c = runs[n] ?? 0; c < end; c++) {
      const own = p[c] ?? 0
      const out =
        (diagonal[c] ?? 0) * own -
        (lx[c] ?? 0) * (p[c - 1] ?? 0) -
        (lx[c + 1] ?? 0) * (p[c + 1] ?? 0) -
        (ly[c] ?? 0) * (p[c + yl] ?? 0) -
        (ly[c + yh] ?? 0) * (p[c + yh] ?? 0) -
        (lz[c] ?? 0) * (p[c + zl] ?? 0) -
        (lz[c + zh] ?? 0) * (p[c + zh] ?? 0)
      q[c] = out
      sum += own * out
    }
  }
  return sum
}

/** r = source - (operator) u. */
export const residualOf = (
  operator: Operator,
  source: Float64Array,
  u: Float64Array,
  r: Float64Array,
): void => {
  const { runs } = operator.layout
  applyRuns(operator, 0, runs.length / 6, u, r)
  for (let i = 0; i < r.length; i++) r[i] = (source[i] ?? 0) - (r[i] ?? 0)
}

/** Each unknown by its own links alone (Jacobi): the plain preconditioner that others are held against. */
export const jacobi =
  ({ inverse }: Operator): Preconditioner =>
  (r, z) => {
    let dot = 0
    for (let i = 0; i < r.length; i++) {
      const right = r[i] ?? 0
      const out = right * (inverse[i] ?? 0)
      z[i] = out
      dot += right * out
    }
    return dot
  }
