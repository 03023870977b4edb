import type { Design } from '../../../design/schema.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { HeatFieldAnswer } from './heatFieldAnswer.ts'
import { planHiveField } from './planHiveField.ts'
import { solvePlan } from './solvePlan.ts'

/**
 * Solves steady conduction through a whole hive and reads the answer, all in one go: tenths of a
 * second for a preview, seconds at full quality. The same hive gives the same answer. Throws
 * `WorldError` when the hive has no field.
 */
export const solveHiveField = (
  design: Design,
  hive: Hive,
  quality: HeatFieldAnswer['quality'],
): HeatFieldAnswer => solvePlan(planHiveField(design, hive, quality))
