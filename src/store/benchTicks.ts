import { create } from 'zustand'
import { readStored, type StorageLike, writeStored } from './storage.ts'

/** Where the ticks are kept in the browser. */
export const TICKS_KEY = 'combwright.ticks'

/** So many rows are remembered; those ticked longest ago are forgotten first. */
const MOST_KEPT = 600

/** How many pieces are done, by a key of the setting and the row. */
export type Ticks = Readonly<Record<string, number>>

/** What is ticked off at the bench, in this browser alone: no part of the design. */
export interface BenchTicks {
  readonly done: Ticks
  /** What the last clearing took away, to bring it back. */
  readonly cleared: Ticks | undefined
}

interface TickActions {
  readonly setDone: (key: string, count: number) => void
  readonly clear: () => void
  readonly bringBack: () => void
}

export const useBenchTicks = create<BenchTicks & TickActions>()((set) => ({
  done: {},
  cleared: undefined,
  setDone: (key, count) => set(({ done }) => ({ done: withTicks(done, key, count) })),
  clear: () => set(({ done }) => ({ done: {}, cleared: done })),
  bringBack: () => set((s) => ({ done: { ...s.cleared, ...s.done }, cleared: undefined })),
}))

/** The ticks with one row's count set; a count of none takes the row out. */
export function withTicks(done: Ticks, key: string, count: number): Ticks {
  const others = Object.entries(done).filter(([other]) => other !== key)
  // The one set last stands last.
  if (count > 0) others.push([key, count])
  return Object.fromEntries(others.slice(-MOST_KEPT))
}

/** Takes up the ticks of the last visit and keeps every change. Returns how to stop. */
export function keepBenchTicks(storage: StorageLike | undefined): () => void {
  useBenchTicks.setState({ done: parseTicks(readStored(storage, TICKS_KEY)) })
  return useBenchTicks.subscribe(({ done }, before) => {
    if (done !== before.done) writeStored(storage, TICKS_KEY, JSON.stringify(done))
  })
}

/** What can be read of stored ticks: whole counts from 1; nothing of what can't. */
export function parseTicks(text: string | undefined): Ticks {
  try {
    const json: unknown = JSON.parse(text ?? '{}')
    if (typeof json !== 'object' || json === null) return {}
    const rows = Object.entries(json).filter(
      (row): row is [string, number] => Number.isInteger(row[1]) && row[1] > 0,
    )
    return Object.fromEntries(rows)
  } catch {
    return {}
  }
}
