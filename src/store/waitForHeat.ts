import type { StoreApi } from 'zustand'
import type { Design } from '../design/schema.ts'
import type { Timer } from './attachAutosave.ts'
import type { HeatFieldState } from './heatField.ts'

export interface HeatPatience {
  readonly field: Pick<StoreApi<HeatFieldState>, 'getState' | 'subscribe'>
  readonly timer: Timer
  readonly mostMs: number
}

/**
 * Waits until all is known of the heat of a design, or nothing more is to be hoped for. Gives up
 * without complaint when the time is over.
 */
export const waitForHeat = (
  design: Design,
  { field, timer, mostMs }: HeatPatience,
): Promise<void> => {
  if (isKnown(field.getState(), design)) return Promise.resolve()
  return new Promise((resolve) => {
    const stopWaiting = () => {
      callOff()
      unsubscribe()
      resolve()
    }
    const callOff = timer(stopWaiting, mostMs)
    const unsubscribe = field.subscribe((state) => {
      if (isKnown(state, design)) stopWaiting()
    })
  })
}

const isKnown = (state: HeatFieldState, design: Design): boolean => {
  if (state.problem !== undefined) return true
  const isFull = state.answerDesign === design && state.answer?.quality === 'full'
  return isFull && state.comparisonsDesign === design
}
