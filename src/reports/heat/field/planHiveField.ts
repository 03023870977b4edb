import type { Design } from '../../../design/schema.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { FieldAnswer } from '../../../solvers/conduction/fieldAnswer.ts'
import { fitMesh } from '../../../solvers/conduction/fitMesh.ts'
import type { FieldQuestion } from '../../../solvers/conduction/solveWorld.ts'
import { computeHeat } from '../computeHeat.ts'
import { answerHeatField } from './answerHeatField.ts'
import { buildHiveHeatModel } from './buildHiveHeatModel.ts'
import type { HeatFieldAnswer } from './heatFieldAnswer.ts'
import { HEAT_MESHES } from './meshes.ts'

/** Asks for fields as it goes, whoever solves them and on whichever thread, and ends with an answer. */
export type HiveFieldPlan = Generator<FieldQuestion, HeatFieldAnswer, FieldAnswer>

/** What has to be solved to answer for the heat of a hive: first its field, then what its steps cost. */
export function* planHiveField(
  design: Design,
  hive: Hive,
  quality: HeatFieldAnswer['quality'],
): HiveFieldPlan {
  const model = buildHiveHeatModel(design, hive, HEAT_MESHES[quality])
  const field = yield questionOf(model, quality)
  const isStepped = quality === 'full' && model.slopeSteps > 0
  return answerHeatField({
    hive,
    heat: computeHeat(design, hive),
    model,
    field,
    quality,
    slopeStepError: isStepped ? yield* planSlopeStepError(design, hive, model.slopeSteps) : 0,
  })
}

/**
 * The relative change of the conductance when slopes are cut into twice as many steps, by the coarse
 * mesh: what that gets wrong, it gets wrong alike for both.
 */
function* planSlopeStepError(
  design: Design,
  hive: Hive,
  steps: number,
): Generator<FieldQuestion, number, FieldAnswer> {
  const once = yield questionOf(buildHiveHeatModel(design, hive, { slopeSteps: steps }), 'preview')
  const finer = buildHiveHeatModel(design, hive, { slopeSteps: 2 * steps })
  const twice = yield questionOf(finer, 'preview')
  const [a, b] = [once.conductanceWPerK, twice.conductanceWPerK]
  return a === undefined || b === undefined ? 0 : Math.abs(b - a) / b
}

const questionOf = (
  { world }: Pick<FieldQuestion, 'world'>,
  quality: HeatFieldAnswer['quality'],
): FieldQuestion => {
  const { mesh, tolerance, mostCells } = HEAT_MESHES[quality]
  return { world, mesh: fitMesh(world, mesh, mostCells), tolerance }
}
