import type { FieldQuestion } from '../../../solvers/conduction/solveWorld.ts'
import type { HeatFieldAnswer } from './heatFieldAnswer.ts'

/** How finely a hive is divided, and when its field counts as solved. */
export interface HeatMesh extends Pick<FieldQuestion, 'mesh' | 'tolerance'> {
  /** Into how many steps slopes are cut. */
  readonly slopeSteps: number
  /** A longer hive gets a coarser mesh, so that its field takes no longer. Air and matter together. */
  readonly mostCells: number
}

/**
 * `preview` while the design is being changed: some 25 thousand cells for the default hive, a band of
 * ±0.9 %. `full` when it rests: some 330 thousand cells, ±0.15 %. Metal beside foam makes the lower
 * bound wait for small residuals, so the tolerances are below what the cells alone would ask for.
 */
export const HEAT_MESHES: Readonly<Record<HeatFieldAnswer['quality'], HeatMesh>> = {
  preview: {
    mesh: { leastCellM: 0.03, growth: 2, greatestCellM: 0.1, cellsPerGap: 1, mergeM: 0.002 },
    tolerance: 1e-4,
    slopeSteps: 2,
    mostCells: 100_000,
  },
  full: {
    mesh: { leastCellM: 0.007, growth: 1.7, greatestCellM: 0.06, cellsPerGap: 1, mergeM: 0.001 },
    tolerance: 1e-6,
    slopeSteps: 4,
    mostCells: 1_000_000,
  },
}
