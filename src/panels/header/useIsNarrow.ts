import { useSyncExternalStore } from 'react'

/** Whether the head of the sheet must fold its file buttons into a menu. */
export const useIsNarrow = (): boolean => useSyncExternalStore(watch, () => NARROW.matches)

const NARROW = matchMedia('(max-width: 1279px)')

const watch = (onChange: () => void): (() => void) => {
  NARROW.addEventListener('change', onChange)
  return () => NARROW.removeEventListener('change', onChange)
}
