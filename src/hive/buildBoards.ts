import type { Design } from '../design/schema.ts'
import { type Box, box } from '../geometry/box.ts'
import { boxSolid } from '../geometry/solid.ts'
import type { Axis } from '../geometry/vector.ts'
import type { HiveDimensions } from './dimensions.ts'
import { UP } from './directions.ts'
import type { RowItem } from './hive.ts'
import { makePart } from './makePart.ts'
import { LOOSE_CLEARANCE } from './measure.ts'
import type { Part } from './part.ts'
import { STEP } from './steps.ts'

const SKIN = 6
const EDGE_STRIP = 20
const LEDGES = ['front-wall/lining', 'back-wall/lining']

type FollowerItem = Extract<RowItem, { kind: 'follower' }>

const follower = (design: Design, d: HiveDimensions, item: FollowerItem): readonly Part[] => {
  const { cavity, frame, walls } = design
  const index = item.number - 1
  const id = (piece: string) => `follower-${item.number}/${piece}`
  const part = (
    piece: string,
    name: string,
    material: string,
    grain: Axis | 'none',
    place: Box,
    fixedTo: readonly string[],
  ) =>
    makePart({
      id: id(piece),
      name,
      group: 'boards',
      motion: 'follower',
      index,
      material,
      grain,
      solids: place,
      fixedTo,
      explode: { direction: UP, layer: 0 },
      step: STEP.loose,
    })
  const { x0, x1 } = item
  const half = d.cavityWidth / 2 - cavity.followerSideGapMm
  const [low, high] = [cavity.followerBottomGapMm, d.restHeight]
  const bar = part(
    'top-bar',
    'Follower top bar',
    'pine',
    'z',
    box([x0, x1], [high, d.frameTop], [-frame.topBarLengthMm / 2, frame.topBarLengthMm / 2]),
    LEDGES,
  )
  if (cavity.followerForm === 'plain')
    return [
      bar,
      part(
        'sheet',
        'Follower sheet',
        cavity.boardMaterial,
        'z',
        box([x0, x1], [low, high], [-half, half]),
        [id('top-bar')],
      ),
    ]
  const core: [number, number] = [x0 + SKIN, x1 - SKIN]
  const inner = half - EDGE_STRIP
  const gap = walls.foamClearanceMm / 2
  return [
    bar,
    part(
      'skin-left',
      'Follower skin',
      cavity.boardMaterial,
      'z',
      box([x0, x0 + SKIN], [low, high], [-half, half]),
      [id('top-bar')],
    ),
    part(
      'skin-right',
      'Follower skin',
      cavity.boardMaterial,
      'z',
      box([x1 - SKIN, x1], [low, high], [-half, half]),
      [id('top-bar')],
    ),
    part(
      'strip-top',
      'Follower strip',
      'pine',
      'z',
      box(core, [high - EDGE_STRIP, high], [-half, half]),
      [id('skin-left'), id('top-bar')],
    ),
    part(
      'strip-bottom',
      'Follower strip',
      'pine',
      'z',
      box(core, [low, low + EDGE_STRIP], [-half, half]),
      [id('skin-left')],
    ),
    part(
      'strip-back',
      'Follower side strip',
      'pine',
      'y',
      box(core, [low + EDGE_STRIP, high - EDGE_STRIP], [-half, -inner]),
      [id('skin-left')],
    ),
    part(
      'strip-front',
      'Follower side strip',
      'pine',
      'y',
      box(core, [low + EDGE_STRIP, high - EDGE_STRIP], [inner, half]),
      [id('skin-left')],
    ),
    part(
      'insulation',
      'Follower insulation',
      walls.insulation,
      'none',
      box(core, [low + EDGE_STRIP + gap, high - EDGE_STRIP - gap], [-inner + gap, inner - gap]),
      [id('skin-left')],
    ),
  ]
}

/**
 * The bee-tight divider: it fills the section from the closed floor to the covers, and its ears fill
 * the rebates over the ledges, where a queen would otherwise walk round under the lugs.
 */
const divider = (design: Design, d: HiveDimensions, x: readonly [number, number]): Part => {
  const half = d.cavityWidth / 2 - LOOSE_CLEARANCE
  const ear = d.cavityWidth / 2 + d.seatWidth - LOOSE_CLEARANCE
  const ears = [d.restHeight, d.coverLedgeHeight] as const
  return makePart({
    id: 'divider/sheet',
    name: 'Divider',
    group: 'boards',
    motion: 'fixed',
    material: design.cavity.boardMaterial,
    grain: 'z',
    solids: [
      boxSolid(box(x, [LOOSE_CLEARANCE, d.coverLedgeHeight], [-half, half])),
      boxSolid(box(x, ears, [half, ear])),
      boxSolid(box(x, ears, [-ear, -half])),
    ],
    operations: [
      { kind: 'notch', width: ear - half, depth: d.restHeight - LOOSE_CLEARANCE, count: 2 },
    ],
    fixedTo: LEDGES,
    explode: { direction: UP, layer: 0 },
    step: STEP.loose,
  })
}

/** Followers and divider in their places in the row. */
export const buildBoards = (
  design: Design,
  d: HiveDimensions,
  row: readonly RowItem[],
): readonly Part[] =>
  row.flatMap((item) => {
    if (item.kind === 'follower') return follower(design, d, item)
    return item.kind === 'divider' ? [divider(design, d, [item.x0, item.x1])] : []
  })
