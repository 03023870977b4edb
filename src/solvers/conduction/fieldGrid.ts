import { gapAt } from './planeSearch.ts'

/** Temperatures at the crossings of three sets of planes; between them, trilinear. */
export interface FieldGrid {
  /** Rising, m. */
  readonly xM: Float64Array
  readonly yM: Float64Array
  readonly zM: Float64Array
  /** At plane i of x, j of y, k of z: entry (k·ny + j)·nx + i. Air has its environment's temperature. */
  readonly temperatureC: Float32Array
}

/** Temperature at a point, m; outside the grid that of the nearest point on it. */
export const sampleField = (grid: FieldGrid, x: number, y: number, z: number): number => {
  const [i, u] = place(grid.xM, x)
  const [j, v] = place(grid.yM, y)
  const [k, w] = place(grid.zM, z)
  const { temperatureC: t } = grid
  const nx = grid.xM.length
  const slab = nx * grid.yM.length
  const at = k * slab + j * nx + i
  const along = (n: number): number => mix(t[n] ?? 0, t[n + 1] ?? 0, u)
  const over = (n: number): number => mix(along(n), along(n + nx), v)
  return mix(over(at), over(at + slab), w)
}

const mix = (a: number, b: number, share: number): number => a + (b - a) * share

/** The gap that holds `value`, and the share of the way through it; the ends hold what is beyond. */
const place = (planes: Float64Array, value: number): readonly [number, number] => {
  const low = gapAt(planes, value)
  const from = planes[low] ?? 0
  const to = planes[low + 1] ?? from
  return [low, to > from ? Math.min(1, Math.max(0, (value - from) / (to - from))) : 0]
}
