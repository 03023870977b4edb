import type { FieldGrid } from './fieldGrid.ts'

/** The faces where matter meets an environment, one entry each in every array. */
export interface SurfaceFaces {
  readonly count: number
  /** Centre of face i at 3i, 3i + 1, 3i + 2, m. */
  readonly centreM: Float32Array
  readonly areaM2: Float32Array
  /** The way the surface faces, from the matter into the air: 0 to 5 for -x, +x, -y, +y, -z, +z. */
  readonly direction: Uint8Array
  readonly environment: Uint8Array
  /** The block that the matter belongs to, as an index into `World.blocks`. */
  readonly block: Uint16Array
  /** Heat from the environment into the matter, W, at the environments' own temperatures. */
  readonly heatW: Float64Array
  /** Mean temperature of the face, from the vertex scheme. */
  readonly meanC: Float32Array
  /** Temperature of the face's coldest corner, from the vertex scheme. */
  readonly leastC: Float32Array
}

/** What one of the two schemes says. Plain data with typed arrays, to be sent between threads. */
export interface SchemeAnswer {
  readonly scheme: 'cell' | 'vertex'
  /** Lower bound of the conductance from the cells, upper bound from the vertices, W/K. */
  readonly boundWPerK: number | undefined
  /** The bound as it would be if the balance were exact; the same for the vertices, W/K. */
  readonly estimateWPerK: number | undefined
  readonly unknowns: number
  readonly iterations: number
  readonly relativeResidual: number
  readonly hasConverged: boolean
  readonly bytesPerUnknown: number
  /** Temperatures are there from the vertex scheme only. */
  readonly faces: Omit<SurfaceFaces, 'meanC' | 'leastC'> &
    Partial<Pick<SurfaceFaces, 'meanC' | 'leastC'>>
  readonly grid: FieldGrid | undefined
  readonly mirrorPlanes: number
}

/** Steady conduction through a world: what the two schemes say together. */
export interface FieldAnswer {
  /**
   * Heat for each degree between the two temperatures that the environments have: the mean of what
   * the two bounds come to, W/K. Undefined unless the environments have exactly two temperatures and none rises.
   */
  readonly conductanceWPerK: number | undefined
  /** The conductance of these blocks is certainly not below this (Thomson's principle), W/K. */
  readonly lowerWPerK: number | undefined
  /** The conductance of these blocks is certainly not above this (Dirichlet's principle), W/K. */
  readonly upperWPerK: number | undefined
  readonly faces: SurfaceFaces
  readonly grid: FieldGrid
  /** Net heat from each environment into the matter, W. */
  readonly environmentHeatW: readonly number[]
  readonly cellUnknowns: number
  readonly vertexUnknowns: number
  readonly cellIterations: number
  readonly vertexIterations: number
  /** The larger of the two schemes' residuals, relative to what drives the heat. */
  readonly relativeResidual: number
  readonly hasConverged: boolean
  /** Memory of the arrays of the larger scheme at their most, for each of its unknowns. */
  readonly bytesPerUnknown: number
  /** Number of mirror planes that were found and used: 0, 1 or 2. */
  readonly mirrorPlanes: number
}
