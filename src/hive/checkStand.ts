import { STAND_FIELDS } from '../design/placeFields.ts'
import type { Design } from '../design/schema.ts'
import { FLOOR_CLEARANCE } from './measure.ts'
import { atLeast, atMost, mm, type Refuser, ROUNDING } from './refuse.ts'

/** Refuses legs that would stand in the way of the floor. */
export const checkStand = (design: Design, refuser: Refuser): void => {
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
}
