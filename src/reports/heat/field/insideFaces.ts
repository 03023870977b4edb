import type { Hive } from '../../../hive/hive.ts'
import type { FieldAnswer } from '../../../solvers/conduction/fieldAnswer.ts'
import type { Triple } from '../../../solvers/conduction/world.ts'
import { distanceToBox } from './distanceToBox.ts'
import { type HeatSide, type HiveHeatModel, INSIDE } from './hiveHeatModel.ts'
import { depthInside, deriveInnerPanels, type InnerPanel, isBefore } from './innerPanels.ts'

/** A small patch of the hive's inner surface. */
export interface InsideFace {
  readonly centreMm: Triple
  /** The way it faces; see `SurfaceFaces.direction`. */
  readonly direction: number
  readonly areaM2: number
  /** From the air inside into the matter, for each degree between inside and outside. */
  readonly heatWPerK: number
  /** The panel it is counted to, or the entrances. */
  readonly side: HeatSide
  /** Faces inwards like its panel, within the panel's inner outline: part of the panel's area. */
  readonly isOfPanelArea: boolean
  /** To the nearest entrance or vent, mm; infinite if there is none. */
  readonly fromOpeningMm: number
  /** Of its coldest corner, as a share of the way from outside to inside. */
  readonly leastShare: number
  readonly block: number
}

/**
 * The faces that the air inside touches. Their heat is scaled by a hair so that it adds up to
 * `conductanceWPerK`, which is better known than any face. Throws when no heat leaves the air inside.
 */
export const listInsideFaces = (
  hive: Pick<Hive, 'dimensions' | 'openings'>,
  { sources }: Pick<HiveHeatModel, 'sources'>,
  field: Pick<FieldAnswer, 'faces' | 'conductanceWPerK'>,
): readonly InsideFace[] => {
  const { faces } = field
  const inside = indicesInside(faces.environment, faces.count)
  const total = inside.reduce((sum, i) => sum + (faces.heatW[i] ?? 0), 0)
  if (!(total > 0)) throw new Error('listInsideFaces: no heat leaves the air inside')
  const scale = (field.conductanceWPerK ?? total) / total

  const panels = deriveInnerPanels(hive.dimensions)
  return inside.map((i): InsideFace => {
    const centreMm = pointMm(faces.centreM, i)
    const direction = faces.direction[i] ?? 0
    const block = faces.block[i] ?? 0
    const side = sideOf(panels, centreMm, direction, sources[block]?.side)
    const panel = panels.find(({ id }) => id === side)
    return {
      centreMm,
      direction,
      areaM2: faces.areaM2[i] ?? 0,
      heatWPerK: (faces.heatW[i] ?? 0) * scale,
      side,
      isOfPanelArea:
        panel !== undefined && panel.direction === direction && isBefore(panel, centreMm),
      fromOpeningMm: hive.openings.reduce(
        (least, { tunnel }) => Math.min(least, distanceToBox(centreMm, tunnel)),
        Number.POSITIVE_INFINITY,
      ),
      leastShare: faces.leastC[i] ?? 0,
      block,
    }
  })
}

const indicesInside = (environment: Uint8Array, count: number): readonly number[] => {
  const inside: number[] = []
  for (let i = 0; i < count; i++) if (environment[i] === INSIDE) inside.push(i)
  return inside
}

const pointMm = (metres: Float32Array, i: number): Triple => [
  (metres[3 * i] ?? 0) * 1000,
  (metres[3 * i + 1] ?? 0) * 1000,
  (metres[3 * i + 2] ?? 0) * 1000,
]

/**
 * A face in a panel's inner plane that looks the panel's way is the panel's, whatever part shows it:
 * the end of a long wall's strip may well be seen in the end wall. All else goes with the part's own
 * side, so that ledges and rebates count to their wall; a loose part goes to the nearest panel.
 */
const sideOf = (
  panels: readonly InnerPanel[],
  point: Triple,
  direction: number,
  ofPart: HeatSide | undefined,
): HeatSide => {
  if (ofPart === 'entrance') return ofPart
  const facing = panels.find(
    (panel) => panel.direction === direction && Math.abs(depthInside(panel, point)) <= SAME_PLANE,
  )
  return facing?.id ?? ofPart ?? nearestPanel(panels, point)
}

/** Planes of the grid may have been taken together over this distance, mm. */
const SAME_PLANE = 1

const nearestPanel = (panels: readonly InnerPanel[], point: Triple): HeatSide => {
  let nearest: HeatSide = 'floor'
  let least = Number.POSITIVE_INFINITY
  for (const panel of panels) {
    const depth = Math.abs(depthInside(panel, point))
    if (depth >= least) continue
    nearest = panel.id
    least = depth
  }
  return nearest
}
