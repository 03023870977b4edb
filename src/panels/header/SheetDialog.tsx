import { useEffect, useState } from 'react'
import { fileNameFor } from '../../sheets/fileNames.ts'
import type { PaperName } from '../../sheets/pages/paper.ts'
import type { SheetProgress } from '../../sheets/pdf/buildSheet.ts'
import { useDesignStore } from '../../store/designStore.ts'
import type { OutsideWork } from '../actions.ts'
import { Dialog } from './Dialog.tsx'
import { PAPER_NAMES } from './SheetMenu.tsx'
import { saveFile } from './saveFile.ts'

interface SheetDialogProps {
  readonly paper: PaperName
  readonly buildSheet: OutsideWork['buildSheet']
  readonly onClose: () => void
}

type State =
  | { readonly kind: 'working'; readonly progress?: SheetProgress }
  | { readonly kind: 'ready'; readonly blob: Blob }
  | { readonly kind: 'failed'; readonly message: string }

const START: State = { kind: 'working' }

/** Draws the build sheet with progress in sight, then offers it; saving is one click of its own. */
export const SheetDialog = ({ paper, buildSheet, onClose }: SheetDialogProps) => {
  const [state, setState] = useState<State>(START)
  // The sheet is of the design as it was when the dialog opened.
  const [name] = useState(() => useDesignStore.getState().design.title.name)
  useEffect(() => {
    let isCurrent = true
    const show = (next: State) => isCurrent && setState(next)
    const started = buildSheet(paper, (progress) => show({ kind: 'working', progress }))
    started.result.then(
      (blob) => show({ kind: 'ready', blob }),
      (error: unknown) =>
        show({ kind: 'failed', message: error instanceof Error ? error.message : String(error) }),
    )
    return () => {
      isCurrent = false
      started.cancel()
    }
  }, [paper, buildSheet])

  return (
    <Dialog title={`Build sheet, ${PAPER_NAMES[paper]}`} onClose={onClose}>
      {state.kind === 'working' && (
        <>
          <p role="status">{progressLine(state.progress)}</p>
          <progress
            aria-label="Progress of the build sheet"
            value={state.progress?.done ?? 0}
            max={state.progress?.total ?? 1}
          />
          <p className="dialog-actions">
            <button type="button" className="plain" onClick={onClose}>
              Cancel
            </button>
          </p>
        </>
      )}
      {state.kind === 'ready' && (
        <>
          <p role="status">
            The sheet is ready. Print it at 100 %, not fitted to the page, so that its scales are
            true.
          </p>
          <p className="dialog-actions">
            <button
              type="button"
              className="plain strong"
              onClick={() => {
                saveFile(fileNameFor(name, 'build sheet', 'pdf'), state.blob)
                onClose()
              }}
            >
              Save the PDF
            </button>
            <button type="button" className="plain" onClick={onClose}>
              Close
            </button>
          </p>
        </>
      )}
      {state.kind === 'failed' && (
        <>
          <p role="alert">The sheet could not be made. {state.message}</p>
          <p className="dialog-actions">
            <button type="button" className="plain" onClick={onClose}>
              Close
            </button>
          </p>
        </>
      )}
    </Dialog>
  )
}

const progressLine = (progress: SheetProgress | undefined): string =>
  progress === undefined
    ? 'Taking a picture of the hive.'
    : `Drawing the sheets: step ${progress.done} of ${progress.total}.`
