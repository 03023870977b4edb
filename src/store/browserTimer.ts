import type { Timer } from './attachAutosave.ts'

export const browserTimer: Timer = (call, delayMs) => {
  const timer = setTimeout(call, delayMs)
  return () => clearTimeout(timer)
}
