import type { Triple } from './world.ts'

/**
 * Numbers for the places of a grid that hold an unknown, and the way from each to its neighbours.
 * Unknowns are numbered from 1 in the grid's order, x fastest, so neighbours along x are c - 1 and
 * c + 1. Arrays over the unknowns are `length` long: entry 0 and the `pad` at the end belong to no
 * unknown, hold 0, and stand for neighbours that are not there.
 */
export interface Layout {
  readonly shape: Triple
  readonly count: number
  readonly length: number
  /** Number of the unknown at each place of the grid; 0 where there is none. */
  readonly numberAt: Int32Array
  /**
   * Stretches of unknowns with the same steps to their neighbours, six entries each: first, one past
   * the last, and the steps to the neighbours at lower y, higher y, lower z, higher z.
   */
  readonly runs: Int32Array
  /** For each z: where its runs begin, as a run's number; one more entry at the end. */
  readonly slabRuns: Int32Array
}

const RUN = 6

/** Lays out the unknowns of a grid of `shape`, at the places where `isThere` is 1. */
export const layOut = (shape: Triple, isThere: Uint8Array): Layout => {
  const [nx, ny, nz] = shape
  const numberAt = new Int32Array(nx * ny * nz)
  let count = 0
  for (let place = 0; place < numberAt.length; place++) {
    if (isThere[place] === 1) numberAt[place] = ++count
  }
  const pad = nx + 1
  const padStart = count + 1
  const slabRuns = new Int32Array(nz + 1)
  let runs = new Int32Array(RUN * 1024)
  let used = 0
  for (let k = 0; k < nz; k++) {
    slabRuns[k] = used / RUN
    for (let j = 0; j < ny; j++) {
      const row = (k * ny + j) * nx
      let isOpen = false
      let first = 0
      let [a, b, c, d] = [0, 0, 0, 0]
      for (let i = 0; i < nx; i++) {
        const n = numberAt[row + i] ?? 0
        if (n === 0) continue
        const yLow = j > 0 ? (numberAt[row + i - nx] ?? 0) : 0
        const yHigh = j < ny - 1 ? (numberAt[row + i + nx] ?? 0) : 0
        const zLow = k > 0 ? (numberAt[row + i - nx * ny] ?? 0) : 0
        const zHigh = k < nz - 1 ? (numberAt[row + i + nx * ny] ?? 0) : 0
        // A missing neighbour keeps the step that leads into the pad.
        const goesOn =
          isOpen &&
          follows(n, yLow, a, count) &&
          follows(n, yHigh, b, count) &&
          follows(n, zLow, c, count) &&
          follows(n, zHigh, d, count)
        if (!goesOn) {
          const toPad = padStart - n
          a = yLow > 0 ? yLow - n : toPad
          b = yHigh > 0 ? yHigh - n : toPad
          c = zLow > 0 ? zLow - n : toPad
          d = zHigh > 0 ? zHigh - n : toPad
          if (used + RUN > runs.length) runs = grown(runs)
          first = n
          runs[used] = first
          runs[used + 2] = a
          runs[used + 3] = b
          runs[used + 4] = c
          runs[used + 5] = d
          used += RUN
          isOpen = true
        }
        runs[used - RUN + 1] = n + 1
      }
    }
  }
  slabRuns[nz] = used / RUN
  return {
    shape,
    count,
    length: count + 1 + pad,
    numberAt,
    runs: runs.slice(0, used),
    slabRuns,
  }
}

/** Whether the step that the run has leads to this neighbour, or into the pad if there is none. */
const follows = (n: number, neighbour: number, step: number, count: number): boolean =>
  neighbour > 0 ? neighbour - n === step : n + step > count

const grown = (runs: Int32Array): Int32Array<ArrayBuffer> => {
  const larger = new Int32Array(2 * runs.length)
  larger.set(runs)
  return larger
}
