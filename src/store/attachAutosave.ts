import type { StoreApi } from 'zustand'
import type { Autosave, SavedDesign } from './autosave.ts'
import type { DesignState } from './history.ts'

/** Runs a call once, later; the function it gives back calls that off. */
export type Timer = (call: () => void, delayMs: number) => () => void

export interface AutosaveOptions {
  readonly store: Pick<StoreApi<DesignState>, 'getState' | 'subscribe'>
  readonly autosave: Autosave
  readonly timer: Timer
  /** Quiet time after the last change before it is saved. */
  readonly delayMs?: number
  /** Told of each save, so that a failure can be shown. */
  readonly onSave?: (result: SavedDesign) => void
}

export interface AttachedAutosave {
  /** Saves at once what is still waiting; for when the page is hidden or closed. */
  readonly flush: () => void
  /** Saves what is waiting and stops following the store. */
  readonly detach: () => void
}

/** Saves the design a little after each change of it, never while changes follow one another. */
export function attachAutosave(options: AutosaveOptions): AttachedAutosave {
  const { store, autosave, timer, delayMs = 400, onSave } = options
  let callOff: (() => void) | undefined

  const save = () => {
    callOff = undefined
    const result = autosave.save(store.getState().design)
    onSave?.(result)
  }
  const flush = () => {
    if (callOff === undefined) return
    callOff()
    save()
  }
  const unsubscribe = store.subscribe((state, before) => {
    if (state.design === before.design) return
    callOff?.()
    callOff = timer(save, delayMs)
  })
  return {
    flush,
    detach: () => {
      flush()
      unsubscribe()
    },
  }
}
