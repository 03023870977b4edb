import type { DrawingItem } from '../drawing.ts'

/** A piece of a page that is never parted: its height, and how to draw it with its top at `y`. */
export interface Strip {
  readonly heightMm: number
  readonly draw: (y: number) => readonly DrawingItem[]
}
