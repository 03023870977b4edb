import { STAND_FIELDS } from '../design/placeFields.ts'
import type { Design } from '../design/schema.ts'
import type { HiveDimensions } from './dimensions.ts'
import { FLOOR_CLEARANCE } from './measure.ts'
import { atLeast, atMost, mm, type Refuser, ROUNDING } from './refuse.ts'

/** Shorter legs leave no room for their braces, mm. */
const LEAST_LEG = 200

/** Refuses legs that stand in the way of the floor, and legs too short to be any. */
export const checkStand = (design: Design, d: HiveDimensions, refuser: Refuser): void => {
  const { stand, walls } = design
  if (stand.form === 'none') return
  const bearer = walls.coreMm + walls.claddingMm - FLOOR_CLEARANCE
  const slimmest = STAND_FIELDS.legWidthMm.min
  const isSlim = bearer < slimmest - ROUNDING
  refuser.when(isSlim, {
    field: 'walls.coreMm',
    message: `The bearer under the end wall is ${mm(bearer)} wide, less than the slimmest leg (${mm(slimmest)}). Make the wall's insulation thicker or choose no stand.`,
    suggestion: atLeast(slimmest + FLOOR_CLEARANCE - walls.claddingMm),
  })
  refuser.when(stand.legWidthMm > bearer + ROUNDING && !isSlim, {
    field: 'stand.legWidthMm',
    message: `The bearer under the end wall is ${mm(bearer)} wide, so a leg of ${mm(stand.legWidthMm)} would stand in the way of the floor. Make the legs slimmer or choose no stand.`,
    suggestion: Math.max(slimmest, atMost(bearer)),
  })
  const leg = -d.bearerHeight - d.groundHeight
  const needed = Math.ceil(stand.workingHeightMm + LEAST_LEG - leg - ROUNDING)
  const isShort = leg < LEAST_LEG - ROUNDING
  const highest = STAND_FIELDS.workingHeightMm.max
  refuser.when(isShort && needed > highest, {
    field: 'stand.form',
    message: `A hive with frames ${mm(d.frameDepth)} deep and legs under it would be worked at ${mm(needed)}, too high to reach into. Choose no stand.`,
  })
  refuser.when(isShort && needed <= highest, {
    field: 'stand.workingHeightMm',
    message: `With this frame the legs would be ${mm(Math.max(0, leg))} long. Raise the working height to ${mm(needed)} or choose no stand.`,
    suggestion: needed,
  })
}
