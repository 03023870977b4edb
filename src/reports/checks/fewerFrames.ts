import type { Design } from '../../design/schema.ts'
import { OPENING_EDGE } from '../../hive/placeOpenings.ts'
import type { Fix } from './check.ts'
import { proposeFix } from './proposeFix.ts'

/**
 * Fewer frames, so that the hive is shorter by at least `excessMm`. Undefined when a board of the
 * row, an empty place, or an opening in a long wall would lose its place.
 */
export const fewerFrames = (
  design: Pick<Design, 'cavity' | 'frame' | 'openings'>,
  cavityLengthMm: number,
  excessMm: number,
): Fix | undefined => {
  const { cavity, frame, openings } = design
  const fewer = Math.ceil(excessMm / frame.spacingMm - 1e-9)
  const frames = cavity.frames - fewer
  const followers = [cavity.followerAAfterFrame, cavity.followerBAfterFrame].slice(
    0,
    { none: 0, one: 1, two: 2 }[cavity.followers],
  )
  const lengthMm = cavityLengthMm - fewer * frame.spacingMm
  const fits =
    cavity.emptyPlaces < frames &&
    followers.every((after) => after <= frames) &&
    (cavity.divider === 'none' || cavity.dividerAfterFrame < frames) &&
    [...openings.entrances, ...openings.vents].every(
      ({ wall, centreMm, widthMm }) =>
        wall === 'left' || wall === 'right' || centreMm + widthMm / 2 + OPENING_EDGE <= lengthMm,
    )
  if (!fits) return undefined
  return proposeFix(`Make the hive shorter: ${frames} frames`, [
    { field: 'cavity.frames', value: frames },
  ])
}
