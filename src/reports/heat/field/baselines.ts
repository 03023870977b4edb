import { materialById } from '../../../catalog/materials.ts'
import { type Box, boxVolume } from '../../../geometry/box.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { World } from '../../../solvers/conduction/world.ts'
import type { BaselineAnswer } from './heatComparisons.ts'
import { plainBoxWorld } from './plainBoxWorld.ts'
import { hollowVolumeL, TRUNK, trunkWorld } from './trunkWorld.ts'

export interface BaselineWorld extends Pick<BaselineAnswer, 'id' | 'name' | 'about' | 'volumeL'> {
  readonly world: World
}

/**
 * Other homes for bees to hold a hive against: a plain box with the same room inside, and a hollow
 * trunk, which is the same for every hive. Both are closed all round, like the hive's own model.
 */
export const baselineWorlds = (hive: Pick<Hive, 'dimensions'>): readonly BaselineWorld[] => {
  const { cavityLength, cavityWidth, coverLedgeHeight: height } = hive.dimensions
  const inside: Box = { x0: 0, x1: cavityLength, y0: 0, y1: height, z0: 0, z1: cavityWidth }
  const wood = materialById(BOX.material)
  return [
    {
      id: 'plain-box',
      name: 'Plain box with the same room inside',
      about: `A single wall of ${wood.name.toLowerCase()} boards all round, ${BOX.wallMm} mm thick, floor and cover too, round the same length, width and height as this hive has inside. Walls of 19 mm are common practice.`,
      volumeL: boxVolume(inside) / MM3_PER_L,
      world: plainBoxWorld(inside, BOX.wallMm, wood.conductivityWPerMK),
    },
    {
      id: 'trunk',
      name: 'Hollow tree trunk',
      about: `A hollow ${TRUNK.boreMm} mm wide and ${TRUNK.hollowMm} mm high, as wild nests have, in a round trunk with ${TRUNK.wallMm} mm of wood round it that goes on above and below. The wood is living oak, as moist as the formula for it allows (25 %).`,
      volumeL: hollowVolumeL,
      world: trunkWorld(),
    },
  ]
}

const BOX = { material: 'spruce', wallMm: 19 }
const MM3_PER_L = 1e6
