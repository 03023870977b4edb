import type { StoreApi } from 'zustand'
import type { Timer } from './attachAutosave.ts'

export interface Patience<State> {
  readonly store: Pick<StoreApi<State>, 'getState' | 'subscribe'>
  readonly timer: Timer
  readonly mostMs: number
}

/** Waits until a store's state is as wished. Gives up without complaint when the time is over. */
export const waitUntil = <State>(
  isReady: (state: State) => boolean,
  { store, timer, mostMs }: Patience<State>,
): Promise<void> => {
  if (isReady(store.getState())) return Promise.resolve()
  return new Promise((resolve) => {
    const stopWaiting = () => {
      callOff()
      unsubscribe()
      resolve()
    }
    const callOff = timer(stopWaiting, mostMs)
    const unsubscribe = store.subscribe((state) => {
      if (isReady(state)) stopWaiting()
    })
  })
}
