import type { FieldAnswer } from './fieldAnswer.ts'
import type { FieldGrid } from './fieldGrid.ts'
import type { MeshSpec, World } from './world.ts'

/** A world, how finely to look at it, and when to stop. */
export interface FieldQuestion {
  readonly world: World
  readonly mesh: MeshSpec
  /** Relative residual to reach: 1e-3 for a preview, 1e-4 to show temperatures, 1e-8 for tests. */
  readonly tolerance: number
  /** A field of the same or a similar world, to start from. */
  readonly start?: FieldGrid | undefined
}

/**
 * Solves both schemes one after the other. Throws `WorldError` for a world that has no answer: no
 * matter, matter that no environment touches, a conductivity that is not above 0.
 */
export const solveWorld = (_question: FieldQuestion): FieldAnswer => {
  throw new Error('solveWorld: not there yet')
}
