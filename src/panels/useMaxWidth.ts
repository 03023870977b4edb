import { useMemo, useSyncExternalStore } from 'react'

/** One column, as on a phone or at a high zoom. The styles use the same width. */
export const PHONE_PX = 899
/** The head of the sheet folds its file buttons into a menu. */
export const FOLDED_HEAD_PX = 1279

/** Whether the page is at most this wide. */
export const useMaxWidth = (px: number): boolean => useMedia(`(max-width: ${px}px)`)

/** Whether a media query holds, kept up to date. */
export const useMedia = (text: string): boolean => {
  const query = useMemo(() => matchMedia(text), [text])
  const watch = useMemo(
    () => (onChange: () => void) => {
      query.addEventListener('change', onChange)
      return () => query.removeEventListener('change', onChange)
    },
    [query],
  )
  return useSyncExternalStore(watch, () => query.matches)
}
