import type { Design, EntranceDesign, VentDesign } from '../design/schema.ts'
import { growRect, type Rect, rect, rectArea, rectsOverlap } from '../geometry/rect.ts'
import type { HiveDimensions } from './dimensions.ts'
import type { Opening, RowItem } from './hive.ts'
import { LOOSE_CLEARANCE } from './measure.ts'
import { boxOn, type PanelId, type PanelPlane } from './panelPlane.ts'
import { atMost, mm, type Refuser } from './refuse.ts'

/** Timber that must stay between a hole and the corner, the floor or the frame rest, mm. */
const EDGE = 12
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

/** Which colony's room an opening leads into, counted from the left; 0 when it meets the divider. */
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

const refuseMisplaced = (
  { kind, source, path }: Wanted,
  outline: Rect,
  plane: PanelPlane,
  limits: { readonly lowest: number; readonly highest: number },
  refuser: Refuser,
): void => {
  const { cavity } = plane
  const [least, most] = [
    source.widthMm / 2 + EDGE,
    cavity.u1 - cavity.u0 - source.widthMm / 2 - EDGE,
  ]
  refuser.when(most < least, {
    field: `${path}.widthMm`,
    message: `The ${source.wall} wall is ${mm(cavity.u1 - cavity.u0)} long inside, too short for an opening ${mm(source.widthMm)} wide. Make it narrower.`,
    suggestion: atMost(cavity.u1 - cavity.u0 - 2 * EDGE),
  })
  const isOff = most >= least && (source.centreMm < least || source.centreMm > most)
  refuser.when(isOff, {
    field: `${path}.centreMm`,
    message: `This ${kind} runs into a corner. Keep its middle between ${mm(least)} and ${mm(most)} from the corner.`,
    suggestion: source.centreMm < least ? Math.ceil(least) : Math.floor(most),
  })
  const [lowest, highest] = [EDGE, limits.highest]
  refuser.when(outline.v0 < lowest || outline.v1 > highest, {
    field: kind === 'entrance' ? `${path}.bottomMm` : `${path}.belowRestMm`,
    message: `This ${kind} would reach from ${mm(outline.v0)} to ${mm(outline.v1)} above the floor; the wall has room from ${mm(lowest)} to ${mm(highest)} (the frame rest, the lid's rim and its hinge rail are above). Move it or make it lower.`,
    suggestion:
      kind === 'entrance'
        ? Math.max(lowest, atMost(highest - source.heightMm))
        : Math.max(
            EDGE,
            Math.ceil(
              limits.highest === highest
                ? outline.v1 - highest + ('belowRestMm' in source ? source.belowRestMm : EDGE)
                : EDGE,
            ),
          ),
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
    refuseMisplaced(
      w,
      outline,
      plane,
      { lowest: EDGE, highest: Math.min(d.restHeight - EDGE, ceiling - reach) },
      refuser,
    )
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
