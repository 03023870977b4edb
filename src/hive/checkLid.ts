import type { Design } from '../design/schema.ts'
import { FLOOR_FITTING_HEIGHT } from './buildHardware.ts'
import { rimPlan } from './buildLid.ts'
import type { HiveDimensions } from './dimensions.ts'
import { LOOSE_CLEARANCE } from './measure.ts'
import { HINGE_RAIL_HEIGHT } from './placeOpenings.ts'
import { atMost, mm, type Refuser, ROUNDING } from './refuse.ts'

/** Air between the hinge rail and the floor's hinges below it, mm. */
const BELOW_RAIL = 5

/** Refuses a rim that hangs so low that the lid can't turn, or that its hinges have no place. */
export const checkLid = (design: Design, d: HiveDimensions, refuser: Refuser): void => {
  const { lid } = design
  const turning = atMost(deepestTurningLap(design, d))
  refuser.when(lid.rimDropMm > turning + ROUNDING, {
    field: 'lid.rimDropMm',
    message: `A rim that hangs down ${mm(lid.rimDropMm)} would jam on the wall's edge when the lid is opened. Let it hang down ${mm(turning)} at most, or leave more clearance.`,
    suggestion: turning,
  })
  const fitting = atMost(
    d.wallTop - LOOSE_CLEARANCE - HINGE_RAIL_HEIGHT - BELOW_RAIL - FLOOR_FITTING_HEIGHT,
  )
  refuser.when(lid.rimDropMm > fitting + ROUNDING, {
    field: 'lid.rimDropMm',
    message: `The wall is ${mm(d.wallTop)} high, too low for a rim that hangs down ${mm(lid.rimDropMm)} with the hinge rail under it. Let it hang down ${mm(fitting)} at most.`,
    suggestion: fitting,
  })
}

/**
 * How far the rim may hang below the wall's top. The lid turns about the lower edge of its rim, so the
 * far rim board's inner face stays at its distance D from that line, while the edge of the wall, at
 * height h over the line and D - c from it, comes no nearer than the root of (D - c)² + h². That must
 * not exceed D: h² = 2Dc - c² at most. mm.
 */
const deepestTurningLap = (design: Design, d: HiveDimensions): number => {
  const { rimThicknessMm, rimClearanceMm } = design.lid
  const plan = rimPlan(design, d)
  const inner = plan.v1 - plan.v0 - rimThicknessMm
  // The hinge line lies in the middle of the gap between rim and hinge rail.
  return Math.sqrt(2 * inner * rimClearanceMm - rimClearanceMm ** 2) - LOOSE_CLEARANCE / 2
}
