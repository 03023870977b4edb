import type { Hive } from '../../hive/hive.ts'
import type { PartGroup } from '../../hive/part.ts'
import type { HeatFieldAnswer } from '../../reports/heat/field/heatFieldAnswer.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import {
  type DrawingItem,
  estimateTextWidthMm,
  HEADING_SIZE_MM,
  solidLine,
  textItem,
} from '../drawing.ts'
import { firstScale, fitsIn, type Size } from '../fitScale.ts'
import { toPaper, type View, type ViewDrawing } from '../view.ts'
import { type CutPart, cutParts } from '../views/cutParts.ts'
import type { CutPlane } from '../views/cutSolid.ts'
import { type Bounds2, boundsOf } from '../views/polygon2.ts'
import { bandItems } from './bandItems.ts'
import { clipLines } from './clipToFaces.ts'
import { traceContour } from './contours.ts'
import { deriveHeatScale, type HeatTemperatures } from './heatBands.ts'
import { isothermLabels, LABEL_COLUMN_MM, type PlacedIsotherm } from './isothermLabels.ts'
import { sliceField } from './sliceField.ts'

/** What a thermal section shows, and in which units. */
export interface HeatSectionQuestion {
  readonly answer: Pick<HeatFieldAnswer, 'grid'>
  readonly temperatures: HeatTemperatures
  readonly units: UnitPreferences
}

export interface HeatSection extends ViewDrawing {
  /** Where the hive begins; labels stand at its left. */
  readonly left: number
}

const TITLE_ROOM = HEADING_SIZE_MM + 4

/**
 * The hive cut across or along, coloured by temperature with labelled isotherms, at the largest standard
 * scale that fits. Heat is shown in matter only: air and what hangs in it stay white. The stand is left
 * out. Empty but for the title where the plane misses.
 */
export const fitHeatSection = (
  hive: Hive,
  plane: CutPlane,
  question: HeatSectionQuestion,
  area: Size,
): HeatSection => {
  const parts = hive.parts.filter((p) => p.group !== 'stand' && p.group !== 'hardware')
  const cuts = cutParts(parts, plane)
  const corners = cuts.flatMap((c) => c.faces.flat())
  const bounds = corners.length > 0 ? boundsOf(corners) : { u0: 0, u1: 0, v0: 0, v1: 0 }
  const title = `Temperatures ${plane.axis === 'x' ? 'across' : 'along'} the hive`
  const scaleDenominator = firstScale((n) => fitsIn(sizeAt(bounds, title, n), area))
  const scale = 1 / scaleDenominator
  const view: View = {
    scale,
    origin: { x: LABEL_COLUMN_MM - bounds.u0 * scale, y: TITLE_ROOM + bounds.v1 * scale },
  }
  return {
    ...sizeAt(bounds, title, scaleDenominator),
    view,
    scaleDenominator,
    left: LABEL_COLUMN_MM,
    items: [
      textItem({ x: LABEL_COLUMN_MM, y: HEADING_SIZE_MM }, `${title}  1:${scaleDenominator}`, {
        sizeMm: HEADING_SIZE_MM,
        weight: 'semibold',
      }),
      ...(cuts.length === 0 ? [] : heatItems({ hive, plane, cuts, view }, question)),
    ],
  }
}

/** Room for labels at the left and the title above. */
const sizeAt = (b: Bounds2, title: string, scaleDenominator: number): Size => {
  const heading = estimateTextWidthMm(`${title}  1:${scaleDenominator}`, HEADING_SIZE_MM)
  return {
    widthMm: LABEL_COLUMN_MM + Math.max((b.u1 - b.u0) / scaleDenominator + 1, heading),
    heightMm: TITLE_ROOM + (b.v1 - b.v0) / scaleDenominator + 1,
  }
}

/** Parts that hang or stand in the air of the hive: outlines only. */
const IN_AIR: ReadonlySet<PartGroup> = new Set(['frames', 'boards'])

interface Cut {
  readonly hive: Hive
  readonly plane: CutPlane
  readonly cuts: readonly CutPart[]
  readonly view: View
}

const heatItems = (
  { hive, plane, cuts, view }: Cut,
  { answer, temperatures, units }: HeatSectionQuestion,
): readonly DrawingItem[] => {
  const slice = sliceField(answer.grid, plane)
  const { levels, bands } = deriveHeatScale(temperatures, units.temperature)
  const warm = cuts.filter((c) => !IN_AIR.has(c.part.group))
  const faces = warm.flatMap((c) => c.faces)
  const isotherms = levels.map((level): PlacedIsotherm => {
    const traced = traceContour(slice, level.share).map(({ points }) => points)
    const lines = clipLines(traced, faces)
    return { level, lines: lines.map((line) => line.map((p) => toPaper(view, p))) }
  })
  return [
    ...bandItems(warm, slice, bands, view),
    ...cuts.flatMap((cut) =>
      cut.edges.map(
        (e): DrawingItem => ({
          ...solidLine('thin', toPaper(view, e.a), toPaper(view, e.b), cut.part.id),
          tone: 'pale',
        }),
      ),
    ),
    ...isotherms.flatMap(({ lines }) =>
      lines.map(
        (points): DrawingItem => ({
          kind: 'polyline',
          points,
          weight: 'medium',
          dash: 'solid',
          tag: 'isotherm',
        }),
      ),
    ),
    ...isothermLabels(isotherms, {
      x: LABEL_COLUMN_MM - 3,
      wall: labelWall(hive, plane, view),
      unit: units.temperature,
    }),
  ]
}

/** The wall at the left of the drawing between floor and rest, on the paper, without its ends. */
const labelWall = ({ dimensions: d }: Hive, { axis }: CutPlane, view: View) => {
  const inner = axis === 'x' ? -d.cavityWidth / 2 : 0
  const from = toPaper(view, { u: inner - d.wallThickness, v: d.restHeight * 0.92 })
  const to = toPaper(view, { u: inner, v: d.restHeight * 0.12 })
  return { x0: from.x, x1: to.x, y0: from.y, y1: to.y }
}
