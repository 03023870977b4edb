import { materialById } from '../../../catalog/materials.ts'
import { type Box, boundingBox } from '../../../geometry/box.ts'
import type { PanelDesign } from '../../../hive/buildPanel.ts'
import { studPitch } from '../../../hive/layCore.ts'
import type { PanelPlane } from '../../../hive/panelPlane.ts'
import type { Part } from '../../../hive/part.ts'
import { type HeatBlock, solid, spanOf, withSpan } from './heatBlock.ts'
import type { HeatSide } from './hiveHeatModel.ts'
import { joinedBlocks, partBlock, partBounds } from './partBlock.ts'

export interface PanelQuestion {
  readonly plane: PanelPlane
  readonly design: PanelDesign
  /** All parts of the hive. */
  readonly parts: readonly Part[]
  /** Each stud in two halves, the outer one moved by half a bay. */
  readonly hasStaggeredStuds?: boolean
}

/** A framed panel; the core is painted first, so that what follows may cover some of it. */
export interface PanelBlocks {
  readonly core: readonly HeatBlock[]
  readonly tunnelBlocks: readonly HeatBlock[]
  readonly skins: readonly HeatBlock[]
}

/**
 * Lining, insulation, timber and cladding as blocks without holes: openings are painted over them.
 * Insulation fills what timber leaves of the core, its clearance included.
 */
export const buildPanelBlocks = (question: PanelQuestion): PanelBlocks => {
  const { plane, design, parts, hasStaggeredStuds = false } = question
  const own = parts.filter(({ group }) => group === plane.id)
  const named = (piece: string) => {
    const start = `${plane.id}/${piece}`
    return own.filter(({ id }) => id.startsWith(start))
  }
  const side: HeatSide = plane.id
  const [rails, studs, tunnels] = [named('rail-'), named('stud-'), named('block-')]
  const core = boundingBox([...rails, ...studs, ...tunnels].map(partBounds))
  const studBlocks = studs.map((stud) => partBlock(stud, side))
  return {
    core: [
      {
        placeMm: core,
        matter: solid(materialById(design.insulation).conductivityWPerMK),
        partId: named('insulation-')[0]?.id,
        side,
      },
      ...(hasStaggeredStuds ? studBlocks.flatMap(staggerStud(question, core)) : studBlocks),
      ...rails.map((rail) => partBlock(rail, side)),
    ],
    tunnelBlocks: tunnels.map((block) => partBlock(block, 'entrance')),
    skins: [
      ...named('lining').map((lining) => partBlock(lining, side)),
      ...joinedBlocks(named('cladding'), side),
    ],
  }
}

/** The inner half where it was, the outer half in the middle of the next bay. */
const staggerStud =
  ({ plane, design }: PanelQuestion, core: Box) =>
  (stud: HeatBlock): readonly HeatBlock[] => {
    const { uAxis, normal, out } = plane
    const [n0, n1] = spanOf(core, normal)
    const middle = (n0 + n1) / 2
    const [u0, u1] = spanOf(stud.placeMm, uAxis)
    const [start, end] = spanOf(core, uAxis)
    const bay = studPitch(end - start, design.railWidthMm, design.railSpacingMm)
    // The last has no bay beyond it and moves inwards by its own width.
    const shift = u1 + bay / 2 <= end ? bay / 2 : u0 - u1
    const outer = withSpan(stud.placeMm, uAxis, u0 + shift, u1 + shift)
    const [low, high] = [
      [n0, middle],
      [middle, n1],
    ] as const
    const [inside, outside] = out === 1 ? [low, high] : [high, low]
    return [
      { ...stud, placeMm: withSpan(stud.placeMm, normal, ...inside) },
      { ...stud, placeMm: withSpan(outer, normal, ...outside) },
    ]
  }
