import {
  type DrawingItem,
  estimateTextWidthMm,
  LABEL_SIZE_MM,
  type PaperPoint,
  solidLine,
  textItem,
} from '../drawing.ts'

/** Habits of ISO 129-1, paper mm. */
const EXTENSION_PAST = 2
const EXTENSION_GAP = 1
const TICK_HALF = 1.2
const TEXT_ABOVE = 1
export const FIRST_LINE_OFF = 10
export const NEXT_LINE_OFF = 7

export interface DimensionSpec {
  /** Names it for tests and links: `outerLength`. */
  readonly name: string
  /** The measured length as shown, unit left out: it is stated once in the title block. */
  readonly value: string
  /** Words set after the value: `to the top bars`. */
  readonly note?: string
  /** Fewer words for a short line: `top bars`. */
  readonly shortNote?: string
}

export interface LevelDimension extends DimensionSpec {
  readonly x0: number
  readonly x1: number
  /** Height of the dimension line on the paper. */
  readonly y: number
  /** Where the outline is that the extension lines come from. */
  readonly outlineY: number
}

export interface UprightDimension extends DimensionSpec {
  readonly y0: number
  readonly y1: number
  readonly x: number
  readonly outlineX: number
}

interface DimensionText {
  readonly text: string
  readonly fits: boolean
}

/** Value with its words or fewer of them as fits along the line, else alone, beside the line if need be. */
const textOf = ({ value, note, shortNote }: DimensionSpec, room: number): DimensionText => {
  const fits = (text: string) => estimateTextWidthMm(text, LABEL_SIZE_MM) <= room
  const texts = [note, shortNote].filter((n) => n !== undefined).map((n) => `${value} ${n}`)
  const fitting = [...texts, value].find(fits)
  return { text: fitting ?? value, fits: fitting !== undefined }
}

/** An oblique tick where a dimension line ends, as builders draw it; it can't be taken for an edge. */
const tick = (at: PaperPoint): DrawingItem =>
  solidLine(
    'medium',
    { x: at.x - TICK_HALF, y: at.y + TICK_HALF },
    { x: at.x + TICK_HALF, y: at.y - TICK_HALF },
  )

/** From just off the outline at `from` to just past the dimension line at `to`. */
const reach = (from: number, to: number): readonly [number, number] => {
  const sense = Math.sign(to - from) || 1
  return [from + sense * EXTENSION_GAP, to + sense * EXTENSION_PAST]
}

/** A dimension along the paper: extension lines, line, ticks, and the text above the line. */
export const levelDimension = (d: LevelDimension): readonly DrawingItem[] => {
  const [start, end] = reach(d.outlineY, d.y)
  const { text, fits } = textOf(d, Math.abs(d.x1 - d.x0))
  const right = Math.max(d.x0, d.x1)
  return [
    ...[d.x0, d.x1].map((x) => solidLine('thin', { x, y: start }, { x, y: end })),
    solidLine('thin', { x: d.x0, y: d.y }, { x: d.x1, y: d.y }, `dimension/${d.name}`),
    tick({ x: d.x0, y: d.y }),
    tick({ x: d.x1, y: d.y }),
    textItem(
      fits
        ? { x: (d.x0 + d.x1) / 2, y: d.y - TEXT_ABOVE }
        : { x: right + 2 * TICK_HALF, y: d.y - TEXT_ABOVE },
      text,
      { anchor: fits ? 'middle' : 'start', tag: `dimension/${d.name}` },
    ),
  ]
}

/** A dimension up the paper; the text reads from the right, and stands below a line too short for it. */
export const uprightDimension = (d: UprightDimension): readonly DrawingItem[] => {
  const [start, end] = reach(d.outlineX, d.x)
  const { text, fits } = textOf(d, Math.abs(d.y1 - d.y0))
  const foot = Math.max(d.y0, d.y1)
  return [
    ...[d.y0, d.y1].map((y) => solidLine('thin', { x: start, y }, { x: end, y })),
    solidLine('thin', { x: d.x, y: d.y0 }, { x: d.x, y: d.y1 }, `dimension/${d.name}`),
    tick({ x: d.x, y: d.y0 }),
    tick({ x: d.x, y: d.y1 }),
    textItem(
      fits
        ? { x: d.x - TEXT_ABOVE, y: (d.y0 + d.y1) / 2 }
        : { x: d.x - TEXT_ABOVE, y: foot + 2 * TICK_HALF },
      text,
      { anchor: fits ? 'middle' : 'end', angleDeg: 90, tag: `dimension/${d.name}` },
    ),
  ]
}
