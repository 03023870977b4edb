import { fitMesh } from '../src/solvers/conduction/fitMesh.ts'
import type {
  Block,
  Environment,
  MeshSpec,
  Triple,
  World,
} from '../src/solvers/conduction/world.ts'
import { type BoxFile, type BoxPlace, boxName, isFlat } from './boxFile.ts'

export interface BoxWorld {
  readonly world: World
  readonly mesh: MeshSpec
  readonly warnings: readonly string[]
}

/** Indices into the environments of a world of boxes. */
export const OUTSIDE = 0
export const INSIDE = 1

/** Planes this near are one plane written twice with different rounding, m. */
const ROUNDING_M = 1e-6

/** Narrow cells where faces meet, wide ones between: half a thousandth of a hive in a few seconds. */
const GRADED: MeshSpec = {
  leastCellM: 0.002,
  growth: 1.5,
  greatestCellM: 0.04,
  cellsPerGap: 2,
  mergeM: ROUNDING_M,
}

/** Cells of air and matter together that take some seconds. */
const MOST_CELLS = 2_000_000

export interface MeshWish {
  /** Narrowest cells of the graded mesh, mm. */
  readonly leastMm?: number | undefined
  /** The file's own uniform grid instead of the graded mesh, if it has one. */
  readonly useFileGrid?: boolean | undefined
}

/**
 * The boxes as a world. Later boxes overwrite earlier ones, the cavity overwrites all. The mesh is
 * graded, and coarser than wished for when there would be too many cells.
 */
export const buildBoxWorld = (file: BoxFile, wish: MeshWish = {}): BoxWorld => {
  const solids = file.boxes.filter((box) => !isFlat(box))
  const { Ti, Te, Rsi, Rse } = file.bc
  const blocks: readonly Block[] = [
    ...solids.map((box) => ({ kind: 'solid', ...extent(box), conductivityWPerMK: box.k }) as const),
    { kind: 'air', ...extent(file.cavity), environment: INSIDE },
  ]
  const world: World = {
    blocks,
    environments: [stillAir(Te, Rse), stillAir(Ti, Rsi)],
    background: OUTSIDE,
    beyond: [OUTSIDE, OUTSIDE, OUTSIDE, OUTSIDE, OUTSIDE, OUTSIDE],
  }
  return {
    world,
    mesh: chooseMesh(world, file.grid, wish),
    warnings: file.boxes.flatMap((box, i) =>
      isFlat(box) ? [`${boxName(i, box.name)} has no thickness and is left out.`] : [],
    ),
  }
}

const chooseMesh = (
  world: World,
  grid: BoxFile['grid'],
  { leastMm, useFileGrid = false }: MeshWish,
): MeshSpec => {
  if (useFileGrid && grid !== undefined) {
    const { h, min_cells: cellsPerGap = 1 } = grid
    return { leastCellM: h, growth: 1, greatestCellM: h, cellsPerGap, mergeM: ROUNDING_M }
  }
  if (leastMm === undefined) return fitMesh(world, GRADED, MOST_CELLS)
  const leastCellM = leastMm / 1000
  return { ...GRADED, leastCellM, greatestCellM: Math.max(GRADED.greatestCellM, leastCellM) }
}

/** The file's z is up, which is the solver's second axis. */
const extent = (box: BoxPlace): { readonly minM: Triple; readonly maxM: Triple } => ({
  minM: [box.x0, box.z0, box.y0],
  maxM: [box.x1, box.z1, box.y1],
})

const stillAir = (temperatureC: number, resistance: number): Environment => ({
  temperatureC,
  surfaceResistanceM2KPerW: [
    resistance,
    resistance,
    resistance,
    resistance,
    resistance,
    resistance,
  ],
})
