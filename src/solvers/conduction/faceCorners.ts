import type { AirFaces } from './collectFaces.ts'
import type { Triple } from './world.ts'

/**
 * The four corners of every face, as places in the grid of vertices: (k·(ny + 1) + j)·(nx + 1) + i.
 * Corner n of face f is at 4f + n; corners go low-low, high-low, low-high, high-high in the face's own
 * two axes.
 */
export const faceCorners = ([nx, ny]: Triple, faces: AirFaces): Int32Array => {
  const stepY = nx + 1
  const stepZ = stepY * (ny + 1)
  const corners = new Int32Array(4 * faces.count)
  for (let f = 0; f < faces.count; f++) {
    const cell = faces.cell[f] ?? 0
    const direction = faces.direction[f] ?? 0
    const row = Math.floor(cell / nx)
    const axis = direction >> 1
    const out = (direction & 1) === 0 ? 0 : axis === 0 ? 1 : axis === 1 ? stepY : stepZ
    const first = axis === 0 ? stepY : 1
    const second = axis === 2 ? stepY : stepZ
    const low = cell + row + Math.floor(row / ny) * stepY + out
    corners[4 * f] = low
    corners[4 * f + 1] = low + first
    corners[4 * f + 2] = low + second
    corners[4 * f + 3] = low + first + second
  }
  return corners
}

/** Temperature of the air at a corner of a face: faces across x and z reach from low y to high y. */
export const airAtCorner = (faces: AirFaces, f: number, corner: number): number => {
  const bit = (faces.direction[f] ?? 0) < 2 ? 1 : 2
  const rise = faces.airRiseK[f] ?? 0
  return (faces.airC[f] ?? 0) + ((corner & bit) === 0 ? -rise : rise)
}
