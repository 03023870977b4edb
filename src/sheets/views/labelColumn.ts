import {
  type DrawingItem,
  LABEL_SIZE_MM,
  type PaperPoint,
  solidLine,
  textItem,
} from '../drawing.ts'

/** A thing to name: the words, one line each, and where on the paper it may be pointed at. */
export interface Label {
  readonly lines: readonly string[]
  /** The face pointed at, as a box on the paper. */
  readonly target: {
    readonly x0: number
    readonly x1: number
    readonly y0: number
    readonly y1: number
  }
  readonly tag: string
}

export interface LabelColumn {
  /** Labels stand right of this x when `side` is right, left of it when left. */
  readonly x: number
  readonly side: 'left' | 'right'
  readonly top: number
  readonly bottom: number
}

const LINE_STEP = 4.3
const GAP = 2.6
const SHOULDER = 3

const heightOf = (label: Label): number => label.lines.length * LINE_STEP + GAP

/** Room that a column of labels needs, mm. */
export const labelColumnHeight = (labels: readonly Label[]): number =>
  labels.reduce((sum, l) => sum + heightOf(l), 0)

/**
 * Labels one under another beside a drawing, each with a leader that ends in a dot inside its target.
 * Each stands as near to its target as the others let it, in the order of the targets down the paper,
 * so leaders seldom cross.
 */
export const labelColumn = (
  labels: readonly Label[],
  column: LabelColumn,
): readonly DrawingItem[] => {
  const sorted = [...labels].sort(
    (a, b) => a.target.y0 + a.target.y1 - b.target.y0 - b.target.y1 || a.target.x0 - b.target.x0,
  )
  const tops = spread(sorted, column)
  return sorted.flatMap((label, i) => drawLabel(label, tops[i] ?? column.top, column, i))
}

/** Tops of the labels: wished at the targets, pushed down past each other, then back up into the column. */
const spread = (labels: readonly Label[], { top, bottom }: LabelColumn): readonly number[] => {
  const tops: number[] = []
  let free = top
  for (const label of labels) {
    const wish = (label.target.y0 + label.target.y1) / 2 - heightOf(label) / 2
    const at = Math.max(wish, free)
    tops.push(at)
    free = at + heightOf(label)
  }
  let limit = bottom
  for (let i = labels.length - 1; i >= 0; i -= 1) {
    const label = labels[i]
    if (label === undefined) continue
    const at = Math.max(top, Math.min(tops[i] ?? top, limit - heightOf(label)))
    tops[i] = at
    limit = at
  }
  return tops
}

const drawLabel = (
  label: Label,
  top: number,
  { x, side }: LabelColumn,
  index: number,
): readonly DrawingItem[] => {
  const sense = side === 'right' ? 1 : -1
  const shoulderY = top + (label.lines.length * LINE_STEP) / 2 + GAP / 2
  const dot = pointAt(label.target, shoulderY, side, index)
  const bend = { x: x - sense * 1, y: shoulderY }
  const textX = x + sense * (SHOULDER - 1)
  return [
    solidLine('thin', dot, bend, `leader/${label.tag}`),
    solidLine('thin', bend, { x: bend.x + sense * (SHOULDER - 0.5), y: shoulderY }),
    dotItem(dot),
    ...label.lines.map((line, i) =>
      textItem({ x: textX, y: top + GAP / 2 + LINE_STEP * i + LABEL_SIZE_MM * 0.95 }, line, {
        anchor: side === 'right' ? 'start' : 'end',
        weight: i === 0 ? 'semibold' : 'regular',
        tag: label.tag,
      }),
    ),
  ]
}

/** A place inside the target, level with its label if that can be, and towards the label's side. */
const pointAt = (
  { x0, x1, y0, y1 }: Label['target'],
  y: number,
  side: 'left' | 'right',
  index: number,
): PaperPoint => {
  const inset = Math.min((x1 - x0) / 2, 4 + (index % 3) * 4)
  const margin = Math.min((y1 - y0) / 2, 3)
  return {
    x: side === 'right' ? x1 - inset : x0 + inset,
    y: Math.min(Math.max(y, y0 + margin), y1 - margin),
  }
}

const DOT_RADIUS = 0.55

/** A dot large enough to be found on a hatch. */
const dotItem = (at: PaperPoint): DrawingItem => ({
  kind: 'polygon',
  points: Array.from({ length: 8 }, (_, i) => ({
    x: at.x + DOT_RADIUS * Math.cos((i * Math.PI) / 4),
    y: at.y + DOT_RADIUS * Math.sin((i * Math.PI) / 4),
  })),
  stroke: undefined,
  tint: 'ink',
  hatch: 'none',
})
