import type { Design, EntranceDesign } from './schema.ts'

/** A stretch of a wall, from the corner that openings are measured from. mm. */
export interface Stretch {
  readonly fromMm: number
  readonly toMm: number
}

/**
 * Inside length of the row: frames × spacing + boards + two end spaces for each board and one pair
 * for the ends + play for each colony. The hive is laid out by the same sum.
 */
export function rowLengthMm(design: Design): number {
  const { cavity, frame } = design
  const places = cavity.frames * frame.spacingMm + 2 * cavity.rowEndSpaceMm
  const colonies = cavity.divider === 'fitted' ? 2 : 1
  return places + colonies * cavity.playMm + boardsMm(design, () => true)
}

/** Inside length of a wall: along the row for front and back, across it for the ends. */
export function wallLengthMm(design: Design, wall: EntranceDesign['wall']): number {
  const { frame, cavity } = design
  return wall === 'front' || wall === 'back'
    ? rowLengthMm(design)
    : frame.bodyLengthMm + 2 * cavity.endBarSpaceMm
}

/** The parts of a wall that lie in one colony's room each, from the left; the ends are one part. */
export function colonyStretches(
  design: Design,
  wall: EntranceDesign['wall'],
): readonly [Stretch, Stretch?] {
  const lengthMm = wallLengthMm(design, wall)
  const { divider, dividerThicknessMm } = design.cavity
  const isParted = divider === 'fitted' && (wall === 'front' || wall === 'back')
  if (!isParted) return [{ fromMm: 0, toMm: lengthMm }]
  const dividerMm = dividerPlaceMm(design)
  return [
    { fromMm: 0, toMm: dividerMm },
    { fromMm: dividerMm + dividerThicknessMm, toMm: lengthMm },
  ]
}

/** Where the divider's left face stands: play, end space, frames and followers come before it. */
function dividerPlaceMm(design: Design): number {
  const { cavity, frame } = design
  const before = cavity.playMm + cavity.dividerAfterFrame * frame.spacingMm
  const followersMm = boardsMm(
    { ...design, cavity: { ...cavity, divider: 'none' } },
    (after) => after < cavity.dividerAfterFrame,
  )
  return before + 2 * cavity.rowEndSpaceMm + followersMm
}

/** Thickness of the boards at places that count, with the two end spaces that each brings. */
function boardsMm({ cavity }: Design, counts: (afterFrame: number) => boolean): number {
  const places = [cavity.followerAAfterFrame, cavity.followerBAfterFrame]
  const followers = places.slice(0, { none: 0, one: 1, two: 2 }[cavity.followers]).filter(counts)
  const dividers = cavity.divider === 'fitted' && counts(cavity.dividerAfterFrame) ? 1 : 0
  return (
    followers.length * (cavity.followerThicknessMm + 2 * cavity.rowEndSpaceMm) +
    dividers * (cavity.dividerThicknessMm + 2 * cavity.rowEndSpaceMm)
  )
}
