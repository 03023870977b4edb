import { materialById } from '../../../catalog/materials.ts'
import { type Box, boundingBox } from '../../../geometry/box.ts'
import { solidBounds } from '../../../geometry/solid.ts'
import type { Part } from '../../../hive/part.ts'
import { type HeatBlock, solid } from './heatBlock.ts'
import type { HeatSide } from './hiveHeatModel.ts'

/** The box around all pieces of a part, mm; throws when it has none. */
export const partBounds = ({ solids }: Part): Box => boundingBox(solids.map(solidBounds))

/** A part as one block over the box around it, in its own material. */
export const partBlock = (
  part: Part,
  side: HeatSide | undefined,
  placeMm: Box = partBounds(part),
): HeatBlock => ({
  placeMm,
  matter: solid(materialById(part.material).conductivityWPerMK),
  partId: part.id,
  side,
})

/**
 * Parts of one material side by side as a single block, so that their joints need no planes of the
 * grid; named after the first. Nothing when there are none.
 */
export const joinedBlocks = (parts: readonly Part[], side: HeatSide): readonly HeatBlock[] => {
  const [first] = parts
  return first === undefined ? [] : [partBlock(first, side, boundingBox(parts.map(partBounds)))]
}
