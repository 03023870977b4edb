import { colonyStretches, type Stretch } from './rowRoom.ts'
import type { Design, EntranceDesign } from './schema.ts'

/** Where a new opening can go on a wall. */
export interface FreePlace {
  readonly wall: EntranceDesign['wall']
  /** Middle of the place, whole mm from the corner that openings are measured from. */
  readonly centreMm: number
  /** The widest opening that fits there. */
  readonly roomMm: number
}

/**
 * The first of the walls with room for an opening of that width, and the middle of its widest free
 * stretch. When no wall has room, the widest stretch of them all.
 */
export function findFreePlace(
  design: Design,
  widthMm: number,
  walls: readonly EntranceDesign['wall'][],
): FreePlace {
  const places = walls.map((wall) => widestPlace(design, wall))
  const widest = places.reduce(
    (best, place) => (place.roomMm > best.roomMm ? place : best),
    NOWHERE,
  )
  return places.find((place) => place.roomMm >= widthMm) ?? widest
}

// Common practice: enough wood at a corner for the tunnel's block and a stud.
const FROM_CORNER_MM = 40
/** Wood between two openings: a block beside each, and landing boards that do not meet. */
const BETWEEN_MM = 70

function widestPlace(design: Design, wall: EntranceDesign['wall']): FreePlace {
  const { entrances, vents } = design.openings
  const taken = [...entrances, ...vents].filter((opening) => opening.wall === wall)
  const free = colonyStretches(design, wall)
    .filter((stretch) => stretch !== undefined)
    .map(({ fromMm, toMm }) => ({ fromMm: fromMm + FROM_CORNER_MM, toMm: toMm - FROM_CORNER_MM }))
    .flatMap((stretch) => taken.reduce(takeAway, [stretch]))
  const widest = free.reduce((best, s) => (roomOf(s) > roomOf(best) ? s : best), NO_ROOM)
  const centreMm = Math.max(20, Math.round((widest.fromMm + widest.toMm) / 2))
  // One millimetre less, since the middle was rounded.
  return { wall, centreMm, roomMm: Math.max(0, Math.floor(roomOf(widest)) - 1) }
}

const NOWHERE: FreePlace = { wall: 'front', centreMm: 20, roomMm: 0 }
const NO_ROOM: Stretch = { fromMm: 0, toMm: 0 }

/** What is left of the stretches beside an opening and the wood that it needs on both sides. */
function takeAway(
  stretches: readonly Stretch[],
  opening: { readonly centreMm: number; readonly widthMm: number },
): Stretch[] {
  const half = opening.widthMm / 2 + BETWEEN_MM
  return stretches.flatMap(({ fromMm, toMm }) => [
    { fromMm, toMm: Math.min(toMm, opening.centreMm - half) },
    { fromMm: Math.max(fromMm, opening.centreMm + half), toMm },
  ])
}

function roomOf({ fromMm, toMm }: Stretch): number {
  return toMm - fromMm
}
