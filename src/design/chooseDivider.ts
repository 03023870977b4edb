import { DEFAULT_ENTRANCE } from './defaults.ts'
import { placeEntrance } from './openingEdits.ts'
import { colonyStretches, type Stretch, wallLengthMm } from './rowRoom.ts'
import type { CavityDesign, Design, EntranceDesign } from './schema.ts'

/**
 * Fits the divider in the middle of the row, with a follower at most on each side, and gives each
 * colony an entrance near its outer end where it has none; or takes the divider out and leaves the
 * entrances. The same design when nothing is to be done.
 */
export function chooseDivider(design: Design, divider: CavityDesign['divider']): Design {
  if (divider === design.cavity.divider) return design
  if (divider === 'none') return { ...design, cavity: { ...design.cavity, divider } }
  const parted = { ...design, cavity: fitDivider(design.cavity) }
  return { ...parted, openings: { ...parted.openings, entrances: entrancesForTwo(parted) } }
}

function fitDivider(cavity: CavityDesign): CavityDesign {
  const middle = Math.floor(cavity.frames / 2)
  const { followers, followerAAfterFrame: first, followerBAfterFrame: second } = cavity
  const isBoth = followers === 'two'
  // A single follower stays on its side and only makes way for the divider.
  const left = isBoth ? Math.min(first, second, middle - 1) : first === middle ? middle - 1 : first
  const right = isBoth ? Math.max(first, second, middle + 1) : second
  return {
    ...cavity,
    divider: 'fitted',
    dividerAfterFrame: middle,
    followerAAfterFrame: left,
    followerBAfterFrame: right,
    // A cover board for each colony, so that one stays shut while the other is open.
    coverSegments: Math.max(2, cavity.coverSegments),
  }
}

// Common practice: a hand's width from the corner, so that the tunnel's block clears the stud.
const FROM_OUTER_END_MM = 60

/** The entrances there are, except any that meet the divider, and one more for each colony without. */
function entrancesForTwo(design: Design): readonly EntranceDesign[] {
  const kept = design.openings.entrances.filter((e) => colonyOf(e, design) !== undefined)
  const model = design.openings.entrances[0] ?? DEFAULT_ENTRANCE
  const missing = ([0, 1] as const).filter((n) => !kept.some((e) => colonyOf(e, design) === n))
  return [...kept, ...missing.map((colony) => outerEntrance(model, colony, design))]
}

/** The colony, 0 or 1 from the left, that an entrance opens to; undefined when it meets the divider. */
function colonyOf(entrance: EntranceDesign, design: Design): 0 | 1 | undefined {
  const { wall, centreMm, widthMm } = entrance
  if (wall === 'left') return 0
  if (wall === 'right') return 1
  const [first, second] = colonyStretches(design, wall)
  if (centreMm + widthMm / 2 <= first.toMm) return 0
  return second === undefined || centreMm - widthMm / 2 >= second.fromMm ? 1 : undefined
}

/** An entrance like the model on a long wall, near the outer end of that colony's room. */
function outerEntrance(model: EntranceDesign, colony: 0 | 1, design: Design): EntranceDesign {
  const wall = model.wall === 'back' ? 'back' : 'front'
  const stretches = colonyStretches(design, wall)
  const room: Stretch = stretches[colony] ?? stretches[0]
  const roomMm = Math.floor(room.toMm - room.fromMm - 2 * FROM_OUTER_END_MM)
  const widthMm = placeEntrance(model, { wall, centreMm: 0, roomMm }).widthMm
  const fromEndMm = FROM_OUTER_END_MM + widthMm / 2
  const centreMm = colony === 0 ? fromEndMm : wallLengthMm(design, wall) - fromEndMm
  return placeEntrance(model, { wall, centreMm: Math.round(centreMm), roomMm })
}
