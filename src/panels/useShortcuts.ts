import { useEffect } from 'react'
import { useDesignStore } from '../store/designStore.ts'
import { saveDesignFile } from './header/saveFile.ts'

/** Ctrl or Cmd with Z, Shift Z or Y, and S. Text that is being typed keeps its own undo. */
export const useShortcuts = (): void => {
  useEffect(() => {
    addEventListener('keydown', pressKey)
    return () => removeEventListener('keydown', pressKey)
  }, [])
}

const pressKey = (event: KeyboardEvent): void => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return
  const key = event.key.toLowerCase()
  if (key === 's') {
    event.preventDefault()
    saveDesignFile()
    return
  }
  if (isTyping(event.target)) return
  const { undo, redo } = useDesignStore.getState()
  if (key === 'z' && !event.shiftKey) undo()
  else if (key === 'y' || key === 'z') redo()
  else return
  event.preventDefault()
}

/** Whether the key is going into text that differs from what the document holds. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement ||
  (target instanceof HTMLInputElement && target.type === 'text' && target.dataset.draft === 'yes')
