import { type RefObject, useEffect } from 'react'

/**
 * Shows a dialog with the focus on its chosen tab, and gives the focus back at its end unless it has
 * gone elsewhere. On a phone it covers all, so it is modal.
 */
export const useShown = (
  dialog: RefObject<HTMLDialogElement | null>,
  isReady: boolean,
  isModal: boolean,
): void => {
  useEffect(() => {
    const opener = document.activeElement
    return () => {
      const isLost = document.activeElement === null || document.activeElement === document.body
      if (isLost && opener instanceof HTMLElement && opener.isConnected) opener.focus()
    }
  }, [])
  useEffect(() => {
    const element = dialog.current
    if (element === null || !isReady) return
    if (isModal) element.showModal()
    else element.show()
    element.querySelector<HTMLElement>('[role="tab"][aria-selected="true"]')?.focus()
    return () => element.close()
  }, [dialog, isReady, isModal])
}
