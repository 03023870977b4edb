import type { World } from '../../../solvers/conduction/world.ts'

/** Index of the air in `HiveHeatModel.world.environments`. Outside is at 0, inside at 1. */
export const OUTSIDE = 0
export const INSIDE = 1

/** Which of the hive's sides a block belongs to when heat is shared out. */
export type HeatSide =
  | 'front-wall'
  | 'back-wall'
  | 'left-wall'
  | 'right-wall'
  | 'lid'
  | 'floor'
  | 'entrance'

/** Where a block of the world comes from. */
export interface BlockSource {
  /** The part it stands for; undefined for air that is treated as matter. */
  readonly partId: string | undefined
  readonly side: HeatSide | undefined
}

/**
 * A hive as the conduction solver takes it: closed, in metres, x y z as in the hive. The air outside has
 * temperature 0 and the air inside 1, so that every temperature is the share of the way from outside
 * to inside: the temperature factor fRsi of ISO 10211 and ISO 13788.
 */
export interface HiveHeatModel {
  readonly world: World
  /** One for each of the world's blocks, in their order. */
  readonly sources: readonly BlockSource[]
  /** Into how many steps sloping parts are cut; 0 when nothing slopes. */
  readonly slopeSteps: number
  /** What the model leaves out, in plain words, a sentence each. */
  readonly leftOut: readonly string[]
}
