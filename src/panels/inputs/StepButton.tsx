import { type PointerEvent, useEffect, useRef } from 'react'

interface StepButtonProps {
  readonly sign: '+' | '−'
  readonly name: string
  readonly disabled: boolean
  readonly onPressStart: () => void
  readonly onStep: () => void
  readonly onPressEnd: () => void
}

const FIRST_REPEAT_MS = 420
const REPEAT_MS = 70

/** A step button that repeats while it is held; the whole hold is one gesture of its caller. */
export const StepButton = (props: StepButtonProps) => {
  const { sign, name, disabled, onPressStart, onStep, onPressEnd } = props
  const timer = useRef(0)
  const step = useRef(onStep)
  useEffect(() => {
    step.current = onStep
  })
  useEffect(() => () => clearTimeout(timer.current), [])

  const repeat = (delayMs: number) => {
    timer.current = window.setTimeout(() => {
      step.current()
      repeat(REPEAT_MS)
    }, delayMs)
  }
  const press = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.button !== 0) return
    // Whatever was being typed elsewhere is finished before this gesture starts.
    event.currentTarget.focus()
    onPressStart()
    onStep()
    clearTimeout(timer.current)
    repeat(FIRST_REPEAT_MS)
  }
  const release = () => {
    clearTimeout(timer.current)
    onPressEnd()
  }
  return (
    <button
      type="button"
      className="step"
      aria-label={name}
      aria-disabled={disabled}
      onPointerDown={press}
      onPointerUp={release}
      onPointerLeave={release}
      onPointerCancel={release}
      onKeyDown={(e) => (e.key === 'Enter' || e.key === ' ') && onPressStart()}
      onKeyUp={onPressEnd}
      onBlur={release}
      onContextMenu={(e) => e.preventDefault()}
      // A click without a pointer is the keyboard's or a screen reader's.
      onClick={(e) => e.detail === 0 && onStep()}
    >
      {sign}
    </button>
  )
}
