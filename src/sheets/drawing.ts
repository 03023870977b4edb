/**
 * A drawing on paper as plain data: what the screen, the PDF and the other writers draw from. Places
 * are paper millimetres from the top left corner, x to the right, y down.
 */
export interface Drawing {
  readonly widthMm: number
  readonly heightMm: number
  readonly items: readonly DrawingItem[]
}

/** A place on the paper, mm from the left and from the top. */
export interface PaperPoint {
  readonly x: number
  readonly y: number
}

export type LineWeight = 'thick' | 'medium' | 'thin'
export type LineDash = 'solid' | 'hidden' | 'centre' | 'phantom'

/** What a cut face is filled with, to tell materials apart without colour. */
export type HatchKind = 'none' | 'wood' | 'wood-reverse' | 'ply' | 'ply-upright' | 'foam' | 'metal'

/** A grey ground under the hatch, dark enough to see and light enough to write on. */
export type Tint = 'none' | 'paper' | 'light' | 'middle' | 'dark' | 'ink'

export interface Stroke {
  readonly weight: LineWeight
  readonly dash: LineDash
  /** Grey, for lines that only show where things are; ink unless told. */
  readonly tone?: 'pale'
}

export interface LineItem extends Stroke {
  readonly kind: 'line'
  readonly from: PaperPoint
  readonly to: PaperPoint
  /** What it stands for: a part's id, or `dimension/outerLength`. Writers may carry it along. */
  readonly tag?: string
}

export interface PolylineItem extends Stroke {
  readonly kind: 'polyline'
  readonly points: readonly PaperPoint[]
  readonly tag?: string
}

export interface PolygonItem {
  readonly kind: 'polygon'
  readonly points: readonly PaperPoint[]
  /** No outline is drawn without one. */
  readonly stroke: Stroke | undefined
  readonly tint: Tint
  readonly hatch: HatchKind
  readonly tag?: string
}

/** A colour in sRGB, 0 to 255 each. */
export interface PaperColour {
  readonly r: number
  readonly g: number
  readonly b: number
}

/** A coloured ground without an outline; loops that run the other way round are holes in it. */
export interface ColourItem {
  readonly kind: 'colour'
  readonly loops: readonly (readonly PaperPoint[])[]
  readonly colour: PaperColour
  readonly tag?: string
}

export type TextAnchor = 'start' | 'middle' | 'end'
export type TextWeight = 'regular' | 'semibold'

export interface TextItem {
  readonly kind: 'text'
  /** Where the baseline begins, has its middle or ends, by `anchor`. */
  readonly at: PaperPoint
  readonly text: string
  /** Size of the type (the em), mm; 3.53 mm are 10 points. */
  readonly sizeMm: number
  readonly anchor: TextAnchor
  /** Turn about `at`, anticlockwise: 90 reads upwards. */
  readonly angleDeg: number
  readonly weight: TextWeight
  readonly tag?: string
}

export interface ImageItem {
  readonly kind: 'image'
  readonly at: PaperPoint
  readonly widthMm: number
  readonly heightMm: number
  readonly bytes: Uint8Array
  readonly format: 'jpeg' | 'png'
}

export type DrawingItem = LineItem | PolylineItem | PolygonItem | ColourItem | TextItem | ImageItem

/** Line widths on paper, mm: the ISO 128 series, thick to thin more than 2 to 1. */
export const LINE_WIDTH_MM: Readonly<Record<LineWeight, number>> = {
  thick: 0.5,
  medium: 0.35,
  thin: 0.18,
}

/** Dash and gap lengths on paper, mm, in turn; empty for a line without gaps. After ISO 128. */
export const DASH_MM: Readonly<Record<LineDash, readonly number[]>> = {
  solid: [],
  hidden: [2, 1],
  centre: [6, 1, 0.5, 1],
  phantom: [6, 1, 0.5, 1, 0.5, 1],
}

/** Grey of a pale line, from 0 (black) to 1 (paper). */
export const PALE_GREY = 0.45

/** Grounds as grey from 0 (black) to 1 (paper); all keep black type readable. */
export const TINT_GREY: Readonly<Record<Exclude<Tint, 'none'>, number>> = {
  paper: 1,
  light: 0.94,
  middle: 0.86,
  dark: 0.6,
  ink: 0,
}

/** Dimension and label type: 10.2 points, to be read in a shop. */
export const LABEL_SIZE_MM = 3.6
/** Type of headings on a drawing. */
export const HEADING_SIZE_MM = 5

export const solidLine = (
  weight: LineWeight,
  from: PaperPoint,
  to: PaperPoint,
  tag?: string,
): LineItem => ({
  kind: 'line',
  weight,
  dash: 'solid',
  from,
  to,
  ...(tag === undefined ? {} : { tag }),
})

/** Level text in the regular weight at label size unless told otherwise. */
export const textItem = (
  at: PaperPoint,
  text: string,
  options: Partial<Omit<TextItem, 'kind' | 'at' | 'text'>> = {},
): TextItem => ({
  kind: 'text',
  at,
  text,
  sizeMm: LABEL_SIZE_MM,
  anchor: 'start',
  angleDeg: 0,
  weight: 'regular',
  ...options,
})

/**
 * Room that a text takes along its baseline, mm, without a font at hand: figures are 0.6 em wide in
 * Plex, capitals about 0.66, small letters about 0.54, spaces and points 0.28. A little generous.
 */
export const estimateTextWidthMm = (text: string, sizeMm: number): number =>
  [...text].reduce((sum, c) => sum + emsOf(c), 0) * sizeMm

const emsOf = (c: string): number =>
  /[ .,;:'()]/.test(c) ? 0.28 : /[a-z]/.test(c) ? 0.54 : /\p{L}/u.test(c) ? 0.66 : 0.6
