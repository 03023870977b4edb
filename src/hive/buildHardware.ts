import type { Design } from '../design/schema.ts'
import { type Box, box } from '../geometry/box.ts'
import type { Vec3 } from '../geometry/vector.ts'
import { rimPlan } from './buildLid.ts'
import type { HiveDimensions } from './dimensions.ts'
import { BACKWARD, FORWARD } from './directions.ts'
import type { Hinge } from './hive.ts'
import { makePart } from './makePart.ts'
import { LOOSE_CLEARANCE } from './measure.ts'
import type { Part } from './part.ts'
import { HINGE_RAIL_HEIGHT } from './placeOpenings.ts'
import { STEP } from './steps.ts'

export type Side = 'back' | 'front'

type Stretch = readonly [number, number]

/** Stretches of a wall along x where something stands in the way of hardware that reaches up so far. */
export type TakenBelow = (side: Side, height: number) => readonly Stretch[]

/** Air left between hardware and what is beside it, mm. */
const BESIDE = 5

/** The place nearest to `x` where hardware of this width meets nothing; undefined when there is none. */
const freePlace = (
  x: number,
  width: number,
  taken: readonly Stretch[],
  length: number,
): number | undefined => {
  const half = width / 2 + BESIDE
  const ends = [half, length - half]
  const candidates = [x, ...ends, ...taken.flatMap(([from, to]) => [from - half, to + half])]
  return candidates
    .filter((c) => c - half >= -1e-6 && c + half <= length + 1e-6)
    .filter((c) => taken.every(([from, to]) => c + half <= from + 1e-6 || to <= c - half + 1e-6))
    .sort((a, b) => Math.abs(a - x) - Math.abs(b - x))[0]
}

/** Moves hardware along a wall until each piece is clear of openings and of the pieces before it. */
const clearPlaces = (
  wanted: readonly number[],
  width: number,
  taken: readonly Stretch[],
  length: number,
): readonly number[] => {
  const places: number[] = []
  for (const x of wanted) {
    const own = places.map((p) => [p - width / 2, p + width / 2] as const)
    const place = freePlace(x, width, [...taken, ...own], length)
    if (place !== undefined) places.push(place)
  }
  return places
}

/** Butt hinge, both leaves flat: 75 wide, 60 high, 2 thick. Common practice for garden joinery. */
const HINGE = { width: 75, leaf: 30, thickness: 2 }
const HINGE_EVERY = 450
const LATCH_WIDTH = 40
const LATCH_HEIGHT = 10
/** How far the floor's hinges reach up the wall, mm. */
export const FLOOR_FITTING_HEIGHT = HINGE.leaf
const HANDLE = { length: 120, height: 30, depth: 32 }

const signOf = (side: Side): 1 | -1 => (side === 'front' ? 1 : -1)
const outwardOf = (side: Side): Vec3 => (side === 'front' ? FORWARD : BACKWARD)

/** A slab on an outer face: from `z` outwards on its side. */
const slab = (side: Side, z: number, depth: number): [number, number] => {
  const outer = signOf(side) * (z + depth)
  const inner = signOf(side) * z
  return [Math.min(inner, outer), Math.max(inner, outer)]
}

/** Middles of the hinges along x: near both ends and no further apart than a hinge should be. */
const hingePlaces = (length: number): readonly number[] => {
  const inset = Math.min(120, length / 4)
  const bays = Math.max(1, Math.ceil((length - 2 * inset) / HINGE_EVERY))
  return Array.from({ length: bays + 1 }, (_, i) => inset + (i * (length - 2 * inset)) / bays)
}

const metal = (
  id: string,
  name: string,
  motion: Part['motion'],
  place: Box,
  fixedTo: readonly string[],
  side: Side,
) =>
  makePart({
    id: `hardware/${id}`,
    name,
    group: 'hardware',
    motion,
    material: 'stainless-steel',
    grain: 'none',
    solids: place,
    fixedTo,
    explode: { direction: outwardOf(side), layer: 4 },
    step: id.startsWith('lid-') ? STEP.lidHung : STEP.floorHung,
    bought: true,
  })

/** Where lid and floor turn. */
export const hingesOf = (design: Design, d: HiveDimensions): readonly Hinge[] => {
  const { lid, floor } = design
  const lidZ = signOf(lid.hingeSide) * rimPlan(design, d).v1
  return [
    {
      motion: 'lid',
      point: { x: 0, y: d.wallTop - lid.rimDropMm - LOOSE_CLEARANCE / 2, z: lidZ },
      sense: lid.hingeSide === 'back' ? -1 : 1,
      openDeg: lid.openingAngleDeg,
    },
    {
      motion: 'floor',
      point: { x: 0, y: 0, z: (signOf(floor.hingeSide) * d.outerWidth) / 2 },
      sense: floor.hingeSide === 'back' ? 1 : -1,
      openDeg: floor.dropAngleDeg,
    },
  ]
}

/** The timber outside the wall that the lid's hinges are screwed to, flush with the rim above it. */
const hingeRail = (design: Design, d: HiveDimensions, cladding: string): Part => {
  const side = design.lid.hingeSide
  const top = d.wallTop - design.lid.rimDropMm - LOOSE_CLEARANCE
  const wall = d.outerWidth / 2
  return makePart({
    id: 'rim/hinge-rail',
    name: 'Hinge rail',
    group: 'rim',
    motion: 'fixed',
    material: design.walls.railMaterial,
    grain: 'x',
    solids: box(
      [-d.wallThickness, d.cavityLength + d.wallThickness],
      [top - HINGE_RAIL_HEIGHT, top],
      slab(side, wall, rimPlan(design, d).v1 - wall),
    ),
    fixedTo: [cladding],
    explode: { direction: outwardOf(side), layer: 4 },
    step: STEP.wallFittings,
  })
}

/** The cladding board of a wall that lies behind a height. */
const boardBehind = (walls: readonly Part[], side: Side, y: number): string =>
  walls.find(
    (p) =>
      p.id.startsWith(`${side}-wall/cladding`) &&
      p.solids.some((s) => s.kind === 'box' && s.box.y0 < y && y <= s.box.y1),
  )?.id ?? `${side}-wall/cladding`

/** Hinges, latches and handle, and the rail that carries the lid's hinges. */
export const buildHardware = (
  design: Design,
  d: HiveDimensions,
  walls: readonly Part[],
  taken: TakenBelow,
): readonly Part[] => {
  const { lid, floor } = design
  const wall = d.outerWidth / 2
  const rim = rimPlan(design, d).v1
  const lidAxis = d.wallTop - lid.rimDropMm - LOOSE_CLEARANCE / 2
  const lidFace = slab(lid.hingeSide, rim, HINGE.thickness)
  const floorFace = slab(floor.hingeSide, wall, HINGE.thickness)
  const opposite: Side = floor.hingeSide === 'back' ? 'front' : 'back'
  const lidFront: Side = lid.hingeSide === 'back' ? 'front' : 'back'
  const leaf = (x: number, width: number): [number, number] => [x - width / 2, x + width / 2]
  const floorLeaf = Math.min(HINGE.leaf, d.floorThickness)
  // A very short hive hangs its floor on narrower hinges.
  const floorHinge = Math.min(HINGE.width, (d.cavityLength - 3 * BESIDE) / 2)
  // Leaves and handle stay within the rim board, whose upper edge carries the top skin.
  const rimTop = d.lidTop - lid.claddingMm
  const rimLeaf = Math.min(HINGE.leaf, rimTop - lidAxis)
  const lidHinges = hingePlaces(d.outerLength).map((x, i) =>
    metal(
      `lid-hinge-${i + 1}`,
      'Lid hinge',
      'fixed',
      box(
        leaf(x - d.wallThickness, HINGE.width),
        [lidAxis - HINGE.leaf, lidAxis + rimLeaf],
        lidFace,
      ),
      ['rim/hinge-rail', `lid/rim-${lid.hingeSide}`],
      lid.hingeSide,
    ),
  )
  const floorHinges = clearPlaces(
    hingePlaces(d.cavityLength),
    floorHinge,
    taken(floor.hingeSide, FLOOR_FITTING_HEIGHT),
    d.cavityLength,
  ).map((x, i) =>
    metal(
      `floor-hinge-${i + 1}`,
      'Floor hinge',
      'fixed',
      box(leaf(x, floorHinge), [-floorLeaf, FLOOR_FITTING_HEIGHT], floorFace),
      [`${floor.hingeSide}-wall/${firstBoard(walls, floor.hingeSide)}`, 'floor/lining'],
      floor.hingeSide,
    ),
  )
  const latches = hingePlaces(d.cavityLength).filter((_, i, all) => i === 0 || i === all.length - 1)
  const latchParts = clearPlaces(
    latches,
    LATCH_WIDTH,
    taken(opposite, LATCH_HEIGHT),
    d.cavityLength,
  ).map((x, i) =>
    metal(
      `floor-latch-${i + 1}`,
      'Floor latch',
      'fixed',
      box(leaf(x, LATCH_WIDTH), [-floorLeaf, LATCH_HEIGHT], slab(opposite, wall, HINGE.thickness)),
      [`${opposite}-wall/${firstBoard(walls, opposite)}`, 'floor/lining'],
      opposite,
    ),
  )
  const middle = d.cavityLength / 2
  const handleY = (d.wallTop - lid.rimDropMm + rimTop) / 2
  const handleHeight = Math.min(HANDLE.height, rimTop - d.wallTop + lid.rimDropMm)
  return [
    hingeRail(design, d, boardBehind(walls, lid.hingeSide, lidAxis - HINGE_RAIL_HEIGHT / 2)),
    ...lidHinges,
    ...floorHinges,
    ...latchParts,
    makePart({
      id: 'lid/handle',
      name: 'Lid handle',
      group: 'lid',
      motion: 'lid',
      material: lid.railMaterial,
      grain: 'x',
      solids: box(
        [middle - HANDLE.length / 2, middle + HANDLE.length / 2],
        [handleY - handleHeight / 2, handleY + handleHeight / 2],
        slab(lidFront, rim, HANDLE.depth),
      ),
      fixedTo: [`lid/rim-${lidFront}`],
      explode: { direction: outwardOf(lidFront), layer: 4 },
      step: STEP.lidRim,
    }),
  ]
}

const firstBoard = (walls: readonly Part[], side: Side): string =>
  walls.some((p) => p.id === `${side}-wall/cladding-1`) ? 'cladding-1' : 'cladding'
