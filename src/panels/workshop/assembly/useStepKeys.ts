import { type RefObject, useEffect, useRef } from 'react'

interface StepActions {
  readonly back: () => void
  readonly next: () => void
  readonly leave: () => void
}

/** Arrow keys, a clicker's page keys and Escape, while nothing else on the page has the keys. */
export const useStepKeys = (section: RefObject<HTMLElement | null>, actions: StepActions): void => {
  const latest = useRef(actions)
  useEffect(() => {
    latest.current = actions
  })
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const action = KEYS[event.key]
      const { target } = event
      const isOurs =
        target === document.body ||
        (target instanceof Node && section.current?.parentElement?.contains(target))
      if (action === undefined || !isOurs || event.defaultPrevented) return
      if (event.ctrlKey || event.metaKey || event.altKey) return
      event.preventDefault()
      latest.current[action]()
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  }, [section])
}

const KEYS: Readonly<Record<string, keyof StepActions>> = {
  ArrowRight: 'next',
  PageDown: 'next',
  ArrowLeft: 'back',
  PageUp: 'back',
  Escape: 'leave',
}
