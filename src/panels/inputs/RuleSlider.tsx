import { type CSSProperties, type KeyboardEvent, useState } from 'react'
import { usePerFrame } from './usePerFrame.ts'

interface RuleSliderProps {
  readonly name: string
  readonly value: number
  readonly min: number
  readonly max: number
  readonly valueText: string
  readonly describedBy?: string
  /** The round value nearest to a place on the rule. */
  readonly snap: (value: number) => number
  /** The value some presses of an arrow key away. */
  readonly step: (value: number, steps: number) => number
  readonly onStart: () => void
  readonly onChange: (value: number) => void
  readonly onEnd: () => void
}

/** A slider drawn as a rule with a cursor. Arrow keys go a step, Page keys ten, Home and End to the ends. */
export const RuleSlider = (props: RuleSliderProps) => {
  const { name, value, min, max, valueText, describedBy, snap, step, onStart, onChange, onEnd } =
    props
  // While it is dragged the cursor follows the hand, even when the document limps behind.
  const [held, setHeld] = useState<number>()
  const perFrame = usePerFrame(onChange)
  const shown = held ?? value

  const finish = () => {
    perFrame.flush()
    setHeld(undefined)
    onEnd()
  }
  const pressKey = (event: KeyboardEvent) => {
    const to = keyTarget(event.key, { value, min, max, step })
    if (to === undefined) return
    event.preventDefault()
    onStart()
    onChange(to)
  }
  const place = max > min ? (shown - min) / (max - min) : 0
  return (
    <input
      type="range"
      className="rule-slider"
      style={{ '--place': place } as CSSProperties}
      aria-label={name}
      aria-valuetext={valueText}
      aria-describedby={describedBy}
      min={min}
      max={max}
      step="any"
      value={shown}
      onPointerDown={(e) => {
        // Whatever was being typed elsewhere is finished before this gesture starts.
        e.currentTarget.focus()
        onStart()
      }}
      onChange={(e) => {
        const to = snap(Number(e.target.value))
        onStart()
        setHeld(to)
        perFrame.push(to)
      }}
      onPointerUp={finish}
      onPointerCancel={finish}
      onKeyDown={pressKey}
      onKeyUp={finish}
      onBlur={finish}
    />
  )
}

const keyTarget = (
  key: string,
  at: Pick<RuleSliderProps, 'value' | 'min' | 'max' | 'step'>,
): number | undefined => {
  const steps = STEPS[key]
  if (steps !== undefined) return at.step(at.value, steps)
  if (key === 'Home') return at.min
  return key === 'End' ? at.max : undefined
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
}
