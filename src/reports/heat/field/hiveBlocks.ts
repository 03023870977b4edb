import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'
import { box } from '../../../geometry/box.ts'
import type { Hive } from '../../../hive/hive.ts'
import { panelPlanes } from '../../../hive/panelPlane.ts'
import { buildEdgeBlocks, buildJointBlocks } from './edgeBlocks.ts'
import { type HeatBlock, solid } from './heatBlock.ts'
import type { HeatSide } from './hiveHeatModel.ts'
import { buildOpeningBlocks } from './openingBlocks.ts'
import { buildPanelBlocks } from './panelBlocks.ts'
import { buildRoofBlocks } from './roofBlocks.ts'
import { buildRoomBlocks } from './roomBlocks.ts'

/** How the walls' timber is kept from leading heat straight through; `none` is the hive as it is. */
export type WallRemedy =
  | { readonly kind: 'none' }
  | { readonly kind: 'staggered' }
  /** Insulation over the outer face of all cores, from the floor up to a height. */
  | { readonly kind: 'foam'; readonly depthMm: number; readonly topMm: number }

export interface HiveBlocks {
  readonly blocks: readonly HeatBlock[]
  readonly slopeSteps: number
}

/** All blocks of the closed hive in the order in which they are painted. */
export const layHiveBlocks = (
  design: Design,
  hive: Hive,
  options: { readonly slopeSteps: number; readonly remedy: WallRemedy },
): HiveBlocks => {
  const { parts, dimensions } = hive
  const { remedy } = options
  const planes = panelPlanes(dimensions)
  const walls = WALLS.map((id) =>
    buildPanelBlocks({
      plane: planes[id],
      design: design.walls,
      parts,
      hasStaggeredStuds: remedy.kind === 'staggered',
    }),
  )
  const slabs = (['lid', 'floor'] as const).map((id) =>
    buildPanelBlocks({ plane: planes[id], design: design[id], parts }),
  )
  const roof = buildRoofBlocks(design, hive, options.slopeSteps)
  const panels = [...walls, ...slabs]
  return {
    blocks: [
      ...buildJointBlocks(design, hive),
      ...panels.flatMap(({ core }) => core),
      ...buildEdgeBlocks(design, hive),
      ...(remedy.kind === 'foam' ? foamRound(design, hive, remedy) : []),
      ...panels.flatMap(({ tunnelBlocks, skins }) => [...tunnelBlocks, ...skins]),
      ...roof.blocks,
      ...buildRoomBlocks(design, hive),
      ...buildOpeningBlocks(hive),
    ],
    slopeSteps: roof.steps,
  }
}

const WALLS = ['front-wall', 'back-wall', 'left-wall', 'right-wall'] as const

/** Insulation just inside the cladding of all four walls, corners included. */
const foamRound = (
  { walls }: Design,
  { parts, dimensions: d }: Hive,
  { depthMm, topMm }: Extract<WallRemedy, { kind: 'foam' }>,
): readonly HeatBlock[] => {
  const past = d.liningThickness + d.coreThickness
  const [x0, x1] = [-past, d.cavityLength + past]
  const z1 = d.cavityWidth / 2 + past
  const y = [0, topMm] as const
  const strip = (side: HeatSide, x: readonly [number, number], z: readonly [number, number]) => ({
    placeMm: box(x, y, z),
    matter: solid(materialById(walls.insulation).conductivityWPerMK),
    partId: parts.find(({ id }) => id.startsWith(`${side}/insulation-`))?.id,
    side,
  })
  return [
    strip('front-wall', [x0, x1], [z1 - depthMm, z1]),
    strip('back-wall', [x0, x1], [-z1, depthMm - z1]),
    strip('left-wall', [x0, x0 + depthMm], [-z1, z1]),
    strip('right-wall', [x1 - depthMm, x1], [-z1, z1]),
  ]
}
