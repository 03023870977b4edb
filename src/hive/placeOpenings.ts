import { ENTRANCE_FIELDS } from '../design/openingFields.ts'
import type { Design, EntranceDesign, VentDesign } from '../design/schema.ts'
import { growRect, type Rect, rect, rectArea, rectsOverlap } from '../geometry/rect.ts'
import type { HiveDimensions } from './dimensions.ts'
import type { Opening, RowItem } from './hive.ts'
import { LOOSE_CLEARANCE } from './measure.ts'
import { boxOn, type PanelId, type PanelPlane } from './panelPlane.ts'
import { atMost, mm, type Refuser, ROUNDING } from './refuse.ts'

/** Timber that must stay between a hole and the corner, the floor or the frame rest, mm. */
export const OPENING_EDGE = 12
/** Timber between two round holes, mm. */
const WEB = 10

/** An opening laid out on its wall: the air it lets through and the holes to be cut. */
export interface PlacedOpening {
  readonly opening: Opening
  readonly wall: PanelId
  /** Around all of it, on the wall's plane. */
  readonly outline: Rect
  /** What is cut away in the model: the slot, or for each round hole a square of the same area. */
  readonly holes: readonly Rect[]
  readonly diameter: number | undefined
}

const wallOf = (wall: EntranceDesign['wall']): PanelId => `${wall}-wall`

/** The round holes of a row, each as the square of equal area about its middle. */
const squaresFor = (outline: Rect): readonly Rect[] => {
  const diameter = outline.v1 - outline.v0
  const width = outline.u1 - outline.u0
  const count = Math.max(1, Math.floor((width + WEB) / (diameter + WEB)))
  const half = (diameter * Math.sqrt(Math.PI)) / 4
  const first = (outline.u0 + outline.u1) / 2 - ((count - 1) * (diameter + WEB)) / 2
  const v = (outline.v0 + outline.v1) / 2
  return Array.from({ length: count }, (_, i) => {
    const u = first + i * (diameter + WEB)
    return rect(u - half, u + half, v - half, v + half)
  })
}

/** Which colony's room an opening leads into, counted from the left; 0 (refused) when it meets the divider. */
const colonyOf = (wall: EntranceDesign['wall'], outline: Rect, row: readonly RowItem[]): number => {
  const divider = row.find((item) => item.kind === 'divider')
  if (divider === undefined || wall === 'left') return 1
  if (wall === 'right') return 2
  if (outline.u1 <= divider.x0) return 1
  return outline.u0 >= divider.x1 ? 2 : 0
}

const outlineOf = (
  o: { readonly centreMm: number; readonly widthMm: number; readonly heightMm: number },
  plane: PanelPlane,
  bottom: number,
): Rect => {
  const u = plane.cavity.u0 + o.centreMm
  return rect(u - o.widthMm / 2, u + o.widthMm / 2, bottom, bottom + o.heightMm)
}

interface Wanted {
  readonly kind: Opening['kind']
  readonly index: number
  readonly source: EntranceDesign | VentDesign
  readonly bottom: number
  readonly isHoles: boolean
  readonly path: string
}

const wantedOpenings = (design: Design, d: HiveDimensions): readonly Wanted[] => [
  ...design.openings.entrances.map(
    (source, index): Wanted => ({
      kind: 'entrance',
      index,
      source,
      bottom: source.bottomMm,
      isHoles: source.form === 'holes',
      path: `openings.entrances.${index}`,
    }),
  ),
  ...design.openings.vents.map(
    (source, index): Wanted => ({
      kind: 'vent',
      index,
      source,
      bottom: d.restHeight - source.belowRestMm - source.heightMm,
      isHoles: false,
      path: `openings.vents.${index}`,
    }),
  ),
]

/** The nearest round number to `wanted` from `least` to `most`; between them when none is round. */
const roundWithin = (wanted: number, least: number, most: number): number => {
  const round = wanted < least ? Math.ceil(least) : Math.floor(most)
  return round >= least && round <= most ? round : (least + most) / 2
}

const refuseSideways = ({ kind, source, path }: Wanted, cavity: Rect, refuser: Refuser): void => {
  const room = cavity.u1 - cavity.u0
  const [least, most] = [
    source.widthMm / 2 + OPENING_EDGE,
    room - source.widthMm / 2 - OPENING_EDGE,
  ]
  const isTooWide = refuser.when(most < least - ROUNDING, {
    field: `${path}.widthMm`,
    message: `The ${source.wall} wall is ${mm(room)} long inside, too short for an opening ${mm(source.widthMm)} wide. Make it narrower.`,
    suggestion: atMost(room - 2 * OPENING_EDGE),
  })
  const isOff = source.centreMm < least - ROUNDING || source.centreMm > most + ROUNDING
  refuser.when(!isTooWide && isOff, {
    field: `${path}.centreMm`,
    message: `This ${kind} runs into a corner. Keep its middle between ${mm(least)} and ${mm(most)} from the corner.`,
    suggestion: roundWithin(source.centreMm, least, most),
  })
}

const refuseUpright = (
  { kind, source, path, bottom }: Wanted,
  limits: { readonly highest: number; readonly rest: number },
  refuser: Refuser,
): void => {
  const { highest, rest } = limits
  const room = highest - OPENING_EDGE
  const lowestHeight = ENTRANCE_FIELDS.heightMm.min
  const above = "the frame rest, the lid's rim and its hinge rail are above"
  if (room < source.heightMm - ROUNDING) {
    refuser.when(room < lowestHeight, {
      field: `${path}.wall`,
      message: `The ${source.wall} wall has no room for an opening (${above}). Choose another wall.`,
    })
    refuser.when(room >= lowestHeight, {
      field: `${path}.heightMm`,
      message: `The ${source.wall} wall has room for an opening ${mm(room)} high (${above}). Make this one lower.`,
      suggestion: atMost(room),
    })
    return
  }
  const top = bottom + source.heightMm
  // A vent is placed by its distance below the frame rest, an entrance by its height over the floor.
  const belowRest = rest - top
  refuser.when(bottom < OPENING_EDGE - ROUNDING || top > highest + ROUNDING, {
    field: kind === 'entrance' ? `${path}.bottomMm` : `${path}.belowRestMm`,
    message: `This ${kind} would reach from ${mm(bottom)} to ${mm(top)} above the floor; the wall has room from ${mm(OPENING_EDGE)} to ${mm(highest)} (${above}). Move it or make it lower.`,
    suggestion:
      kind === 'entrance'
        ? roundWithin(bottom, OPENING_EDGE, highest - source.heightMm)
        : roundWithin(belowRest, rest - highest, rest - OPENING_EDGE - source.heightMm),
  })
}

/** A tunnel across the divider would join the two colonies' rooms. */
const refuseAcrossDivider = (
  { kind, source, path }: Wanted,
  cavity: Rect,
  row: readonly RowItem[],
  refuser: Refuser,
): void => {
  const divider = row.find((item) => item.kind === 'divider')
  if (divider === undefined || source.wall === 'left' || source.wall === 'right') return
  const half = source.widthMm / 2
  const [left, right] = [divider.x0 - half, divider.x1 + half]
  const isAcross = source.centreMm > left + ROUNDING && source.centreMm < right - ROUNDING
  const room = cavity.u1 - cavity.u0
  const places = [Math.floor(left), Math.ceil(right)]
    .filter((centre) => centre >= half + OPENING_EDGE && centre <= room - half - OPENING_EDGE)
    .sort((a, b) => Math.abs(a - source.centreMm) - Math.abs(b - source.centreMm))
  refuser.when(isAcross, {
    field: `${path}.centreMm`,
    message: `This ${kind} opens into both colonies' rooms at once. Keep its middle below ${mm(left)} or above ${mm(right)}, clear of the divider.`,
    suggestion: places[0],
  })
}

const refuseFewHoles = ({ source, path, isHoles }: Wanted, refuser: Refuser): void => {
  refuser.when(isHoles && source.heightMm > source.widthMm, {
    field: `${path}.widthMm`,
    message: `A hole of ${mm(source.heightMm)} does not fit into a row ${mm(source.widthMm)} wide. Make the row wider or the holes smaller.`,
    suggestion: source.heightMm,
  })
}

/** Lays all entrances and vents out on their walls, or refuses those that have no room. */
export const placeOpenings = (
  design: Design,
  d: HiveDimensions,
  planes: Readonly<Record<PanelId, PanelPlane>>,
  row: readonly RowItem[],
  refuser: Refuser,
): readonly PlacedOpening[] => {
  // Nothing may open behind the lid's rim or behind the rail that its hinges are screwed to.
  const rimBottom = d.wallTop - design.lid.rimDropMm
  const hingeRail = rimBottom - HINGE_RAIL_HEIGHT - LOOSE_CLEARANCE
  const placed = wantedOpenings(design, d).map((w): PlacedOpening => {
    const wall = wallOf(w.source.wall)
    const plane = planes[wall]
    const outline = outlineOf(w.source, plane, w.bottom)
    const ceiling = w.source.wall === design.lid.hingeSide ? hingeRail : rimBottom
    // A vent's mesh reaches a little beyond its hole.
    const reach = w.kind === 'vent' ? MESH_LAP : 0
    const highest = Math.min(d.restHeight - OPENING_EDGE, ceiling - reach)
    refuseSideways(w, plane.cavity, refuser)
    refuseAcrossDivider(w, plane.cavity, row, refuser)
    refuseUpright(w, { highest, rest: d.restHeight }, refuser)
    refuseFewHoles(w, refuser)
    const holes = w.isHoles ? squaresFor(outline) : [outline]
    return {
      wall,
      outline,
      holes,
      diameter: w.isHoles ? outline.v1 - outline.v0 : undefined,
      opening: {
        kind: w.kind,
        index: w.index,
        wall: w.source.wall,
        tunnel: boxOn(plane, outline, 0, d.wallThickness),
        holes: holes.length,
        area: holes.reduce((sum, h) => sum + rectArea(h), 0),
        colony: colonyOf(w.source.wall, outline, row),
      },
    }
  })
  placed.forEach((a, i) => {
    for (const b of placed.slice(i + 1)) {
      const meet =
        a.wall === b.wall &&
        rectsOverlap(growRect(a.outline, LEAST_BETWEEN, LEAST_BETWEEN), b.outline)
      refuser.when(meet, {
        field: `openings.${b.opening.kind === 'entrance' ? 'entrances' : 'vents'}.${b.opening.index}.centreMm`,
        message: `Two openings in the ${b.opening.wall} wall meet, or nearly. Keep ${LEAST_BETWEEN} mm between them.`,
      })
    }
  })
  return placed
}

/** Wood between two openings of one wall: room for two landing boards, mm. */
const LEAST_BETWEEN = 70
/** Height of the rail outside the wall that the lid's hinges are screwed to, mm. */
export const HINGE_RAIL_HEIGHT = 45
/** How far a vent's mesh laps over the wall round its hole, mm. */
export const MESH_LAP = 10
