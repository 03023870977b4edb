import { STEP } from '../../../hive/steps.ts'
import { BODY_STAGES } from './bodyStages.ts'
import { BRUSH_STAGE, DIP_STAGE, LAST_STAGE } from './finishStages.ts'
import { INSIDE_STAGES } from './insideStages.ts'
import { FLOOR_STAGES, LID_STAGES } from './panelStages.ts'
import type { StageSpec } from './stage.ts'

const beforeCladding = BODY_STAGES.findIndex(({ stage }) => stage === STEP.claddingThrough)

/** All stages in the order of building; a hive leaves out those that it has nothing for. */
export const STAGES: readonly StageSpec[] = [
  ...BODY_STAGES.slice(0, beforeCladding),
  DIP_STAGE,
  ...BODY_STAGES.slice(beforeCladding),
  ...FLOOR_STAGES,
  ...LID_STAGES,
  BRUSH_STAGE,
  ...INSIDE_STAGES,
  LAST_STAGE,
]
