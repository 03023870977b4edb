import type { Design } from '../design/schema.ts'
import { type Box, box } from '../geometry/box.ts'
import type { PrismSolid, Solid } from '../geometry/solid.ts'
import type { HiveDimensions } from './dimensions.ts'
import { DOWN } from './directions.ts'
import { makePart } from './makePart.ts'
import { FLOOR_CLEARANCE } from './measure.ts'
import type { Operation, Part } from './part.ts'
import { STEP } from './steps.ts'

/** Sections of the braces, mm, and how high on the leg they sit, as a share of its length. */
const BRACE = { thickness: 38, height: 60, at: 0.3 }
/** Splay of a trestle's legs: outwards over height. */
const SPLAY = 0.2
const TIMBER = 'larch'

interface End {
  readonly id: 'left' | 'right'
  /** The bearer's place along x, and the leg's within it. */
  readonly bearer: readonly [number, number]
  readonly leg: readonly [number, number]
}

const standPart = (
  id: string,
  name: string,
  grain: 'x' | 'y' | 'z',
  solids: readonly Solid[] | Box,
  fixedTo: readonly string[],
  layer: number,
  extra: { operations?: readonly Operation[]; size?: Part['size'] } = {},
) =>
  makePart({
    id: `stand/${id}`,
    name,
    group: 'stand',
    motion: 'fixed',
    material: TIMBER,
    grain,
    solids,
    fixedTo,
    explode: { direction: DOWN, layer },
    step: STEP.stand,
    ...extra,
  })

const endsOf = (design: Design, d: HiveDimensions): readonly End[] => {
  const outer = d.wallThickness
  const inner = d.liningThickness + FLOOR_CLEARANCE
  const leg = design.stand.legWidthMm
  return [
    { id: 'left', bearer: [-outer, -inner], leg: [-outer, -outer + leg] },
    {
      id: 'right',
      bearer: [d.cavityLength + inner, d.cavityLength + outer],
      leg: [d.cavityLength + outer - leg, d.cavityLength + outer],
    },
  ]
}

const bearer = (d: HiveDimensions, end: End): Part =>
  standPart(
    `bearer-${end.id}`,
    'Bearer',
    'z',
    box(end.bearer, [-d.bearerHeight, 0], [-d.outerWidth / 2, d.outerWidth / 2]),
    [`${end.id}-wall/rail-low`],
    0,
  )

/** Four upright legs, a brace between each pair, and a long one on the side where the floor hangs. */
const buildLegs = (design: Design, d: HiveDimensions, ends: readonly End[]): readonly Part[] => {
  const top = -d.bearerHeight
  const half = d.outerWidth / 2
  const leg = design.stand.legWidthMm
  const braceY = d.groundHeight + BRACE.at * (top - d.groundHeight)
  const ys = [braceY, braceY + BRACE.height] as const
  const inset = (leg - BRACE.thickness) / 2
  const parts = ends.flatMap((end) => [
    ...(['back', 'front'] as const).map((side) =>
      standPart(
        `leg-${end.id}-${side}`,
        'Leg',
        'y',
        box(
          end.leg,
          [d.groundHeight, top],
          side === 'back' ? [-half, -half + leg] : [half - leg, half],
        ),
        [`stand/bearer-${end.id}`],
        1,
      ),
    ),
    standPart(
      `brace-${end.id}`,
      'End brace',
      'z',
      box([end.leg[0] + inset, end.leg[1] - inset], ys, [-half + leg, half - leg]),
      [`stand/leg-${end.id}-back`, `stand/leg-${end.id}-front`],
      1,
    ),
  ])
  const [left, right] = ends
  if (left === undefined || right === undefined) return parts
  const atBack = design.floor.hingeSide === 'back'
  const zs: readonly [number, number] = atBack
    ? [-half + inset, -half + inset + BRACE.thickness]
    : [half - inset - BRACE.thickness, half - inset]
  const side = atBack ? 'back' : 'front'
  return [
    ...parts,
    standPart(
      'brace-long',
      'Long brace',
      'x',
      box([left.leg[1], right.leg[0]], ys, zs),
      [`stand/leg-left-${side}`, `stand/leg-right-${side}`],
      1,
    ),
  ]
}

/** Two splayed legs at each end with a tie between them, and a long brace on the ties. */
const buildTrestles = (
  design: Design,
  d: HiveDimensions,
  ends: readonly End[],
): readonly Part[] => {
  const top = -d.bearerHeight
  const half = d.outerWidth / 2
  const leg = design.stand.legWidthMm
  const height = top - d.groundHeight
  /** Inner face of the front leg at a height; the back leg is its mirror image. */
  const innerAt = (y: number) => half - leg + SPLAY * (top - y)
  const tieY = d.groundHeight + BRACE.at * height
  const tieTop = tieY + BRACE.height
  const angle: Operation = { kind: 'bevel', angleDeg: (Math.atan(SPLAY) * 180) / Math.PI }
  const legSolid = (side: 1 | -1, x: readonly [number, number]): PrismSolid => ({
    kind: 'prism',
    axis: 'x',
    from: x[0],
    to: x[1],
    polygon: [
      { u: side * innerAt(top), v: top },
      { u: side * (innerAt(top) + leg), v: top },
      { u: side * (innerAt(d.groundHeight) + leg), v: d.groundHeight },
      { u: side * innerAt(d.groundHeight), v: d.groundHeight },
    ],
  })
  const slant = Math.hypot(1, SPLAY)
  const parts = ends.flatMap((end) => [
    ...([-1, 1] as const).map((side) =>
      standPart(
        `leg-${end.id}-${side < 0 ? 'back' : 'front'}`,
        'Splayed leg',
        'y',
        [legSolid(side, end.leg)],
        [`stand/bearer-${end.id}`],
        1,
        {
          operations: [angle],
          // Sawn at a slant from a bar of this section; the ends are cut parallel.
          size: {
            length: height * slant + (leg / slant) * SPLAY,
            width: leg,
            thickness: leg / slant,
          },
        },
      ),
    ),
    standPart(
      `tie-${end.id}`,
      'Trestle tie',
      'z',
      [
        {
          kind: 'prism',
          axis: 'x',
          from: end.leg[0] + (leg - BRACE.thickness) / 2,
          to: end.leg[1] - (leg - BRACE.thickness) / 2,
          polygon: [
            { u: -innerAt(tieY), v: tieY },
            { u: innerAt(tieY), v: tieY },
            { u: innerAt(tieTop), v: tieTop },
            { u: -innerAt(tieTop), v: tieTop },
          ],
        },
      ],
      [`stand/leg-${end.id}-back`, `stand/leg-${end.id}-front`],
      1,
      { operations: [angle] },
    ),
  ])
  const z = innerAt(tieTop + BRACE.height)
  const zs: readonly [number, number] =
    design.floor.hingeSide === 'back' ? [-z, -z + BRACE.thickness] : [z - BRACE.thickness, z]
  return [
    ...parts,
    standPart(
      'brace-long',
      'Long brace',
      'x',
      box(
        [-d.wallThickness, d.cavityLength + d.wallThickness],
        [tieTop, tieTop + BRACE.height],
        zs,
      ),
      ['stand/tie-left', 'stand/tie-right'],
      1,
    ),
  ]
}

/** Bearers under the end walls always; legs or trestles under them when wanted. */
export const buildStand = (design: Design, d: HiveDimensions): readonly Part[] => {
  const ends = endsOf(design, d)
  const bearers = ends.map((end) => bearer(d, end))
  switch (design.stand.form) {
    case 'none':
      return bearers
    case 'legs':
      return [...bearers, ...buildLegs(design, d, ends)]
    case 'trestle':
      return [...bearers, ...buildTrestles(design, d, ends)]
  }
}
