import { useEffect, useMemo, useRef } from 'react'

export interface PerFrame {
  /** Applies the newest value at the next picture; values in between are dropped. */
  readonly push: (value: number) => void
  /** Applies what waits, now. */
  readonly flush: () => void
}

/** Holds a stream of values back to one for each picture, so that a fast drag never queues up. */
export const usePerFrame = (apply: (value: number) => void): PerFrame => {
  const latest = useRef(apply)
  useEffect(() => {
    latest.current = apply
  })
  const stream = useMemo(() => startStream((value) => latest.current(value)), [])
  useEffect(() => stream.flush, [stream])
  return stream
}

const startStream = (apply: (value: number) => void): PerFrame => {
  let waiting: number | undefined
  let frame = 0
  const flush = () => {
    cancelAnimationFrame(frame)
    frame = 0
    if (waiting === undefined) return
    const value = waiting
    waiting = undefined
    apply(value)
  }
  const push = (value: number) => {
    waiting = value
    if (frame === 0) frame = requestAnimationFrame(flush)
  }
  return { push, flush }
}
