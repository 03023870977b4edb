import { useSyncExternalStore } from 'react'

/** Whether the page is narrow: one column, as on a phone or at a high zoom. */
export const useIsNarrow = (): boolean => useSyncExternalStore(watch, () => NARROW.matches)

const NARROW = matchMedia('(max-width: 899px)')

const watch = (onChange: () => void): (() => void) => {
  NARROW.addEventListener('change', onChange)
  return () => NARROW.removeEventListener('change', onChange)
}
