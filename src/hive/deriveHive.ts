import { materialById } from '../catalog/materials.ts'
import type { Design } from '../design/schema.ts'
import { boundingBox } from '../geometry/box.ts'
import { solidBounds } from '../geometry/solid.ts'
import { buildBoards } from './buildBoards.ts'
import { buildClosers, buildCovers } from './buildCovers.ts'
import { buildFloor, buildTray } from './buildFloor.ts'
import { buildFrames } from './buildFrames.ts'
import { buildHardware, hingesOf, type TakenBelow } from './buildHardware.ts'
import { buildLid, buildRim } from './buildLid.ts'
import { buildOpeningParts, fittingsRoundOpening } from './buildOpeningParts.ts'
import { buildRings } from './buildRings.ts'
import { buildRoof, roofSpaceOf } from './buildRoof.ts'
import { buildStand } from './buildStand.ts'
import { buildWalls } from './buildWalls.ts'
import { checkMeasures } from './checkMeasures.ts'
import type { HiveDimensions } from './dimensions.ts'
import type { Hive, RowItem } from './hive.ts'
import { hasCovers, measureHive } from './measure.ts'
import { panelPlanes } from './panelPlane.ts'
import type { Part } from './part.ts'
import { type PlacedOpening, placeOpenings } from './placeOpenings.ts'
import type { Refusal } from './refusal.ts'
import { createRefuser, mm } from './refuse.ts'
import { checkRow, layRow } from './row.ts'
import { sundriesOf } from './sundries.ts'

export type HiveResult =
  | { readonly kind: 'built'; readonly hive: Hive }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }

/** No piece that is sawn is thinner or narrower than this, mm. */
const LEAST_PIECE = 3

/** Rooms between the ends and the divider, along x. */
const roomsOf = (
  d: HiveDimensions,
  row: readonly RowItem[],
): readonly (readonly [number, number])[] => {
  const divider = row.find((item) => item.kind === 'divider')
  return divider === undefined
    ? [[0, d.cavityLength]]
    : [
        [0, divider.x0],
        [divider.x1, d.cavityLength],
      ]
}

/** Where openings, landing boards and mesh stand in the way of the floor's hinges and latches. */
const takenBy =
  (design: Design, openings: readonly PlacedOpening[]): TakenBelow =>
  (side, height) =>
    openings
      .filter((o) => o.wall === `${side}-wall`)
      .map((o) => fittingsRoundOpening(design, o))
      .filter((r) => r.v0 < height)
      .map((r) => [r.u0, r.u1] as const)

/** Sheets of metal, cloth and wax are thin by nature; everything sawn must keep a least size. */
const refuseSlivers = (parts: readonly Part[]): readonly Refusal[] =>
  parts
    .filter(
      (p) =>
        !p.bought &&
        !['covering', 'textile', 'metal', 'wax'].includes(materialById(p.material).family),
    )
    .filter((p) => {
      const b = boundingBox(p.solids.map(solidBounds))
      return Math.min(b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0) < LEAST_PIECE - 1e-6
    })
    .slice(0, 1)
    .map((p) => ({
      field: FIELD_OF_GROUP[p.group] ?? 'walls.coreMm',
      message: `The part "${p.name}" would be only ${mm(p.size.thickness)} thick, too thin to saw. Change this number.`,
    }))

/** A floor hangs on two hinges and is held up by two latches; openings may leave them no place. */
const refuseLooseFloor = ({ floor }: Design, parts: readonly Part[]): readonly Refusal[] => {
  const other = floor.hingeSide === 'back' ? 'front' : 'back'
  const fittings = [
    { id: 'hardware/floor-hinge-', words: 'hinges', wall: floor.hingeSide },
    { id: 'hardware/floor-latch-', words: 'latches', wall: other },
  ]
  return fittings
    .filter(({ id }) => parts.filter((p) => p.id.startsWith(id)).length < 2)
    .map(({ words, wall }) => ({
      field: 'floor.hingeSide',
      message: `The openings in the ${wall} wall leave no room for two ${words} of the floor. Make an opening there narrower, move it to an end wall, or change the side of the floor's hinges.`,
    }))
}

const FIELD_OF_GROUP: Partial<Record<Part['group'], string>> = {
  frames: 'frame.depthMm',
  boards: 'cavity.followerThicknessMm',
  covers: 'cavity.coverSegments',
  floor: 'floor.railSpacingMm',
  lid: 'lid.railSpacingMm',
  roof: 'lid.slopeDeg',
  openings: 'openings.landingDepthMm',
  stand: 'stand.workingHeightMm',
}

/**
 * Builds the whole hive from its design, or says which numbers stand in the way. Pure; time and memory
 * grow linearly with the number of frames.
 */
export const deriveHive = (design: Design): HiveResult => {
  const refuser = createRefuser()
  // 1. Along the row, then every leading dimension.
  checkRow(design, refuser)
  const row = layRow(design)
  const d = measureHive(design, row)
  checkMeasures(design, d, refuser)
  // 2. Openings on their walls.
  const planes = panelPlanes(d)
  const openings = placeOpenings(design, d, planes, row, refuser)
  if (refuser.refusals.length > 0) return { kind: 'refused', refusals: refuser.refusals }
  // 3. Panels, then what hangs on them.
  const walls = buildWalls(design, d, planes, openings)
  const wallParts = walls.flatMap((w) => w.parts)
  const floor = buildFloor(design, d, planes.floor)
  const lid = buildLid(design, d, planes.lid)
  const rooms = roomsOf(d, row)
  const parts = [
    ...wallParts,
    ...buildRings(design, d),
    ...buildStand(design, d),
    ...floor.parts,
    ...buildTray(design, d, rooms),
    ...buildOpeningParts(design, d, planes, openings, wallParts),
    ...lid.parts,
    ...buildRim(design, d),
    ...buildRoof(design, d),
    ...buildHardware(design, d, wallParts, takenBy(design, openings)),
    ...buildBoards(design, d, row),
    ...buildFrames(design, d),
    ...(hasCovers(design) ? buildCovers(design, d, row) : buildClosers(design, d, row)),
  ]
  const flaws = [...refuseSlivers(parts), ...refuseLooseFloor(design, parts)]
  if (flaws.length > 0) return { kind: 'refused', refusals: flaws }
  const halfWidth = d.cavityWidth / 2
  return {
    kind: 'built',
    hive: {
      parts,
      row,
      dimensions: d,
      hinges: hingesOf(design, d),
      openings: openings.map((o) => o.opening),
      panels: [...walls, lid, floor].map((p) => p.summary),
      roof: roofSpaceOf(design, d),
      cavities: rooms.map(([x0, x1], i) => ({
        colony: i + 1,
        box: { x0, x1, y0: 0, y1: d.coverLedgeHeight, z0: -halfWidth, z1: halfWidth },
      })),
      sundries: sundriesOf(design, d),
    },
  }
}
