/** What a pointer over the canvas means. Places are in the canvas, -1 to 1 each way, y up. */
export interface PointerMeaning {
  readonly onHover: (at: { readonly x: number; readonly y: number } | undefined) => void
  readonly onTap: (
    at: { readonly x: number; readonly y: number },
    how: { readonly adds: boolean },
  ) => void
}

/** A press that moves further than this is a drag, which orbits and never selects. */
const TAP_REACH_PX = 6
const TAP_MS = 700

/** Tells taps from drags and hovering at most once a frame. Returns the way to stop. */
export const attachPointerPick = (element: HTMLElement, meaning: PointerMeaning): (() => void) => {
  const stop = new AbortController()
  const on = <K extends keyof HTMLElementEventMap>(
    type: K,
    listener: (event: HTMLElementEventMap[K]) => void,
  ): void => element.addEventListener(type, listener, { signal: stop.signal })
  let down: { readonly x: number; readonly y: number; readonly ms: number } | undefined
  let isSingle = true
  let pending = 0
  let latest: PointerEvent | undefined

  const place = (event: PointerEvent): { readonly x: number; readonly y: number } => {
    const r = element.getBoundingClientRect()
    return {
      x: ((event.clientX - r.left) / r.width) * 2 - 1,
      y: 1 - ((event.clientY - r.top) / r.height) * 2,
    }
  }
  on('pointerdown', (event) => {
    isSingle = event.isPrimary
    down =
      event.button === 0 ? { x: event.clientX, y: event.clientY, ms: event.timeStamp } : undefined
  })
  on('pointerup', (event) => {
    const start = down
    down = undefined
    if (start === undefined || !isSingle || !event.isPrimary) return
    const reach = Math.hypot(event.clientX - start.x, event.clientY - start.y)
    if (reach > TAP_REACH_PX || event.timeStamp - start.ms > TAP_MS) return
    meaning.onTap(place(event), { adds: event.shiftKey || event.ctrlKey || event.metaKey })
  })
  on('pointercancel', () => {
    down = undefined
  })
  on('pointermove', (event) => {
    if (event.pointerType !== 'mouse') return
    latest = event
    if (pending !== 0) return
    pending = requestAnimationFrame(() => {
      pending = 0
      if (latest !== undefined) meaning.onHover(latest.buttons === 0 ? place(latest) : undefined)
    })
  })
  on('pointerleave', (event) => {
    // A finger leaves at the end of each tap, and has not been hovering.
    if (event.pointerType === 'touch') return
    latest = undefined
    meaning.onHover(undefined)
  })
  return () => {
    stop.abort()
    cancelAnimationFrame(pending)
  }
}
