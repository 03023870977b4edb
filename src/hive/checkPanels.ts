import type { Design } from '../design/schema.ts'
import { FLOOR_FIELDS, LID_FIELDS, WALL_FIELDS } from '../design/shellFields.ts'
import { lidPanelPlan, rimPlan } from './buildLid.ts'
import type { HiveDimensions } from './dimensions.ts'
import { LEAST_POCKET, studPitch } from './layCore.ts'
import { mm, type Refuser, ROUNDING } from './refuse.ts'

/** Least height between the two rails of a panel, mm. */
const LEAST_ROOM = 30

const FIELDS = { walls: WALL_FIELDS, lid: LID_FIELDS, floor: FLOOR_FIELDS }

/** Lengths along which studs or firrings share out a panel, mm. */
const lengthsOf = (
  design: Design,
  d: HiveDimensions,
): Readonly<Record<keyof typeof FIELDS, readonly number[]>> => {
  const past = 2 * (d.liningThickness + d.coreThickness)
  const isLongThrough = design.walls.corner === 'long-through'
  const panel = lidPanelPlan(design, d)
  const rim = rimPlan(design, d)
  return {
    walls: [
      d.cavityLength + (isLongThrough ? past : 0),
      d.cavityWidth + (isLongThrough ? 0 : past),
    ],
    lid: [panel.u1 - panel.u0, rim.u1 - rim.u0],
    floor: [d.cavityLength + 2 * d.liningThickness],
  }
}

/** Refuses rails so wide that no insulation has room between them, or that they meet each other. */
export const checkPanels = (design: Design, d: HiveDimensions, refuser: Refuser): void => {
  const heights = { walls: d.restHeight, lid: d.outerWidth, floor: d.outerWidth }
  const lengths = lengthsOf(design, d)
  for (const key of ['walls', 'lid', 'floor'] as const) {
    const { railWidthMm, railSpacingMm } = design[key]
    const least = FIELDS[key].railWidthMm.min
    const room = heights[key] - 2 * railWidthMm
    refuser.when(room < LEAST_ROOM - ROUNDING, {
      field: `${key}.railWidthMm`,
      message: `Two rails of ${mm(railWidthMm)} leave ${mm(Math.max(0, room))} for insulation between them. Make the rails narrower.`,
      suggestion: Math.max(least, Math.floor((heights[key] - LEAST_ROOM) / 2)),
    })
    const pocketWith = (width: number) =>
      Math.min(...lengths[key].map((length) => studPitch(length, width, railSpacingMm) - width))
    const pocket = pocketWith(railWidthMm)
    let width = Math.floor(railWidthMm)
    while (width > least && pocketWith(width) < LEAST_POCKET) width -= 1
    refuser.when(pocket < LEAST_POCKET - ROUNDING, {
      field: `${key}.railWidthMm`,
      message: `Upright rails of ${mm(railWidthMm)}, at most ${mm(railSpacingMm)} apart, leave ${mm(Math.max(0, pocket))} for insulation between them. Make the rails narrower or their spacing larger.`,
      suggestion: width,
    })
  }
}
