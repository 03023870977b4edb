import type { Design } from '../design/schema.ts'
import { type Rect, rect } from '../geometry/rect.ts'
import { type BuiltPanel, buildPanel, type PanelSpec } from './buildPanel.ts'
import type { HiveDimensions } from './dimensions.ts'
import type { PanelId, PanelPlane } from './panelPlane.ts'
import type { PlacedOpening } from './placeOpenings.ts'
import { STEP } from './steps.ts'

const WALLS = ['front-wall', 'back-wall', 'left-wall', 'right-wall'] as const
type WallId = (typeof WALLS)[number]

const WORDS: Readonly<Record<WallId, string>> = {
  'front-wall': 'Long wall',
  'back-wall': 'Long wall',
  'left-wall': 'End wall',
  'right-wall': 'End wall',
}

const isLong = (id: PanelId): boolean => id === 'front-wall' || id === 'back-wall'

/** When a wall's cladding goes on: the boards that lap over the other walls' ends go on last. */
export const claddingStep = ({ walls }: Design, id: PanelId): number =>
  isLong(id) === (walls.corner === 'long-through') ? STEP.claddingThrough : STEP.claddingLapped

const stepsOf = (design: Design, id: WallId): PanelSpec['steps'] => {
  const panel = isLong(id) ? STEP.longWalls : STEP.endWalls
  return {
    rails: panel,
    lining: panel,
    insulation: STEP.wallInsulation,
    cladding: claddingStep(design, id),
  }
}

/** Lining and core end at the cavity's corner, or run on past the other walls' cores. */
const innerOutline = (design: Design, d: HiveDimensions, id: WallId, plane: PanelPlane): Rect => {
  const runsThrough = isLong(id) === (design.walls.corner === 'long-through')
  const past = runsThrough ? d.liningThickness + d.coreThickness : 0
  return rect(plane.cavity.u0 - past, plane.cavity.u1 + past, 0, d.restHeight)
}

/**
 * Cladding reaches the wall's top. Where a wall runs through, its cladding ends with its core and the
 * cladding of the walls between laps over its ends, so that no end grain looks out.
 */
const claddingOutline = (
  design: Design,
  d: HiveDimensions,
  id: WallId,
  plane: PanelPlane,
): Rect => {
  const runsThrough = isLong(id) === (design.walls.corner === 'long-through')
  const past = d.liningThickness + d.coreThickness + (runsThrough ? 0 : d.claddingThickness)
  return rect(plane.cavity.u0 - past, plane.cavity.u1 + past, 0, d.wallTop)
}

/** Equal horizontal boards, none wider than the board that can be bought; or the one sheet. */
const claddingPieces = ({ walls }: Design, r: Rect): readonly Rect[] => {
  if (walls.claddingForm === 'sheet') return [r]
  const count = Math.ceil((r.v1 - r.v0) / walls.boardWidthMm - 1e-9)
  const height = (r.v1 - r.v0) / count
  return Array.from({ length: count }, (_, i) =>
    rect(r.u0, r.u1, r.v0 + i * height, i === count - 1 ? r.v1 : r.v0 + (i + 1) * height),
  )
}

/** The four framed walls, up to the frame rest; the rings above them are `buildRings`. */
export const buildWalls = (
  design: Design,
  d: HiveDimensions,
  planes: Readonly<Record<PanelId, PanelPlane>>,
  openings: readonly PlacedOpening[],
): readonly BuiltPanel[] =>
  WALLS.map((id) => {
    const plane = planes[id]
    const inner = innerOutline(design, d, id, plane)
    return buildPanel({
      plane,
      words: WORDS[id],
      group: id,
      motion: 'fixed',
      design: design.walls,
      lining: inner,
      core: inner,
      cladding: claddingPieces(design, claddingOutline(design, d, id, plane)),
      openings: openings.filter((o) => o.wall === id),
      liningFixedTo: isLong(id)
        ? ['left-wall/lining', 'right-wall/lining']
        : ['front-wall/lining', 'back-wall/lining'],
      claddingFixedTo: `ring/rest-${id}`,
      // The rest ring is all timber, over the whole inside length of the wall.
      extraTimberArea: (plane.cavity.u1 - plane.cavity.u0) * d.restDepth,
      steps: stepsOf(design, id),
      names: { lining: `${WORDS[id]} lining`, cladding: `${WORDS[id]} cladding` },
    })
  })
