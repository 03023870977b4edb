import type { Design } from '../design/schema.ts'

export type Paper = 'A4' | 'Letter'

export interface Picture {
  readonly widthPx: number
  readonly heightPx: number
  readonly ground: 'paper' | 'transparent'
}

/** A long job under way. */
export interface Job {
  readonly result: Promise<Blob>
  readonly cancel: () => void
}

export interface Progress {
  readonly done: number
  readonly of: number
  readonly label: string
}

/** What the panels ask of the scene and the workers; the app hands it down. */
export interface OutsideWork {
  /** Undefined when there is no 3D view. */
  readonly drawPicture: (picture: Picture) => Promise<Blob | undefined>
  readonly buildSheet: (paper: Paper, onProgress: (progress: Progress) => void) => Job
  readonly buildCutListCsv: (design: Design) => string
}
