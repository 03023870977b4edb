import { blockOfCode, type Grid, MATTER } from './paintGrid.ts'
import type { World } from './world.ts'

/** The faces between matter and air of a painted grid, as both schemes need them. */
export interface AirFaces {
  readonly count: number
  /** The cell of matter, as its place in the grid without the layers beyond: (k·ny + j)·nx + i. */
  readonly cell: Int32Array
  /** 0 to 5, the way from the matter into the air: -x, +x, -y, +y, -z, +z. */
  readonly direction: Uint8Array
  readonly environment: Uint8Array
  readonly block: Uint16Array
  readonly areaM2: Float64Array
  /** Of the air film, m²K/W. */
  readonly filmM2KPerW: Float64Array
  /** Of the air at the middle of the face. */
  readonly airC: Float64Array
  /** By how much the air at the face's upper edge is warmer than at its middle, K. */
  readonly airRiseK: Float64Array
  /** x, y, z of face f at 3f, m. */
  readonly centreM: Float32Array
}

/** Finds every face of matter that touches an environment, in the order of the cells. */
export const collectFaces = (grid: Grid, world: World): AirFaces => {
  const [nx, ny] = grid.cells
  const row = nx + 2
  const steps = [-1, 1, -row, row, -row * (ny + 2), row * (ny + 2)]
  return describeFaces(findFaces(grid, steps), grid, world, steps)
}

/** Cell, its place among the codes, and direction, for each face. */
const findFaces = ({ code, contact, cells: [nx, ny, nz] }: Grid, steps: readonly number[]) => {
  const row = nx + 2
  const slab = row * (ny + 2)
  let found = new Int32Array(3 * 8192)
  let used = 0
  for (let k = 0; k < nz; k++) {
    for (let j = 0; j < ny; j++) {
      let at = (k + 1) * slab + (j + 1) * row + 1
      for (let i = 0; i < nx; i++, at++) {
        const own = code[at] ?? 0
        // Most cells lie within one block and touch nothing else.
        if (
          code[at - 1] === own &&
          code[at + 1] === own &&
          code[at - row] === own &&
          code[at + row] === own &&
          code[at - slab] === own &&
          code[at + slab] === own
        ) {
          continue
        }
        if (contact[own] !== MATTER) continue
        for (let d = 0; d < 6; d++) {
          const beyond = contact[code[at + (steps[d] ?? 0)] ?? 0] ?? MATTER
          if (beyond < 0) continue
          if (used + 3 > found.length) {
            const larger = new Int32Array(2 * found.length)
            larger.set(found)
            found = larger
          }
          found[used] = (k * ny + j) * nx + i
          found[used + 1] = at
          found[used + 2] = d
          used += 3
        }
      }
    }
  }
  return found.subarray(0, used)
}

const describeFaces = (
  found: Int32Array,
  { code, contact, cells, planes }: Grid,
  world: World,
  steps: readonly number[],
): AirFaces => {
  const count = found.length / 3
  const faces = {
    count,
    cell: new Int32Array(count),
    direction: new Uint8Array(count),
    environment: new Uint8Array(count),
    block: new Uint16Array(count),
    areaM2: new Float64Array(count),
    filmM2KPerW: new Float64Array(count),
    airC: new Float64Array(count),
    airRiseK: new Float64Array(count),
    centreM: new Float32Array(3 * count),
  }
  const [nx, ny] = cells
  const [xs, ys, zs] = planes
  for (let f = 0; f < count; f++) {
    const cell = found[3 * f] ?? 0
    const at = found[3 * f + 1] ?? 0
    const d = found[3 * f + 2] ?? 0
    const i = cell % nx
    const j = Math.floor(cell / nx) % ny
    const k = Math.floor(cell / (nx * ny))
    const environment = contact[code[at + (steps[d] ?? 0)] ?? 0] ?? 0
    const air = world.environments[environment]
    const [x0, x1] = [xs[i] ?? 0, xs[i + 1] ?? 0]
    const [y0, y1] = [ys[j] ?? 0, ys[j + 1] ?? 0]
    const [z0, z1] = [zs[k] ?? 0, zs[k + 1] ?? 0]
    const [hx, hy, hz] = [x1 - x0, y1 - y0, z1 - z0]
    const y = d === 2 ? y0 : d === 3 ? y1 : (y0 + y1) / 2
    faces.cell[f] = cell
    faces.direction[f] = d
    faces.environment[f] = environment
    faces.block[f] = blockOfCode(code[at] ?? 0)
    faces.areaM2[f] = d < 2 ? hy * hz : d < 4 ? hx * hz : hx * hy
    faces.filmM2KPerW[f] = air?.surfaceResistanceM2KPerW[d] ?? 0
    faces.airC[f] = (air?.temperatureC ?? 0) + (air?.riseKPerM ?? 0) * y
    faces.airRiseK[f] = d === 2 || d === 3 ? 0 : ((air?.riseKPerM ?? 0) * hy) / 2
    faces.centreM[3 * f] = d === 0 ? x0 : d === 1 ? x1 : (x0 + x1) / 2
    faces.centreM[3 * f + 1] = y
    faces.centreM[3 * f + 2] = d === 4 ? z0 : d === 5 ? z1 : (z0 + z1) / 2
  }
  return faces
}
