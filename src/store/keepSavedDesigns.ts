import { formatDesign } from '../design/formatDesign.ts'
import { readDesign } from '../design/readDesign.ts'
import type { Design } from '../design/schema.ts'
import { MAX_SAVED, nameSaved, useSavedDesigns } from './savedDesigns.ts'
import { readStored, type StorageLike, writeStored } from './storage.ts'

/** Where the list is kept in the browser. */
export const SAVED_KEY = 'combwright.saved'

/**
 * Takes up the list of the last visit and keeps every change of it. What can't be read, perhaps from
 * a newer release, is never lost: it stays in the storage beside the rest. `reload` reads the storage
 * again, for when another window has changed it;
 * `stop` keeps no more changes.
 */
export function keepSavedDesigns(storage: StorageLike | undefined): {
  readonly reload: () => void
  readonly stop: () => void
} {
  let unread: readonly unknown[] = []
  let isReading = false
  const reload = () => {
    const loaded = loadSaved(readStored(storage, SAVED_KEY))
    unread = loaded.unread
    isReading = true
    useSavedDesigns.setState({
      saved: nameSaved(loaded.designs),
      ...(loaded.isDamaged && { message: { kind: 'error' as const, text: DAMAGED } }),
    })
    isReading = false
  }
  const stop = useSavedDesigns.subscribe((state, before) => {
    if (isReading || state.saved === before.saved) return
    const designs = state.saved.map(({ design }) => JSON.parse(formatDesign(design)))
    const text = JSON.stringify({ designs, ...(unread.length > 0 && { unread }) })
    if (!writeStored(storage, SAVED_KEY, text)) state.refuse(NOT_KEPT)
  })
  reload()
  return { reload, stop }
}

const DAMAGED =
  'Some of the designs kept for comparing could not be read. They stay in this browser, unread.'

const NOT_KEPT =
  'The list could not be kept in this browser: its storage is full or switched off. ' +
  'It holds until you leave; save designs that you want to keep as files.'

interface LoadedSaved {
  readonly designs: readonly Design[]
  readonly unread: readonly unknown[]
  /** Something is unreadable that was not known to be. */
  readonly isDamaged: boolean
}

function loadSaved(text: string | undefined): LoadedSaved {
  if (text === undefined) return { designs: [], unread: [], isDamaged: false }
  const { designs: stored, unread: known } = parseList(text)
  const read = [...stored, ...known].map((json) => ({ json, parsed: readDesign(json) }))
  const good = read.flatMap(({ json, parsed }) =>
    parsed.kind === 'ok' ? [{ json, design: parsed.design }] : [],
  )
  const bad = read.flatMap(({ json, parsed }) => (parsed.kind === 'ok' ? [] : [json]))
  return {
    designs: good.slice(0, MAX_SAVED).map(({ design }) => design),
    unread: [...bad, ...good.slice(MAX_SAVED).map(({ json }) => json)],
    isDamaged: bad.some((json) => !known.includes(json)),
  }
}

/** What the text lists; a text that is no list is itself one thing that can't be read. */
function parseList(text: string): {
  readonly designs: readonly unknown[]
  readonly unread: readonly unknown[]
} {
  try {
    const json: unknown = JSON.parse(text)
    if (typeof json === 'object' && json !== null && 'designs' in json) {
      const known = 'unread' in json ? json.unread : []
      if (Array.isArray(json.designs) && Array.isArray(known)) {
        return { designs: json.designs, unread: known }
      }
    }
  } catch {
    // Not JSON: kept as it is.
  }
  return { designs: [text], unread: [] }
}
