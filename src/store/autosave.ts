import { formatDesign } from '../design/formatDesign.ts'
import { parseDesign } from '../design/parseDesign.ts'
import type { Design } from '../design/schema.ts'
import { readStored, type StorageLike, writeStored } from './storage.ts'

export type LoadedDesign =
  | { readonly kind: 'none' }
  | { readonly kind: 'ok'; readonly design: Design }
  /** The newest one could not be read; this is the one before it. */
  | { readonly kind: 'recovered'; readonly design: Design; readonly message: string }
  | { readonly kind: 'unreadable'; readonly message: string; readonly text: string }

export type SavedDesign =
  | { readonly kind: 'saved' }
  | { readonly kind: 'failed'; readonly message: string }

export interface Autosave {
  /** Keeps the design for the next visit. Never throws, and never loses what it can't read. */
  readonly save: (design: Design) => SavedDesign
  /** What was kept at the last visit. Changes nothing in the storage. */
  readonly load: () => LoadedDesign
}

/**
 * Keeps the design in the browser, in two slots: the newest under `key`, and the one before it under
 * `key.before`, so that one damaged slot does not cost the design. Text that can't be read, perhaps
 * from a newer release, is moved to `key.unreadable-1` and so on before its slot is used.
 */
export function createAutosave(
  storage: StorageLike | undefined,
  key = 'combwright.design',
): Autosave {
  const beforeKey = `${key}.before`
  const read = (slot: string) => readSlot(readStored(storage, slot))

  /** True when the slot may be written over: free, readable, or its text is now kept aside. */
  const clear = (slot: Slot): boolean => slot.kind !== 'unreadable' || setAside(slot.text)

  const setAside = (text: string): boolean => {
    const asides = Array.from({ length: MAX_ASIDE }, (_, i) => `${key}.unreadable-${i + 1}`)
    const place = asides.find((aside) => [undefined, text].includes(readStored(storage, aside)))
    return place !== undefined && writeStored(storage, place, text)
  }

  const save = (design: Design): SavedDesign => {
    const text = formatDesign(design)
    const newest = read(key)
    if (newest.kind === 'ok' && newest.text === text) return { kind: 'saved' }
    if (!clear(newest)) return FAILED
    // If the slot before can't be had, the newest design matters more.
    if (newest.kind === 'ok' && clear(read(beforeKey))) {
      writeStored(storage, beforeKey, newest.text)
    }
    return writeStored(storage, key, text) ? { kind: 'saved' } : FAILED
  }

  const load = (): LoadedDesign => {
    const newest = read(key)
    if (newest.kind === 'ok') return { kind: 'ok', design: newest.design }
    const before = read(beforeKey)
    if (before.kind === 'ok') {
      const message = newest.kind === 'unreadable' ? `${newest.message} ${KEPT}` : LOST
      return { kind: 'recovered', design: before.design, message }
    }
    const unreadable = newest.kind === 'unreadable' ? newest : before
    if (unreadable.kind !== 'unreadable') return { kind: 'none' }
    return { ...unreadable, message: `${unreadable.message} It is kept aside.` }
  }

  return { save, load }
}

const MAX_ASIDE = 9

const FAILED: SavedDesign = {
  kind: 'failed',
  message:
    'The design could not be kept in this browser: its storage is full or switched off. ' +
    'Save the design as a file before you leave.',
}

const KEPT = 'It is kept aside, and the design saved before it was opened.'
const LOST = 'The newest design is missing, so the one saved before it was opened.'

type Slot =
  | { readonly kind: 'free' }
  | { readonly kind: 'ok'; readonly design: Design; readonly text: string }
  | { readonly kind: 'unreadable'; readonly message: string; readonly text: string }

function readSlot(text: string | undefined): Slot {
  if (text === undefined) return { kind: 'free' }
  const parsed = parseDesign(text)
  if (parsed.kind === 'ok') return { kind: 'ok', design: parsed.design, text }
  const why = parsed.problems[0]?.message ?? ''
  return { kind: 'unreadable', message: `Your last design could not be read. ${why}`, text }
}
