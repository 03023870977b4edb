import { type KeyboardEvent, useRef } from 'react'
import { useBenchTicks } from '../../../store/benchTicks.ts'
import { ticksOf } from './tickKey.ts'

interface TickCirclesProps {
  /** What the ticks are kept under. */
  readonly tick: string
  readonly name: string
  readonly count: number
}

/** More pieces than this share one circle: nobody counts to forty in circles. */
const MOST_CIRCLES = 8

/**
 * A circle for each piece to tick off as it comes off the saw. The Tab key stops once in a row, at the
 * next piece to tick; Enter ticks it, the arrow keys tick and untick.
 */
export const TickCircles = ({ tick, name, count }: TickCirclesProps) => {
  const done = useBenchTicks((s) => ticksOf(s.done, tick, count))
  const setDone = useBenchTicks((s) => s.setDone)
  const row = useRef<HTMLFieldSetElement>(null)
  if (count > MOST_CIRCLES) {
    const isDone = done === count
    return (
      <button
        type="button"
        className="tick all"
        aria-pressed={isDone}
        aria-label={`${name}: all ${count} done`}
        onClick={() => setDone(tick, isDone ? 0 : count)}
      >
        {count}
      </button>
    )
  }
  const next = Math.min(done, count - 1)
  const put = (to: number) => {
    const within = Math.max(0, Math.min(count, to))
    setDone(tick, within)
    row.current?.querySelectorAll('button')[Math.min(within, count - 1)]?.focus()
  }
  const pressKey = (event: KeyboardEvent) => {
    const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0
    if (by === 0) return
    event.preventDefault()
    put(done + by)
  }
  return (
    <fieldset className="ticks" ref={row} onKeyDown={pressKey}>
      <legend className="hidden-text">
        {name}: {done} of {count} done
      </legend>
      {Array.from({ length: count }, (_, i) => i + 1).map((piece) => (
        <button
          key={piece}
          type="button"
          className="tick"
          tabIndex={piece === next + 1 ? 0 : -1}
          aria-pressed={piece <= done}
          aria-label={`Piece ${piece} of ${count}`}
          onClick={() => put(piece === done ? done - 1 : piece)}
        />
      ))}
    </fieldset>
  )
}
