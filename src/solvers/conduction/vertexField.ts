import type { AirFaces } from './collectFaces.ts'
import { airAtCorner } from './faceCorners.ts'
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
  let v = 0
  for (let z = 0; z < nz; z++) {
    for (let y = 0; y < ny; y++) {
      let at = z * slab + y * row
      for (let x = 0; x < nx; x++, v++, at++) {
        const n = numberAt[v] ?? 0
        if (n > 0) out[v] = u[n] ?? 0
        else if (isHeld[v] === 1) out[v] = heldC[v] ?? 0
        else out[v] = airAt(world, airBeside(grid, at), grid.planes[1][y] ?? 0)
      }
    }
  }
  return out
}

/** The environment of the first cell of air among the eight round a vertex; -1 if there is none. */
const airBeside = ({ code, contact, cells: [nx, ny] }: Grid, at: number): number => {
  for (let n = 0; n < 8; n++) {
    const step = (n & 1) + ((n & 2) >> 1) * (nx + 2) + (n >> 2) * (nx + 2) * (ny + 2)
    const found = contact[code[at + step] ?? 0] ?? ADIABATIC
    if (found >= 0) return found
  }
  return ADIABATIC
}

const airAt = (world: World, environment: number, y: number): number => {
  const air = world.environments[environment] ?? world.environments[0]
  return (air?.temperatureC ?? 0) + (air?.riseKPerM ?? 0) * y
}

/** What the temperatures of a face's corners say about it. */
export interface FaceTemperatures {
  readonly meanC: Float32Array
  readonly leastC: Float32Array
  /** Heat from the air into the matter, W. */
  readonly heatW: Float64Array
}

export const readFaces = (
  faces: AirFaces,
  { corners, isHeld, heldLinks }: VertexEquations,
  vertexC: Float64Array,
): FaceTemperatures => {
  const meanC = new Float32Array(faces.count)
  const leastC = new Float32Array(faces.count)
  const heatW = new Float64Array(faces.count)
  for (let f = 0; f < faces.count; f++) {
    const a = vertexC[corners[4 * f] ?? 0] ?? 0
    const b = vertexC[corners[4 * f + 1] ?? 0] ?? 0
    const c = vertexC[corners[4 * f + 2] ?? 0] ?? 0
    const d = vertexC[corners[4 * f + 3] ?? 0] ?? 0
    const mean = (a + b + c + d) / 4
    const film = faces.filmM2KPerW[f] ?? 0
    meanC[f] = mean
    leastC[f] = Math.min(a, b, c, d)
    if (film > 0) heatW[f] = ((faces.areaM2[f] ?? 0) / film) * ((faces.airC[f] ?? 0) - mean)
  }
  if (heldLinks.length > 0) addHeldHeat(faces, { corners, isHeld, heldLinks }, vertexC, heatW)
  return { meanC, leastC, heatW }
}

/**
 * Heat that enters where surfaces are held at the air's temperature: what leaves each held vertex
 * along its links, less what comes to it through films, shared out by area.
 */
const addHeldHeat = (
  faces: AirFaces,
  { corners, isHeld, heldLinks }: Pick<VertexEquations, 'corners' | 'isHeld' | 'heldLinks'>,
  vertexC: Float64Array,
  heatW: Float64Array,
): void => {
  const leaving = new Float64Array(vertexC.length)
  const areaAt = new Float64Array(vertexC.length)
  for (const { a, b, conductanceWPerK } of heldLinks) {
    const heat = conductanceWPerK * ((vertexC[a] ?? 0) - (vertexC[b] ?? 0))
    leaving[a] = (leaving[a] ?? 0) + heat
    leaving[b] = (leaving[b] ?? 0) - heat
  }
  for (let n = 0; n < corners.length; n++) {
    const v = corners[n] ?? 0
    if (isHeld[v] !== 1) continue
    const f = n >> 2
    const film = faces.filmM2KPerW[f] ?? 0
    const area = faces.areaM2[f] ?? 0
    if (film === 0) areaAt[v] = (areaAt[v] ?? 0) + area
    else {
      const heat = (area / (4 * film)) * (airAtCorner(faces, f, n & 3) - (vertexC[v] ?? 0))
      leaving[v] = (leaving[v] ?? 0) - heat
    }
  }
  for (let n = 0; n < corners.length; n++) {
    const f = n >> 2
    if (faces.filmM2KPerW[f] !== 0) continue
    const v = corners[n] ?? 0
    heatW[f] = (heatW[f] ?? 0) + ((leaving[v] ?? 0) * (faces.areaM2[f] ?? 0)) / (areaAt[v] ?? 1)
  }
}
