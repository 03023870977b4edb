import type { AirFaces } from './collectFaces.ts'
import type { Triple } from './world.ts'

/**
 * Finds the four corners of a face, as places in the grid of vertices: (k·(ny + 1) + j)·(nx + 1) + i.
 * Corners 0 to 3 go low-low, high-low, low-high, high-high in the face's own two axes.
 */
export const faceCorners = ([nx, ny]: Triple): ((
  faces: AirFaces,
  face: number,
  corner: number,
) => number) => {
  const stepY = nx + 1
  const stepZ = stepY * (ny + 1)
  const out = [0, 1, 0, stepY, 0, stepZ]
  const first = [stepY, stepY, 1, 1, 1, 1]
  const second = [stepZ, stepZ, stepZ, stepZ, stepY, stepY]
  return (faces, face, corner) => {
    const cell = faces.cell[face] ?? 0
    const direction = faces.direction[face] ?? 0
    const row = Math.floor(cell / nx)
    const vertex = cell + row + Math.floor(row / ny) * stepY
    return (
      vertex +
      (out[direction] ?? 0) +
      ((corner & 1) === 1 ? (first[direction] ?? 0) : 0) +
      ((corner & 2) === 2 ? (second[direction] ?? 0) : 0)
    )
  }
}
