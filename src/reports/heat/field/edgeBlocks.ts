import type { Design } from '../../../design/schema.ts'
import { type Box, box } from '../../../geometry/box.ts'
import { lidPanelPlan } from '../../../hive/buildLid.ts'
import type { Hive } from '../../../hive/hive.ts'
import { FLOOR_CLEARANCE } from '../../../hive/measure.ts'
import { computeAirGapConductivity } from './computeAirGapConductivity.ts'
import { type HeatBlock, solid } from './heatBlock.ts'
import type { HeatSide } from './hiveHeatModel.ts'
import { partBlock } from './partBlock.ts'

/** Still air in the joints between walls, lid and floor. Walls and lid are painted over it. */
export const buildJointBlocks = (design: Design, hive: Hive): readonly HeatBlock[] => {
  const { dimensions: d } = hive
  const rim = lidPanelPlan(design, d)
  const joint = (placeMm: Box, thicknessMm: number, side: HeatSide): HeatBlock => ({
    placeMm,
    matter: solid(computeAirGapConductivity(thicknessMm, 'horizontal')),
    partId: undefined,
    side,
    isLoose: true,
  })
  const across = [-d.outerWidth / 2, d.outerWidth / 2] as const
  const beside = [-d.floorThickness, 0] as const
  const lap = d.liningThickness
  const bearer = lap + FLOOR_CLEARANCE
  const right = d.cavityLength
  return [
    joint(
      box([rim.u0, rim.u1], [d.wallTop - design.lid.rimDropMm, d.wallTop], [rim.v0, rim.v1]),
      design.lid.rimClearanceMm,
      'lid',
    ),
    joint(box([-bearer, -lap], beside, across), FLOOR_CLEARANCE, 'left-wall'),
    joint(box([right + lap, right + bearer], beside, across), FLOOR_CLEARANCE, 'right-wall'),
  ]
}

/** The strips over the walls, the lid's rim, the rail under its hinges, the bearers. */
export const buildEdgeBlocks = ({ lid }: Design, hive: Hive): readonly HeatBlock[] =>
  hive.parts.flatMap((part): readonly HeatBlock[] => {
    // The rail meets the rim over it but for a hair; nothing depends on the bearers' exact edge.
    if (part.id === 'rim/hinge-rail')
      return [{ ...partBlock(part, `${lid.hingeSide}-wall`), isLoose: true }]
    const side = EDGES.get(part.id)
    if (side === undefined) return []
    return [{ ...partBlock(part, side), isLoose: part.group === 'stand' }]
  })

/** Parts at the hive's edges, and the side that each counts to. */
const EDGES: ReadonlyMap<string, HeatSide> = new Map([
  ...(['front', 'back', 'left', 'right'] as const).flatMap((end): [string, HeatSide][] => [
    [`ring/rest-${end}-wall`, `${end}-wall`],
    [`ring/cover-${end}-wall`, `${end}-wall`],
    [`lid/rim-${end}`, 'lid'],
    [`stand/bearer-${end}`, `${end}-wall`],
  ]),
])
