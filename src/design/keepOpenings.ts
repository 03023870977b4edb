import { ENTRANCE_FIELDS, VENT_FIELDS } from './openingFields.ts'
import { colonyStretches, type Stretch } from './rowRoom.ts'
import type { Design, EntranceDesign, VentDesign } from './schema.ts'

/**
 * Keeps entrances and vents in place while `before` becomes `after`, with as many colonies as before:
 * each stays at its distance from the outer end of its colony's room. If one of them no longer fits
 * its room, all openings of that wall and room shrink and draw together with it.
 */
export function keepOpenings(before: Design, after: Design): Design {
  const { entrances, vents } = after.openings
  const all: readonly Opening[] = [...entrances, ...vents]
  const isTight = (room: Room) => all.some((o) => sharesRoom(o, room, before) && !fits(o, room))
  const keep = <O extends Opening>(opening: O, leastWidthMm: number): O => {
    const room = roomOf(opening, before, after)
    const place = isTight(room) ? squeeze(opening, room, leastWidthMm) : slide(opening, room)
    const centreMm = Math.min(Math.max(place.centreMm, CENTRE.min), CENTRE.max)
    return { ...opening, ...place, centreMm }
  }
  return {
    ...after,
    openings: {
      ...after.openings,
      entrances: entrances.map((entrance) => {
        const kept = keep(entrance, ENTRANCE_FIELDS.widthMm.min)
        return { ...kept, winterWidthMm: Math.min(kept.winterWidthMm, kept.widthMm) }
      }),
      vents: vents.map((vent) => keep(vent, VENT_FIELDS.widthMm.min)),
    },
  }
}

type Opening = EntranceDesign | VentDesign
type Place = Pick<Opening, 'centreMm' | 'widthMm'>

/** One colony's part of a wall, before and after, and the end that its openings keep to. */
interface Room {
  readonly wall: Opening['wall']
  readonly outerEnd: keyof Stretch
  readonly old: Stretch
  readonly now: Stretch
}

const CENTRE = ENTRANCE_FIELDS.centreMm
/** Wood that stays between an opening and the end of its room. */
const FROM_END_MM = 12

function roomOf({ wall, centreMm }: Opening, before: Design, after: Design): Room {
  const [old, oldSecond] = colonyStretches(before, wall)
  const [now, nowSecond] = colonyStretches(after, wall)
  return oldSecond !== undefined && nowSecond !== undefined && centreMm > old.toMm
    ? { wall, outerEnd: 'toMm', old: oldSecond, now: nowSecond }
    : { wall, outerEnd: 'fromMm', old, now }
}

function sharesRoom(opening: Opening, room: Room, before: Design): boolean {
  return (
    opening.wall === room.wall && roomOf(opening, before, before).old.fromMm === room.old.fromMm
  )
}

function slide({ centreMm, widthMm }: Opening, { outerEnd, old, now }: Room): Place {
  return { centreMm: centreMm - old[outerEnd] + now[outerEnd], widthMm }
}

/** True when the opening, slid along, is as far from both ends as it was, or far enough. */
function fits(opening: Opening, room: Room): boolean {
  const gapsTo = ({ centreMm, widthMm }: Place, { fromMm, toMm }: Stretch) =>
    Math.min(centreMm - widthMm / 2 - fromMm, toMm - centreMm - widthMm / 2)
  const wanted = Math.min(FROM_END_MM, gapsTo(opening, room.old))
  // A micrometre of grace for the sums' rounding.
  return gapsTo(slide(opening, room), room.now) > wanted - 0.001
}

function squeeze({ centreMm, widthMm }: Opening, { old, now }: Room, leastMm: number): Place {
  const factor = (now.toMm - now.fromMm) / (old.toMm - old.fromMm)
  const width = Math.max(leastMm, Math.floor(widthMm * factor))
  const centre = Math.round(now.fromMm + (centreMm - old.fromMm) * factor)
  const most = Math.floor(now.toMm - FROM_END_MM - width / 2)
  const least = Math.ceil(now.fromMm + FROM_END_MM + width / 2)
  return { centreMm: Math.max(least, Math.min(centre, most)), widthMm: width }
}
