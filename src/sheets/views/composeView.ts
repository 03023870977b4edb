import {
  type DrawingItem,
  estimateTextWidthMm,
  HEADING_SIZE_MM,
  LABEL_SIZE_MM,
  type LineItem,
  solidLine,
  textItem,
} from '../drawing.ts'
import { firstScale, fitsIn, type Size } from '../fitScale.ts'
import { type ModelPoint, toPaper, type View, type ViewDrawing } from '../view.ts'
import {
  type DimensionSpec,
  FIRST_LINE_OFF,
  levelDimension,
  NEXT_LINE_OFF,
  uprightDimension,
} from './dimensionLine.ts'
import { type Outline, outlineItems } from './outlineView.ts'

/** A length along the paper; its extension lines start at the model height `fromV` or at the outline. */
export interface LevelSpec extends DimensionSpec {
  readonly u0: number
  readonly u1: number
  readonly fromV?: number
}

/** A height on the paper; its extension lines start at `fromU` or at the outline. */
export interface UprightSpec extends DimensionSpec {
  readonly v0: number
  readonly v1: number
  readonly fromU?: number
}

export interface ViewSpec {
  readonly title: string
  /** For the title block, when views share a sheet. */
  readonly shortTitle?: string
  readonly outline: Outline
  /** Dimension lines in three places, nearest to the outline first. */
  readonly below: readonly LevelSpec[]
  readonly left: readonly UprightSpec[]
  readonly right: readonly UprightSpec[]
  /** What is drawn under the lines once the scale is known: the faces of a section. */
  readonly fill?: (view: View) => readonly DrawingItem[]
  /** Where moving things stand when open, as chain lines. */
  readonly ghosts?: readonly (readonly ModelPoint[])[]
  /** Model height of the ground, drawn as a line; none for views from above. */
  readonly ground?: number
}

const TITLE_ROOM = HEADING_SIZE_MM + 4
const GROUND_PAST = 5

/** Room that a row of dimension lines takes, out to the type of the last one, paper mm. */
const roomFor = (count: number): number =>
  count === 0 ? GROUND_PAST + 1 : FIRST_LINE_OFF + NEXT_LINE_OFF * (count - 1) + LABEL_SIZE_MM + 2

const titleOf = (spec: ViewSpec, scaleDenominator: number): string =>
  `${spec.title}  1:${scaleDenominator}`

/** What a view takes on paper at 1:N with its dimension lines and title. */
export const viewSize = (spec: ViewSpec, scaleDenominator: number): Size => {
  const { bounds } = spec.outline
  const leftRoom = roomFor(spec.left.length)
  const model = (bounds.u1 - bounds.u0) / scaleDenominator
  const title = estimateTextWidthMm(titleOf(spec, scaleDenominator), HEADING_SIZE_MM)
  return {
    widthMm: leftRoom + Math.max(model + roomFor(spec.right.length), title),
    heightMm: TITLE_ROOM + (bounds.v1 - bounds.v0) / scaleDenominator + roomFor(spec.below.length),
  }
}

/** A view at the largest standard scale that fits the area. */
export const fitView = (spec: ViewSpec, area: Size): ViewDrawing =>
  composeView(
    spec,
    firstScale((n) => fitsIn(viewSize(spec, n), area)),
  )

/** Sets a view with its dimension lines and title on a paper just large enough, at 1:N. */
export const composeView = (spec: ViewSpec, scaleDenominator: number): ViewDrawing => {
  const scale = 1 / scaleDenominator
  const { bounds } = spec.outline
  const leftRoom = roomFor(spec.left.length)
  const view: View = {
    scale,
    origin: { x: leftRoom - bounds.u0 * scale, y: TITLE_ROOM + bounds.v1 * scale },
  }
  return {
    ...viewSize(spec, scaleDenominator),
    view,
    scaleDenominator,
    items: [
      ...(spec.fill?.(view) ?? []),
      textItem({ x: leftRoom, y: HEADING_SIZE_MM }, titleOf(spec, scaleDenominator), {
        sizeMm: HEADING_SIZE_MM,
        weight: 'semibold',
      }),
      ...groundItems(spec, view),
      ...dimensionItems(spec, view),
      ...outlineItems(spec.outline, view),
      ...ghostItems(spec, view),
    ],
  }
}

const groundItems = (
  { ground, outline: { bounds } }: ViewSpec,
  view: View,
): readonly LineItem[] => {
  if (ground === undefined) return []
  const [from, to] = [bounds.u0, bounds.u1].map((u) => toPaper(view, { u, v: ground }))
  if (from === undefined || to === undefined) return []
  return [
    solidLine(
      'medium',
      { x: from.x - GROUND_PAST, y: from.y },
      { x: to.x + GROUND_PAST, y: to.y },
      'ground',
    ),
  ]
}

const ghostItems = ({ ghosts = [] }: ViewSpec, view: View): readonly DrawingItem[] =>
  ghosts.map((ghost) => ({
    kind: 'polygon',
    points: ghost.map((p) => toPaper(view, p)),
    stroke: { weight: 'thin', dash: 'phantom' },
    tint: 'none',
    hatch: 'none',
  }))

const dimensionItems = (spec: ViewSpec, view: View): readonly DrawingItem[] => {
  const { bounds } = spec.outline
  const corner = toPaper(view, { u: bounds.u0, v: bounds.v0 })
  const far = toPaper(view, { u: bounds.u1, v: bounds.v0 })
  const below = spec.below.flatMap((d, i) => {
    const at = { v: d.fromV ?? bounds.v0 }
    return levelDimension({
      ...d,
      x0: toPaper(view, { u: d.u0, ...at }).x,
      x1: toPaper(view, { u: d.u1, ...at }).x,
      y: corner.y + FIRST_LINE_OFF + i * NEXT_LINE_OFF,
      outlineY: toPaper(view, { u: d.u0, ...at }).y,
    })
  })
  const upright = (d: UprightSpec, x: number, outlineU: number) =>
    uprightDimension({
      ...d,
      y0: toPaper(view, { u: 0, v: d.v0 }).y,
      y1: toPaper(view, { u: 0, v: d.v1 }).y,
      x,
      outlineX: toPaper(view, { u: d.fromU ?? outlineU, v: 0 }).x,
    })
  return [
    ...below,
    ...spec.left.flatMap((d, i) =>
      upright(d, corner.x - FIRST_LINE_OFF - i * NEXT_LINE_OFF, bounds.u0),
    ),
    ...spec.right.flatMap((d, i) =>
      upright(d, far.x + FIRST_LINE_OFF + i * NEXT_LINE_OFF, bounds.u1),
    ),
  ]
}
