import type { BuildSheetInput, SheetProgress } from '../sheets/pdf/buildSheet.ts'

/** The worker brings the fonts itself. */
export type SheetRequest = Omit<BuildSheetInput, 'fonts'>

export type SheetAnswer =
  | { readonly kind: 'progress'; readonly progress: SheetProgress }
  | { readonly kind: 'done'; readonly bytes: Uint8Array }
  | { readonly kind: 'failed'; readonly message: string }

export interface SheetJob {
  /** The PDF. Rejected when the sheet fails or is cancelled. */
  readonly result: Promise<Uint8Array>
  readonly cancel: () => void
}

/** The message of the error that a cancelled job is rejected with. */
export const SHEET_CANCELLED = 'The build sheet was cancelled.'

/**
 * Builds the sheet off the page's thread. The code and the fonts for it are loaded by the first call;
 * the thread ends with the job.
 */
export const buildSheetInWorker = (
  input: SheetRequest,
  onProgress: (progress: SheetProgress) => void = () => {},
): SheetJob => {
  const worker = new Worker(new URL('./sheetWorker.ts', import.meta.url), { type: 'module' })
  let stop: (reason: Error) => void = () => {}
  const result = new Promise<Uint8Array>((resolve, reject) => {
    stop = reject
    worker.onmessage = ({ data }: MessageEvent<SheetAnswer>) => {
      if (data.kind === 'progress') return onProgress(data.progress)
      worker.terminate()
      if (data.kind === 'done') resolve(data.bytes)
      else reject(new Error(data.message))
    }
    worker.onerror = (event) => {
      worker.terminate()
      reject(new Error(event.message || 'The part of the program that prints could not be loaded.'))
    }
    worker.postMessage(input)
  })
  return {
    result,
    cancel: () => {
      worker.terminate()
      stop(new Error(SHEET_CANCELLED))
    },
  }
}
