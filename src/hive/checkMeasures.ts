import { CAVITY_FIELDS } from '../design/cavityFields.ts'
import { FRAME_FIELDS } from '../design/frameFields.ts'
import type { Design } from '../design/schema.ts'
import { WALL_FIELDS } from '../design/shellFields.ts'
import { checkLid } from './checkLid.ts'
import { checkPanels } from './checkPanels.ts'
import { checkStand } from './checkStand.ts'
import type { HiveDimensions } from './dimensions.ts'
import { hasCovers, TRAY_THICKNESS } from './measure.ts'
import { atLeast, atMost, mm, type Refuser, ROUNDING } from './refuse.ts'

/** No strip of timber is made narrower than this, mm: it would split at the first screw. */
const LEAST_STRIP = 12
/** Least of a lug that must lie on its ledge to hold a comb at all, mm. */
const LEAST_BEARING = 2
/** A follower less high than this is a stick, mm. */
const LEAST_FOLLOWER = 80
/** Common practice: a bee space and a little under a follower. */
const USUAL_FOLLOWER_GAP = CAVITY_FIELDS.followerBottomGapMm.default
/** A bee passes any gap wider than this, mm. Derived: a worker passes 4.1 (excluder gap). */
export const BEE_TIGHT = 3

const checkFrame = ({ frame, cavity }: Design, refuser: Refuser): void => {
  refuser.when(frame.lugThicknessMm > frame.topBarThicknessMm, {
    field: 'frame.lugThicknessMm',
    message: `The lug (${mm(frame.lugThicknessMm)}) is thicker than the top bar (${mm(frame.topBarThicknessMm)}). Make the lug thinner.`,
    suggestion: frame.topBarThicknessMm,
  })
  for (const key of [
    'topBarWidthMm',
    'shoulderWidthMm',
    'sideBarWidthMm',
    'bottomBarWidthMm',
  ] as const) {
    refuser.when(frame[key] > frame.spacingMm + ROUNDING, {
      field: `frame.${key}`,
      message: `At ${mm(frame[key])} this bar is wider than the frame spacing (${mm(frame.spacingMm)}), so frames would not fit side by side.`,
      suggestion: atMost(frame.spacingMm),
    })
  }
  refuser.when(frame.sideBarWidthMm > frame.shoulderWidthMm, {
    field: 'frame.sideBarWidthMm',
    message: `The side bar (${mm(frame.sideBarWidthMm)}) is wider than its shoulder (${mm(frame.shoulderWidthMm)}). Make it narrower.`,
    suggestion: frame.shoulderWidthMm,
  })
  const bars = frame.topBarThicknessMm + frame.bottomBarThicknessMm
  refuser.when(frame.depthMm < bars + 40 - ROUNDING, {
    field: 'frame.depthMm',
    message: `The bars take ${mm(bars)} of a frame ${mm(frame.depthMm)} deep, which leaves no comb. Make the frame deeper.`,
    suggestion: atLeast(bars + 40),
  })
  const widest = FRAME_FIELDS.topBarWidthMm.max
  const isTouching = cavity.closure === 'touching'
  refuser.when(isTouching && frame.spacingMm > widest + BEE_TIGHT, {
    field: 'frame.spacingMm',
    message: `Top bars that touch must be as wide as the spacing, and no top bar is wider than ${mm(widest)}. Make the spacing smaller or lay cover boards.`,
    suggestion: widest,
  })
  const isOpen = frame.spacingMm - frame.topBarWidthMm > BEE_TIGHT + ROUNDING
  refuser.when(isTouching && frame.spacingMm <= widest + BEE_TIGHT && isOpen, {
    field: 'frame.topBarWidthMm',
    message: `Top bars that touch must be as wide as the spacing (${mm(frame.spacingMm)}); at ${mm(frame.topBarWidthMm)} bees come up between them. Widen the top bar or lay cover boards.`,
    suggestion: Math.min(frame.spacingMm, widest),
  })
}

const checkRest = (design: Design, d: HiveDimensions, refuser: Refuser): void => {
  const { frame, cavity, walls } = design
  refuser.when(d.lugBearing < LEAST_BEARING - ROUNDING, {
    field: 'frame.topBarLengthMm',
    message: `The cavity is ${mm(d.cavityWidth)} wide, so a top bar of ${mm(frame.topBarLengthMm)} would not reach its ledges. Make the top bar longer or the space beside the frame smaller.`,
    suggestion: atLeast(d.cavityWidth + 2 * LEAST_BEARING),
  })
  const ledge = hasCovers(design) ? cavity.coverLedgeMm : 0
  const needed = d.seatWidth + ledge + LEAST_STRIP - walls.liningMm
  const thickest = WALL_FIELDS.coreMm.max
  refuser.when(needed > thickest + ROUNDING, {
    field: 'frame.topBarLengthMm',
    message: `A top bar of ${mm(frame.topBarLengthMm)} reaches ${mm(d.lugBearing)} into each long wall, further than any wall is thick. Make the top bar shorter.`,
    suggestion: atMost(frame.topBarLengthMm - 2 * (needed - thickest)),
  })
  refuser.when(walls.coreMm < needed - ROUNDING && needed <= thickest + ROUNDING, {
    field: 'walls.coreMm',
    message: `The ledges for lugs and covers take ${mm(d.seatWidth + ledge)} of the wall and the strip outside them needs ${LEAST_STRIP} mm. Make the wall's insulation at least ${mm(atLeast(needed))} thick, or the cover ledge smaller.`,
    suggestion: Math.min(atLeast(needed), thickest),
  })
  const ring = d.coverLedgeHeight - d.restHeight
  refuser.when(ring < 6 - ROUNDING, {
    field: 'cavity.aboveSpaceMm',
    message: `The strip over the frame rest would be only ${mm(ring)} high. Leave more space above the frames.`,
    suggestion: 7,
  })
  if (!hasCovers(design)) return
  const boardWidth = (d.cavityLength + 2 * ledge) / cavity.coverSegments
  refuser.when(boardWidth < 40, {
    field: 'cavity.coverSegments',
    message: `${cavity.coverSegments} cover boards would be ${mm(boardWidth)} wide each. Use fewer.`,
    suggestion: Math.max(1, Math.floor((d.cavityLength + 2 * ledge) / 60)),
  })
  refuser.when(cavity.divider === 'fitted' && cavity.coverSegments < 2, {
    field: 'cavity.coverSegments',
    message:
      'Two colonies need a cover board each, so that one stays shut while the other is open.',
    suggestion: 2,
  })
}

/** The gap under a follower: over the tray, and low enough to leave a board worth the name. */
const checkFollowerGap = (design: Design, d: HiveDimensions, refuser: Refuser): void => {
  const { cavity, frame, floor } = design
  const gap = cavity.followerBottomGapMm
  const least = floor.tray ? TRAY_THICKNESS : CAVITY_FIELDS.followerBottomGapMm.min
  const most = d.restHeight - LEAST_FOLLOWER
  const field = 'cavity.followerBottomGapMm'
  if (most < least - ROUNDING) {
    refuser.when(true, {
      field: 'frame.depthMm',
      message: `With a frame ${mm(frame.depthMm)} deep a follower would be less than ${LEAST_FOLLOWER} mm high. Make the frame deeper or leave the followers out.`,
      suggestion: atLeast(frame.depthMm + least - most),
    })
    return
  }
  refuser.when(gap < least, {
    field,
    message: `The debris tray is ${TRAY_THICKNESS} mm thick and would not pass under the follower. Leave a larger gap.`,
    suggestion: Math.min(USUAL_FOLLOWER_GAP, atMost(most)),
  })
  refuser.when(gap > most + ROUNDING, {
    field,
    message: `The follower would be less than ${LEAST_FOLLOWER} mm high. Make the gap under it smaller.`,
    suggestion: Math.min(USUAL_FOLLOWER_GAP, atMost(most)),
  })
}

const checkBoards = (design: Design, d: HiveDimensions, refuser: Refuser): void => {
  const { cavity } = design
  if (cavity.followers === 'none') return
  checkFollowerGap(design, d, refuser)
  refuser.when(cavity.followerForm === 'insulated' && cavity.followerThicknessMm < 24, {
    field: 'cavity.followerThicknessMm',
    message: `An insulated follower of ${mm(cavity.followerThicknessMm)} has no room for insulation between its two 6 mm sheets. Make it at least 24 mm thick, or plain.`,
    suggestion: 24,
  })
}

/** Refuses what can't be built, each with the field to change. */
export const checkMeasures = (design: Design, d: HiveDimensions, refuser: Refuser): void => {
  checkFrame(design, refuser)
  checkRest(design, d, refuser)
  checkBoards(design, d, refuser)
  checkPanels(design, d, refuser)
  checkLid(design, d, refuser)
  checkStand(design, refuser)
}
