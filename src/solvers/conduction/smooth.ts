import type { Operator } from './operator.ts'

/**
 * A Gauss-Seidel sweep from low to high, starting with z = 0, so that only the neighbours already met
 * count. What is left over after it is what the neighbours not yet met give, and is added up in the
 * `parent`s' entries of `coarse`. The leftover of a slab is taken one slab behind the sweep, while the
 * slab is still in the processor's cache. With an empty `parent`, only the sweep is done.
 */
export const sweepForward = (
  { layout, linkX, linkY, linkZ, inverse }: Operator,
  r: Float64Array,
  z: Float64Array,
  parent: Int32Array,
  coarse: Float64Array,
): void => {
  const { runs, slabRuns } = layout
  const slabs = slabRuns.length - 1
  const isPassedOn = parent.length > 0
  for (let k = 0; k <= slabs; k++) {
    if (k < slabs) {
      sweepRuns(runs, slabRuns[k] ?? 0, slabRuns[k + 1] ?? 0, linkX, linkY, linkZ, inverse, r, z)
    }
    if (k > 0 && isPassedOn) {
      passOn(runs, slabRuns[k - 1] ?? 0, slabRuns[k] ?? 0, linkX, linkY, linkZ, z, parent, coarse)
    }
  }
}

const sweepRuns = (
  runs: Int32Array,
  from: number,
  to: number,
  lx: Float64Array,
  ly: Float64Array,
  lz: Float64Array,
  inverse: Float64Array,
  r: Float64Array,
  z: Float64Array,
): void => {
  for (let n = from * 6; n < to * 6; n += 6) {
    const first = runs[n] ?? 0
    const end = runs[n + 1] ?? 0
    const yl = runs[n + 2] ?? 0
    const zl = runs[n + 4] ?? 0
    // The value just computed is carried along instead of being read back.
    let last = z[first - 1] ?? 0
    for (let c = first; c < end; c++) {
      last =
        (inverse[c] ?? 0) *
        ((r[c] ?? 0) +
          (ly[c] ?? 0) * (z[c + yl] ?? 0) +
          (lz[c] ?? 0) * (z[c + zl] ?? 0) +
          (lx[c] ?? 0) * last)
      z[c] = last
    }
  }
}

const passOn = (
  runs: Int32Array,
  from: number,
  to: number,
  lx: Float64Array,
  ly: Float64Array,
  lz: Float64Array,
  z: Float64Array,
  parent: Int32Array,
  coarse: Float64Array,
): void => {
  for (let n = from * 6; n < to * 6; n += 6) {
    const end = runs[n + 1] ?? 0
    const yh = runs[n + 3] ?? 0
    const zh = runs[n + 5] ?? 0
    for (let c = runs[n] ?? 0; c < end; c++) {
      const p = parent[c] ?? 0
      coarse[p] =
        (coarse[p] ?? 0) +
        (lx[c + 1] ?? 0) * (z[c + 1] ?? 0) +
        (ly[c + yh] ?? 0) * (z[c + yh] ?? 0) +
        (lz[c + zh] ?? 0) * (z[c + zh] ?? 0)
    }
  }
}

/**
 * Adds the coarse correction, then sweeps from high to low; returns r·z. The correction of a slab is
 * added one slab ahead of the sweep. With an empty `parent`, only the sweep is done.
 */
export const sweepBackward = (
  { layout, linkX, linkY, linkZ, inverse }: Operator,
  r: Float64Array,
  z: Float64Array,
  parent: Int32Array,
  coarse: Float64Array,
): number => {
  const { runs, slabRuns } = layout
  const slabs = slabRuns.length - 1
  const isGiven = parent.length > 0
  let dot = 0
  if (isGiven) addFrom(runs, slabRuns, slabs - 1, z, parent, coarse)
  for (let k = slabs - 1; k >= 0; k--) {
    if (isGiven && k > 0) addFrom(runs, slabRuns, k - 1, z, parent, coarse)
    const [from, to] = [slabRuns[k] ?? 0, slabRuns[k + 1] ?? 0]
    dot += sweepRunsBack(runs, from, to, linkX, linkY, linkZ, inverse, r, z)
  }
  return dot
}

const addFrom = (
  runs: Int32Array,
  slabRuns: Int32Array,
  k: number,
  z: Float64Array,
  parent: Int32Array,
  coarse: Float64Array,
): void => {
  const [from, to] = [slabRuns[k] ?? 0, slabRuns[k + 1] ?? 0]
  if (from === to) return
  // Unknowns of a slab follow one another without a gap.
  const first = runs[from * 6] ?? 0
  const end = runs[(to - 1) * 6 + 1] ?? 0
  for (let c = first; c < end; c++) z[c] = (z[c] ?? 0) + (coarse[parent[c] ?? 0] ?? 0)
}

const sweepRunsBack = (
  runs: Int32Array,
  from: number,
  to: number,
  lx: Float64Array,
  ly: Float64Array,
  lz: Float64Array,
  inverse: Float64Array,
  r: Float64Array,
  z: Float64Array,
): number => {
  let dot = 0
  for (let n = (to - 1) * 6; n >= from * 6; n -= 6) {
    const first = runs[n] ?? 0
    const end = runs[n + 1] ?? 0
    const yl = runs[n + 2] ?? 0
    const yh = runs[n + 3] ?? 0
    const zl = runs[n + 4] ?? 0
    const zh = runs[n + 5] ?? 0
    let last = z[end] ?? 0
    for (let c = end - 1; c >= first; c--) {
      const right = r[c] ?? 0
      last =
        (inverse[c] ?? 0) *
        (right +
          (lx[c] ?? 0) * (z[c - 1] ?? 0) +
          (ly[c] ?? 0) * (z[c + yl] ?? 0) +
          (ly[c + yh] ?? 0) * (z[c + yh] ?? 0) +
          (lz[c] ?? 0) * (z[c + zl] ?? 0) +
          (lz[c + zh] ?? 0) * (z[c + zh] ?? 0) +
          (lx[c + 1] ?? 0) * last)
      z[c] = last
      dot += right * last
    }
  }
  return dot
}
