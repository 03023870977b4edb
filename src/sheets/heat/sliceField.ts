import type { FieldGrid } from '../../solvers/conduction/fieldGrid.ts'
import type { CutPlane } from '../views/cutSolid.ts'

/** Values at the crossings of two sets of lines in the plane of a section; between them, bilinear. */
export interface FieldSlice {
  /** Rising, model mm, as the section is drawn: u to the right, v up. */
  readonly uMm: Float64Array
  readonly vMm: Float64Array
  /** At line i of u and j of v: entry j·nu + i. In the field's own unit: a share for a hive. */
  readonly value: Float64Array
}

const MM_PER_M = 1000

/**
 * The field in a plane, seen as `cutSolid` sees its faces from the plus end: u is minus z across the
 * hive and x along it. A plane beyond the grid takes the values of the grid's nearest side.
 */
export const sliceField = (grid: FieldGrid, { axis, at }: CutPlane): FieldSlice => {
  const isAcross = axis === 'x'
  const across = isAcross ? grid.xM : grid.zM
  const level = isAcross ? grid.zM : grid.xM
  const [nx, ny, nu] = [grid.xM.length, grid.yM.length, level.length]
  const { low, share } = placeOf(across, at / MM_PER_M)
  const next = Math.min(low + 1, across.length - 1)
  // One step along a row of the slice, and from one plane of the cut axis to the next.
  const [stepU, stepCut] = isAcross ? [nx * ny, 1] : [1, nx * ny]
  const value = new Float64Array(nu * ny)
  for (let j = 0; j < ny; j += 1) {
    for (let i = 0; i < nu; i += 1) {
      const start = j * nx + (isAcross ? nu - 1 - i : i) * stepU
      const a = grid.temperatureC[start + low * stepCut] ?? 0
      const b = grid.temperatureC[start + next * stepCut] ?? 0
      value[j * nu + i] = a + (b - a) * share
    }
  }
  const uMm = Float64Array.from(level, (m) => m * MM_PER_M)
  if (isAcross)
    uMm.reverse().forEach((u, i) => {
      uMm[i] = -u
    })
  return { uMm, vMm: Float64Array.from(grid.yM, (m) => m * MM_PER_M), value }
}

/** The last plane not beyond `value`, and the share of the way to the next. */
const placeOf = (planes: Float64Array, value: number) => {
  const next = planes.findIndex((p) => p > value)
  const low = next < 0 ? planes.length - 1 : Math.max(0, next - 1)
  const [from, to] = [planes[low] ?? 0, planes[low + 1] ?? 0]
  const isBetween = next > 0
  return { low, share: isBetween ? (value - from) / (to - from) : 0 }
}
