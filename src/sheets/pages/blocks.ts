import type { TextAnchor, TextWeight } from '../drawing.ts'
import type { Strip } from './strip.ts'

/** A column of a table; widths are shares of the page. */
export interface TableColumn {
  readonly title: string
  readonly share: number
  readonly anchor?: TextAnchor
  readonly weight?: TextWeight
}

export interface TableBlock {
  readonly kind: 'table'
  readonly columns: readonly TableColumn[]
  /** Cells in the order of the columns; a line end in a cell starts a new line. */
  readonly rows: readonly (readonly string[])[]
}

/** Things that follow one another down the pages. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | TableBlock
  /** Pieces of drawing, one under another, none of them parted. */
  | { readonly kind: 'strips'; readonly strips: readonly Strip[] }

export const heading = (text: string): Block => ({ kind: 'heading', text })
export const paragraph = (text: string): Block => ({ kind: 'paragraph', text })
export const strips = (...all: readonly Strip[]): Block => ({ kind: 'strips', strips: all })
