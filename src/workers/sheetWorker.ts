import regularUrl from '@expo-google-fonts/ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf?url'
import semiboldUrl from '@expo-google-fonts/ibm-plex-sans/600SemiBold/IBMPlexSans_600SemiBold.ttf?url'
import { buildSheetPdf } from '../sheets/pdf/buildSheet.ts'
import type { SheetAnswer, SheetRequest } from './sheetClient.ts'

// The page's and the worker's globals share one type here; this is the worker's.
const scope = self as unknown as DedicatedWorkerGlobalScope

const tell = (answer: SheetAnswer, transfer: Transferable[] = []): void =>
  scope.postMessage(answer, transfer)

const load = async (url: string): Promise<Uint8Array> => {
  const response = await fetch(url)
  if (!response.ok) throw new Error('The typeface for the sheet could not be loaded.')
  return new Uint8Array(await response.arrayBuffer())
}

const build = async (request: SheetRequest): Promise<void> => {
  const [regular, semibold] = await Promise.all([load(regularUrl), load(semiboldUrl)])
  const bytes = await buildSheetPdf({ ...request, fonts: { regular, semibold } }, (progress) =>
    tell({ kind: 'progress', progress }),
  )
  tell({ kind: 'done', bytes }, [bytes.buffer as ArrayBuffer])
}

scope.onmessage = ({ data }: MessageEvent<SheetRequest>) => {
  build(data).catch((error: unknown) =>
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) }),
  )
}
