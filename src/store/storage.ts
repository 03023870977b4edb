/** The part of the browser's storage that is used; `window.localStorage` is one. Each may throw. */
export interface StorageLike {
  readonly getItem: (key: string) => string | null
  readonly setItem: (key: string, value: string) => void
}

/** The text stored there; undefined when there is none or the storage may not be read. */
export function readStored(storage: StorageLike | undefined, key: string): string | undefined {
  try {
    return storage?.getItem(key) ?? undefined
  } catch {
    return undefined
  }
}

/** Stores a text. False when the storage is missing, full or forbidden; what was there then stays. */
export function writeStored(storage: StorageLike | undefined, key: string, text: string): boolean {
  try {
    storage?.setItem(key, text)
    return storage !== undefined
  } catch {
    return false
  }
}
