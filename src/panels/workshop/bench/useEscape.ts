import { useEffect } from 'react'

/** Calls back at Escape, unless it ends something nearer: a typed figure, a menu, another dialog. */
export const useEscape = (leave: () => void): void => {
  useEffect(() => {
    let wasTyping = false
    const look = ({ target }: KeyboardEvent) => {
      wasTyping = target instanceof HTMLInputElement && target.dataset.draft === 'yes'
    }
    const press = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented || wasTyping) return
      // A modal dialog hears Escape by itself.
      if (document.querySelector('dialog:modal') !== null) return
      event.preventDefault()
      leave()
    }
    addEventListener('keydown', look, true)
    addEventListener('keydown', press)
    return () => {
      removeEventListener('keydown', look, true)
      removeEventListener('keydown', press)
    }
  }, [leave])
}
