import type { Design } from '../../../design/schema.ts'
import { WALL_FIELDS } from '../../../design/shellFields.ts'
import { deriveHive } from '../../../hive/deriveHive.ts'
import type { Hive } from '../../../hive/hive.ts'
import { buildHiveHeatModel } from './buildHiveHeatModel.ts'
import type { RemedyAnswer } from './heatComparisons.ts'
import type { HiveHeatModel } from './hiveHeatModel.ts'

export interface RemedyModel extends Pick<RemedyAnswer, 'id' | 'name' | 'how'> {
  readonly model: HiveHeatModel
}

/**
 * The hive with the walls' timber kept from leading heat straight through, in up to three ways. Compare
 * each with the hive as it is at the same number of slope steps. A way that can't be built is left out:
 * rails left too thin, or a wall thicker than the design allows.
 */
export const remedyModels = (
  design: Design,
  hive: Hive,
  { slopeSteps }: { readonly slopeSteps: number },
): readonly RemedyModel[] => [
  ...addStrip(design, hive, slopeSteps),
  ...staggerStuds(design, hive, slopeSteps),
  ...foamOver(design, slopeSteps),
]

const STRIP_MM = 10
const OVER_MM = 20
/** Timber less deep than this splits at its screws (common practice), mm. */
const LEAST_TIMBER_MM = 15

const addStrip = (design: Design, hive: Hive, slopeSteps: number): readonly RemedyModel[] => {
  if (design.walls.coreMm - STRIP_MM < LEAST_TIMBER_MM) return []
  const topMm = hive.dimensions.restHeight
  return [
    {
      id: 'strip',
      name: 'A strip of insulation over each rail',
      how: `Make the rails and studs of the walls ${STRIP_MM} mm less deep and lay a ${STRIP_MM} mm strip of the wall's own insulation on them, under the cladding. The walls stay as thick as they are; the screws get ${STRIP_MM} mm longer.`,
      model: buildHiveHeatModel(design, hive, {
        slopeSteps,
        remedy: { kind: 'foam', depthMm: STRIP_MM, topMm },
      }),
    },
  ]
}

const staggerStuds = (design: Design, hive: Hive, slopeSteps: number): readonly RemedyModel[] => {
  if (design.walls.coreMm / 2 < LEAST_TIMBER_MM) return []
  return [
    {
      id: 'staggered',
      name: 'Staggered studs',
      how: 'Make each upright of the walls from two halves, one behind the lining and one behind the cladding, and set the outer halves in the middle of the bays, so that no upright runs straight through. The rails at top and bottom stay whole.',
      model: buildHiveHeatModel(design, hive, { slopeSteps, remedy: { kind: 'staggered' } }),
    },
  ]
}

const foamOver = (design: Design, slopeSteps: number): readonly RemedyModel[] => {
  const { walls } = design
  const thicker = { ...design, walls: { ...walls, coreMm: walls.coreMm + OVER_MM } }
  if (thicker.walls.coreMm > WALL_FIELDS.coreMm.max) return []
  const result = deriveHive(thicker)
  if (result.kind === 'refused') return []
  const topMm = result.hive.dimensions.wallTop
  return [
    {
      id: 'foam-over',
      name: `${OVER_MM} mm more insulation, over the rails`,
      how: `Keep the rails as deep as they are and lay ${OVER_MM} mm of the wall's own insulation over them from corner to corner, under the cladding. The hive grows by ${OVER_MM} mm on every side.`,
      model: buildHiveHeatModel(thicker, result.hive, {
        slopeSteps,
        remedy: { kind: 'foam', depthMm: OVER_MM, topMm },
      }),
    },
  ]
}
