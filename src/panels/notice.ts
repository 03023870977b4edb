import { useSyncExternalStore } from 'react'

/** One short message to the person; a new one takes the place of the last. */
export const say = (text: string): void => {
  current = text
  for (const tell of listeners) tell()
}

/** The message that stands, empty when there is none. */
export const useNotice = (): string => useSyncExternalStore(listen, () => current)

let current = ''
const listeners = new Set<() => void>()

const listen = (tell: () => void): (() => void) => {
  listeners.add(tell)
  return () => listeners.delete(tell)
}
