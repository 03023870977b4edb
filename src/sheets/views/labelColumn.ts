import {
  type DrawingItem,
  LABEL_SIZE_MM,
  type PaperPoint,
  solidLine,
  textItem,
} from '../drawing.ts'

/** A thing to name: the words, one line each, and the convex face on the paper that it points at. */
export interface Label {
  readonly lines: readonly string[]
  readonly face: readonly PaperPoint[]
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
 * Labels one under another beside a drawing, each with a leader that ends in a dot inside its face. Each
 * stands as near to its face as the others let it; neighbours whose leaders would cross change places.
 */
export const labelColumn = (
  labels: readonly Label[],
  column: LabelColumn,
): readonly DrawingItem[] => {
  const middle = (l: Label) => boundsOfFace(l.face)
  const sorted = [...labels].sort((a, b) => middle(a).y - middle(b).y || middle(a).x - middle(b).x)
  return untangle(sorted, column).flatMap((placed) => drawLabel(placed, column))
}

interface PlacedLabel {
  readonly label: Label
  readonly top: number
  /** Where the leader ends in the face, and where it leaves the label. */
  readonly dot: PaperPoint
  readonly bend: PaperPoint
}

/** Swaps neighbours with crossing leaders until none cross; gives up after enough rounds to sort them all. */
const untangle = (labels: readonly Label[], column: LabelColumn): readonly PlacedLabel[] => {
  const order = [...labels]
  for (let round = 0; round < labels.length; round += 1) {
    let isSwapped = false
    for (let i = 0; i + 1 < order.length; i += 1) {
      const placed = placeLabels(order, column)
      const [a, b] = [placed[i], placed[i + 1]]
      if (a && b && leadersCross(a, b)) {
        order.splice(i, 2, b.label, a.label)
        isSwapped = true
      }
    }
    if (!isSwapped) break
  }
  return placeLabels(order, column)
}

const placeLabels = (labels: readonly Label[], column: LabelColumn): readonly PlacedLabel[] => {
  const tops = spread(labels, column)
  const sense = column.side === 'right' ? 1 : -1
  return labels.map((label, i) => {
    const top = tops[i] ?? column.top
    const y = top + (label.lines.length * LINE_STEP) / 2 + GAP / 2
    return {
      label,
      top,
      dot: pointIn(label.face, y, column.side),
      bend: { x: column.x - sense, y },
    }
  })
}

const leadersCross = (a: PlacedLabel, b: PlacedLabel): boolean => {
  const side = (p: PlacedLabel, q: PaperPoint) =>
    (p.bend.x - p.dot.x) * (q.y - p.dot.y) - (p.bend.y - p.dot.y) * (q.x - p.dot.x)
  return side(a, b.dot) * side(a, b.bend) < 0 && side(b, a.dot) * side(b, a.bend) < 0
}

/** Tops of the labels: wished at the faces, pushed down past each other, then back up into the column. */
const spread = (labels: readonly Label[], { top, bottom }: LabelColumn): readonly number[] => {
  const tops: number[] = []
  let free = top
  for (const label of labels) {
    const wish = boundsOfFace(label.face).y - heightOf(label) / 2
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
  { label, top, dot, bend }: PlacedLabel,
  { x, side }: LabelColumn,
): readonly DrawingItem[] => {
  const sense = side === 'right' ? 1 : -1
  const textX = x + sense * (SHOULDER - 1)
  return [
    solidLine('thin', dot, bend, `leader/${label.tag}`),
    solidLine('thin', bend, { x: bend.x + sense * (SHOULDER - 0.5), y: bend.y }),
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

/** Middle and extent of a face. */
const boundsOfFace = (face: readonly PaperPoint[]) => {
  const [xs, ys] = [face.map((p) => p.x), face.map((p) => p.y)]
  const [x0, x1] = [Math.min(...xs), Math.max(...xs)]
  return { x0, x1, x: (x0 + x1) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 }
}

/** A place inside a convex face: towards the label's side, and level with the label if that can be. */
const pointIn = (face: readonly PaperPoint[], y: number, side: 'left' | 'right'): PaperPoint => {
  const { x0, x1 } = boundsOfFace(face)
  const inset = Math.min((x1 - x0) / 2, 5)
  const x = side === 'right' ? x1 - inset : x0 + inset
  // Heights at which the face's edges pass this x.
  const hits = face.flatMap((p, i) => {
    const q = face[(i + 1) % face.length] ?? p
    if (p.x <= x === q.x <= x) return []
    return [p.y + ((x - p.x) / (q.x - p.x)) * (q.y - p.y)]
  })
  const [top, bottom] = [Math.min(...hits), Math.max(...hits)]
  const margin = Math.min((bottom - top) / 2, 3)
  return { x, y: Math.min(Math.max(y, top + margin), bottom - margin) }
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
