import { attachAutosave } from '../store/attachAutosave.ts'
import { type Autosave, createAutosave } from '../store/autosave.ts'
import { keepBenchTicks } from '../store/benchTicks.ts'
import { useDesignStore } from '../store/designStore.ts'
import { keepSavedDesigns, SAVED_KEY } from '../store/keepSavedDesigns.ts'
import { useOpenStore } from '../store/openDesign.ts'
import { loadUnits, saveUnits } from '../store/preferences.ts'
import type { StorageLike } from '../store/storage.ts'
import { useViewStore } from '../store/viewStore.ts'
import { say } from './notice.ts'

/** Takes up where the last visit ended, then opens what the address holds. Called once, at the start. */
export const startSession = (): void => {
  const storage = browserStorage()
  const autosave = createAutosave(storage)
  keepUnits(storage)
  takeUpDesign(autosave)
  keepDesign(autosave)
  keepSaved(storage)
  keepBenchTicks(storage)
  if (new URLSearchParams(location.search).get('quality') === 'low') {
    useViewStore.getState().set({ quality: 'low' })
  }
  openShare()
  addEventListener('hashchange', openShare)
}

/** The browser's storage; undefined where even asking for it is forbidden. */
const browserStorage = (): StorageLike | undefined => {
  try {
    return window.localStorage
  } catch {
    return undefined
  }
}

const keepUnits = (storage: StorageLike | undefined): void => {
  useViewStore.getState().set({ units: loadUnits(storage) })
  useViewStore.subscribe((state, before) => {
    if (state.units !== before.units) saveUnits(storage, state.units)
  })
}

const takeUpDesign = (autosave: Autosave): void => {
  const loaded = autosave.load()
  if (loaded.kind === 'none') return
  if (loaded.kind !== 'unreadable') useDesignStore.setState({ design: loaded.design })
  if (loaded.kind !== 'ok') say(loaded.message)
}

const keepDesign = (autosave: Autosave): void => {
  const attached = attachAutosave({
    store: useDesignStore,
    autosave,
    timer: (call, delayMs) => {
      const timer = setTimeout(call, delayMs)
      return () => clearTimeout(timer)
    },
    onSave: (result) => result.kind === 'failed' && say(result.message),
  })
  addEventListener('pagehide', attached.flush)
  document.addEventListener('visibilitychange', attached.flush)
}

/** The list of designs to compare; another window of the same browser may change it too. */
const keepSaved = (storage: StorageLike | undefined): void => {
  const { reload } = keepSavedDesigns(storage)
  window.addEventListener('storage', (event) => event.key === SAVED_KEY && reload())
}

/** A share stands after `#` as a number and a point; the page's own anchors do not. */
const openShare = (): void => {
  const { hash } = location
  if (!/^#\d+\./.test(hash)) return
  useOpenStore.getState().offerShare(hash)
  // The address is used up: loading the page again must not bring the old design back.
  history.replaceState(undefined, '', location.pathname + location.search)
}
