import type { AirFaces } from './collectFaces.ts'
import { faceCorners } from './faceCorners.ts'
import { ADIABATIC, type Grid } from './paintGrid.ts'
import type { VertexEquations } from './vertexScheme.ts'
import type { World } from './world.ts'

/**
 * Temperatures at every place of the vertex grid: solved, held, or those of the air. Where nothing
 * takes heat, the mean of what surrounds the world stands in.
 */
export const fillVertices = (
  grid: Grid,
  world: World,
  { operator, isHeld, heldC }: VertexEquations,
  u: Float64Array,
): Float64Array => {
  const { numberAt, shape } = operator.layout
  const [nx, ny, nz] = shape
  const out = new Float64Array(numberAt.length)
  const row = nx + 1
  const slab = row * (ny + 1)
  const around = [0, 1, row, row + 1, slab, slab + 1, slab + row, slab + row + 1]
  let v = 0
  for (let z = 0; z < nz; z++) {
    const height = grid.planes[1]
    for (let y = 0; y < ny; y++) {
      let at = z * slab + y * row
      for (let x = 0; x < nx; x++, v++, at++) {
        const n = numberAt[v] ?? 0
        if (n > 0) out[v] = u[n] ?? 0
        else if (isHeld[v] === 1) out[v] = heldC[v] ?? 0
        else {
          const beside = around.find(
            (step) => (grid.contact[grid.code[at + step] ?? 0] ?? ADIABATIC) >= 0,
          )
          const contact = beside === undefined ? -1 : grid.contact[grid.code[at + beside] ?? 0]
          out[v] = airAt(world, contact ?? -1, height[y] ?? 0)
        }
      }
    }
  }
  return out
}

const airAt = (world: World, environment: number, y: number): number => {
  const air = world.environments[environment] ?? world.environments[0]
  return (air?.temperatureC ?? 0) + (air?.riseKPerM ?? 0) * y
}

/** What the temperatures of a face's corners say about it. */
export interface FaceTemperatures {
  readonly meanC: Float32Array
  readonly leastC: Float32Array
  /** Heat from the air into the matter, W; not a number where the surface is held at the air's. */
  readonly heatW: Float64Array
}

export const readFaces = (grid: Grid, faces: AirFaces, vertexC: Float64Array): FaceTemperatures => {
  const corner = faceCorners(grid.cells)
  const meanC = new Float32Array(faces.count)
  const leastC = new Float32Array(faces.count)
  const heatW = new Float64Array(faces.count)
  for (let f = 0; f < faces.count; f++) {
    const a = vertexC[corner(faces, f, 0)] ?? 0
    const b = vertexC[corner(faces, f, 1)] ?? 0
    const c = vertexC[corner(faces, f, 2)] ?? 0
    const d = vertexC[corner(faces, f, 3)] ?? 0
    const mean = (a + b + c + d) / 4
    const film = faces.filmM2KPerW[f] ?? 0
    meanC[f] = mean
    leastC[f] = Math.min(a, b, c, d)
    heatW[f] =
      film === 0 ? Number.NaN : ((faces.areaM2[f] ?? 0) / film) * ((faces.airC[f] ?? 0) - mean)
  }
  return { meanC, leastC, heatW }
}
