import { useEffect, useMemo } from 'react'
import { useDesignStore } from '../../store/designStore.ts'

export interface Gesture {
  /** Starts one undo step; calling it again before the end changes nothing. */
  readonly begin: () => void
  readonly end: () => void
}

/** A drag or a held key that is one undo step; it also ends when its control goes away. */
export const useGesture = (): Gesture => {
  const gesture = useMemo(startGesture, [])
  useEffect(() => gesture.end, [gesture])
  return gesture
}

const startGesture = (): Gesture => {
  let isOpen = false
  return {
    begin: () => {
      if (isOpen) return
      isOpen = true
      useDesignStore.getState().beginGesture()
    },
    end: () => {
      if (!isOpen) return
      isOpen = false
      useDesignStore.getState().commitGesture()
    },
  }
}
