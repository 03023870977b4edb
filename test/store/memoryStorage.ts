import type { StorageLike } from '../../src/store/storage.ts'

/** Storage in memory that may be full: `room` is the most characters that it holds in all. */
export function createMemoryStorage(room = Number.POSITIVE_INFINITY) {
  const held = new Map<string, string>()
  const storage: StorageLike = {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, value) => {
      const others = [...held].filter(([k]) => k !== key)
      const used = others.reduce((sum, [, text]) => sum + text.length, value.length)
      if (used > room) throw new Error('QuotaExceededError')
      held.set(key, value)
    },
  }
  return { storage, held }
}

/** Storage that a browser forbids: every call throws. */
export const FORBIDDEN_STORAGE: StorageLike = {
  getItem: () => {
    throw new Error('SecurityError')
  },
  setItem: () => {
    throw new Error('SecurityError')
  },
}
