import { cellCounts, facePlanes, layPlanes } from './layPlanes.ts'
import type { MeshSpec, World } from './world.ts'

/** Each try makes the cells at the faces so much wider, and the widest ones with them. */
const WIDER = 1.25
const MOST_TRIES = 12

/**
 * The mesh, or one so much coarser that the grid round the world has at most `mostCells` cells, air and
 * matter together. Worlds with too many faces for that get the coarsest tried.
 */
export const fitMesh = (world: World, mesh: MeshSpec, mostCells: number): MeshSpec => {
  const faces = facePlanes(world, mesh.mergeM)
  let fitted = mesh
  for (let n = 0; n < MOST_TRIES; n++) {
    const [nx, ny, nz] = cellCounts(layPlanes(faces, fitted))
    if (nx * ny * nz <= mostCells) break
    fitted = {
      ...fitted,
      leastCellM: fitted.leastCellM * WIDER,
      greatestCellM: fitted.greatestCellM * WIDER,
    }
  }
  return fitted
}
