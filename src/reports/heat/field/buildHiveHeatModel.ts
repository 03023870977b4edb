import type { Design } from '../../../design/schema.ts'
import type { Hive } from '../../../hive/hive.ts'
import { worldOf } from './heatWorld.ts'
import { layHiveBlocks, type WallRemedy } from './hiveBlocks.ts'
import type { HiveHeatModel } from './hiveHeatModel.ts'
import { listLeftOut } from './listLeftOut.ts'
import { snapPlanes } from './snapPlanes.ts'

export interface HeatModelOptions {
  /** Into how many level steps a slope is cut; fewer when they would be lower than 2 mm. */
  readonly slopeSteps: number
  /** Against the walls' timber; none unless told. */
  readonly remedy?: WallRemedy
}

/**
 * The closed hive as blocks: everything that conducts from the air inside to the air outside, with no
 * way through for air. Takes well under a millisecond for each ten frames, since frames count as air.
 */
export const buildHiveHeatModel = (
  design: Design,
  hive: Hive,
  { slopeSteps, remedy = { kind: 'none' } }: HeatModelOptions,
): HiveHeatModel => {
  const laid = layHiveBlocks(design, hive, { slopeSteps, remedy })
  const blocks = snapPlanes(laid.blocks)
  return {
    world: worldOf(blocks),
    sources: blocks.map(({ partId, side }) => ({ partId, side })),
    slopeSteps: laid.slopeSteps,
    leftOut: listLeftOut(design),
  }
}
