import { checkBeeSpace } from './beeSpace.ts'
import { checkBeeTightGaps } from './beeTightGaps.ts'
import { checkBoards } from './boards.ts'
import { canBuildWith } from './canBuildWith.ts'
import type { Check, CheckContext } from './check.ts'
import { checkColdSpots } from './coldSpots.ts'
import { checkCuttable } from './cuttable.ts'
import { checkDivider } from './divider.ts'
import { checkEntranceHeight } from './entranceHeight.ts'
import { checkEntrances } from './entrances.ts'
import { checkExtractor } from './extractor.ts'
import { checkFloorSwing } from './floorSwing.ts'
import { checkFollowers } from './followers.ts'
import { checkFrameRest } from './frameRest.ts'
import { checkFrameSpacing } from './frameSpacing.ts'
import { checkHeaviestLift } from './heaviestLift.ts'
import { checkInsulation } from './insulation.ts'
import { checkLastComb } from './lastComb.ts'
import { checkLidPull } from './lidPull.ts'
import { checkLiftedFrame } from './liftedFrame.ts'
import { checkPlay } from './play.ts'
import { checkRoof } from './roof.ts'
import { checkRoomForColony } from './roomForColony.ts'
import { checkSafeMaterials } from './safeMaterials.ts'
import { checkSplitJoint } from './splitJoint.ts'
import { checkVentMesh } from './ventMesh.ts'
import { checkWorkingHeight } from './workingHeight.ts'

export type {
  Check,
  CheckContext,
  CheckQuantity,
  FieldChange,
  Verdict,
} from './check.ts'

/** Every subject, in the order of the principles: good for the bees, easy to keep, easy to build. */
const CHECKERS: readonly ((context: CheckContext) => readonly Check[])[] = [
  checkBeeSpace,
  checkLastComb,
  checkFrameSpacing,
  checkSplitJoint,
  checkFrameRest,
  checkPlay,
  checkFollowers,
  checkDivider,
  checkBeeTightGaps,
  checkEntrances,
  checkEntranceHeight,
  checkVentMesh,
  checkSafeMaterials,
  checkInsulation,
  checkColdSpots,
  checkRoof,
  checkRoomForColony,
  checkExtractor,
  checkLiftedFrame,
  checkHeaviestLift,
  checkLidPull,
  checkWorkingHeight,
  checkFloorSwing,
  checkBoards,
  checkCuttable,
]

/**
 * All checks of a hive, those that do not apply left out. Ids are unique. A fix that the hive would
 * refuse is not offered.
 */
export const runChecks = (context: CheckContext): readonly Check[] =>
  CHECKERS.flatMap((checker) => checker(context)).map(({ fix, ...check }) => ({
    ...check,
    fix: fix !== undefined && canBuildWith(context.design, fix.changes) ? fix : undefined,
  }))
