import type { Hive } from '../../../hive/hive.ts'
import type { HeatReport } from '../computeHeat.ts'
import type { PanelHeat } from '../panelHeat.ts'
import type { EdgeLoss } from './heatFieldAnswer.ts'
import { deriveEdgeKinds, type EdgeKind, nearestEdgeKind } from './innerEdges.ts'
import type { InsideFace } from './insideFaces.ts'

/**
 * What the edges cost beyond the panels' own R-values. Every face's heat, less what its panel's
 * resistance with rails lets through the same area, goes to the nearest kind of edge; so the extras
 * of all kinds and the conductances of all panels (ISO 6946) add up to the heat of all faces exactly.
 * Lengths are inside lengths, as ISO 10211 asks to be declared.
 */
export const computeEdgeLosses = (
  hive: Pick<Hive, 'dimensions' | 'openings'>,
  heat: Pick<HeatReport, 'panels' | 'walls'>,
  faces: readonly InsideFace[],
): readonly EdgeLoss[] => {
  const kinds = deriveEdgeKinds(hive)
  const extra: Record<EdgeLoss['id'], number> = {
    ...{ corners: 0, 'wall-lid': 0, 'wall-floor': 0, entrances: 0 },
  }
  // What leaves through each face …
  for (const face of faces) extra[nearestEdgeKind(kinds, face.centreMm)] += face.heatWPerK
  // … less what each panel is expected to lose anyway.
  for (const panel of heat.panels) {
    for (const { kind, shareM2 } of spreadArea(hive, kinds, panel, faces)) {
      extra[kind] -= shareM2 / panel.withRailsM2KPerW
    }
  }
  return kinds.map(({ id, name, lengthM }) => ({
    id,
    name,
    lengthM,
    extraWPerK: extra[id],
    psiWPerMK: lengthM > 0 ? extra[id] / lengthM : 0,
    asWallM2: extra[id] * heat.walls.withRailsM2KPerW,
  }))
}

interface SpreadArea {
  readonly kind: EdgeLoss['id']
  readonly shareM2: number
}

/**
 * A panel's inner area, spread over the faces in it. Ledges and rebate sides are no part of that
 * area, so all their heat is extra. The holes of the openings are part of it but have no face: their
 * area is put down to the entrances. Whatever else has no face, such as the strip that a divider
 * covers, is made up for evenly by the other faces.
 */
const spreadArea = (
  hive: Pick<Hive, 'openings'>,
  kinds: readonly EdgeKind[],
  panel: PanelHeat,
  faces: readonly InsideFace[],
): readonly SpreadArea[] => {
  const holesM2 = hive.openings
    .filter(({ wall }) => `${wall}-wall` === panel.id)
    .reduce((sum, { area }) => sum + area / MM2_PER_M2, 0)
  const own = faces.filter(({ side, isOfPanelArea }) => side === panel.id && isOfPanelArea)
  const seenM2 = own.reduce((sum, { areaM2 }) => sum + areaM2, 0)
  const rest = panel.areaM2 - holesM2
  const holes = { kind: 'entrances', shareM2: holesM2 } as const
  if (seenM2 === 0) return [holes, { kind: unseenKind(panel.id), shareM2: rest }]
  return [
    ...(holesM2 > 0 ? [holes] : []),
    ...own.map(({ centreMm, areaM2 }) => ({
      kind: nearestEdgeKind(kinds, centreMm),
      shareM2: (areaM2 / seenM2) * rest,
    })),
  ]
}

/** Where a panel goes of which the air inside touches nothing. */
const unseenKind = (id: PanelHeat['id']): EdgeLoss['id'] =>
  id === 'floor' ? 'wall-floor' : 'wall-lid'

const MM2_PER_M2 = 1e6
