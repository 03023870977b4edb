import type { PaperName } from '../sheets/pages/paper.ts'
import type { SheetProgress } from '../sheets/pdf/buildSheet.ts'

/** A picture of the view to be made. */
export interface PictureWish {
  readonly widthPx: number
  readonly heightPx: number
  readonly ground: 'paper' | 'transparent'
}

/** A long job under way. */
export interface Job {
  readonly result: Promise<Blob>
  readonly cancel: () => void
}

/** What the panels ask of the scene and the workers; the app hands it down. */
export interface OutsideWork {
  /** Undefined when there is no 3D view. */
  readonly drawPicture: (picture: PictureWish) => Promise<Blob | undefined>
  readonly buildSheet: (paper: PaperName, onProgress: (progress: SheetProgress) => void) => Job
}
