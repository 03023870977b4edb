import { cellCounts, type Planes } from './layPlanes.ts'
import { nearestPlane } from './planeSearch.ts'
import type { Contact, Triple, World } from './world.ts'

/** What `Grid.contact` says of matter. */
export const MATTER = -2
/** What `Grid.contact` says of a place that takes no heat. */
export const ADIABATIC = -1

/**
 * A world painted on a grid. Every cell has a code; a layer of cells beyond each side has codes as
 * well, so that no cell needs to ask whether it is at the border.
 */
export interface Grid {
  readonly planes: Planes
  /** Cells along each axis, without the layers beyond. */
  readonly cells: Triple
  /** Of cell (i, j, k) at ((k + 1)·(ny + 2) + j + 1)·(nx + 2) + i + 1. */
  readonly code: Uint16Array
  /** By code: W/(m·K), 0 for air. */
  readonly conductivityWPerMK: Float64Array
  /** By code: index of the environment, `MATTER` or `ADIABATIC`. */
  readonly contact: Int16Array
}

/** The block that a code stands for. Codes beyond the blocks stand for none. */
export const blockOfCode = (code: number): number => code - 1

/** Paints the blocks on the grid in their order, so that later ones hold. */
export const paintGrid = (world: World, planes: Planes): Grid => {
  const cells = cellCounts(planes)
  const [nx, ny, nz] = cells
  const row = nx + 2
  const slab = row * (ny + 2)
  const code = new Uint16Array(slab * (nz + 2))
  world.blocks.forEach(({ minM, maxM }, block) => {
    const [i0, i1] = [nearestPlane(planes[0], minM[0]), nearestPlane(planes[0], maxM[0])]
    const [j0, j1] = [nearestPlane(planes[1], minM[1]), nearestPlane(planes[1], maxM[1])]
    const [k0, k1] = [nearestPlane(planes[2], minM[2]), nearestPlane(planes[2], maxM[2])]
    for (let k = k0; k < k1; k++) {
      for (let j = j0; j < j1; j++) {
        const from = (k + 1) * slab + (j + 1) * row + 1
        code.fill(block + 1, from + i0, from + i1)
      }
    }
  })
  const count = world.blocks.length
  paintBeyond(code, cells, count + 1)
  return { planes, cells, code, ...meaningOfCodes(world) }
}

/** The six layers beyond the sides get codes of their own; the edges between them touch nothing. */
const paintBeyond = (code: Uint16Array, [nx, ny, nz]: Triple, first: number): void => {
  const row = nx + 2
  const slab = row * (ny + 2)
  for (let k = 1; k <= nz; k++) {
    for (let j = 1; j <= ny; j++) {
      code[k * slab + j * row] = first
      code[k * slab + j * row + nx + 1] = first + 1
    }
    code.fill(first + 2, k * slab + 1, k * slab + 1 + nx)
    code.fill(first + 3, k * slab + (ny + 1) * row + 1, k * slab + (ny + 1) * row + 1 + nx)
  }
  for (let j = 1; j <= ny; j++) {
    code.fill(first + 4, j * row + 1, j * row + 1 + nx)
    code.fill(first + 5, (nz + 1) * slab + j * row + 1, (nz + 1) * slab + j * row + 1 + nx)
  }
}

/** Code 0 is the background, then the blocks, then the six sides. */
const meaningOfCodes = (
  world: World,
): { readonly conductivityWPerMK: Float64Array; readonly contact: Int16Array } => {
  const { blocks, background, beyond } = world
  const numbered = (contact: Contact): number => (contact === 'adiabatic' ? ADIABATIC : contact)
  return {
    conductivityWPerMK: Float64Array.from([
      0,
      ...blocks.map((b) => (b.kind === 'solid' ? b.conductivityWPerMK : 0)),
      ...beyond.map(() => 0),
    ]),
    contact: Int16Array.from([
      numbered(background),
      ...blocks.map((b) => (b.kind === 'solid' ? MATTER : b.environment)),
      ...beyond.map(numbered),
    ]),
  }
}
