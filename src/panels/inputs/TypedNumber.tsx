import { type KeyboardEvent, useEffect, useRef, useState } from 'react'

interface TypedNumberProps {
  readonly id: string
  readonly shown: string
  readonly unit: string
  readonly describedBy: string
  readonly isWrong: boolean
  readonly onCommit: (text: string) => void
  readonly onForget: () => void
  readonly onStep: (steps: number) => void
  readonly onStepEnd: () => void
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
}

/** Units that need another width of field. */
const KIND: Readonly<Record<string, string>> = { '': 'bare', in: 'fractional' }

/** A typed figure. What is typed stands until Enter or leaving the field; Escape gives it up. */
export const TypedNumber = (props: TypedNumberProps) => {
  const { id, shown, unit, describedBy, isWrong, onCommit, onForget, onStep, onStepEnd } = props
  const [draft, setDraft] = useState<string>()
  const input = useRef<HTMLInputElement>(null)

  // A new figure in the field one is in is selected whole, so that typing takes its place.
  useEffect(() => {
    const field = input.current
    if (field !== null && field === document.activeElement && field.value === shown) field.select()
  }, [shown])

  const commit = () => {
    if (draft !== undefined) onCommit(draft)
    setDraft(undefined)
  }
  const forget = () => {
    setDraft(undefined)
    onForget()
  }
  const pressKey = (event: KeyboardEvent) => {
    const steps = STEPS[event.key]
    if (event.key === 'Enter') commit()
    if (event.key === 'Escape') forget()
    if (steps === undefined) return
    event.preventDefault()
    setDraft(undefined)
    onStep(steps)
  }
  return (
    <span className={`typed ${KIND[unit] ?? ''}`}>
      <input
        ref={input}
        id={id}
        type="text"
        inputMode={unit === 'in' ? 'text' : 'decimal'}
        autoComplete="off"
        spellCheck={false}
        value={draft ?? shown}
        aria-describedby={describedBy}
        aria-invalid={isWrong}
        data-draft={draft === undefined ? undefined : 'yes'}
        onChange={(e) => setDraft(e.target.value)}
        onFocus={(e) => e.target.select()}
        onBlur={() => {
          commit()
          onStepEnd()
        }}
        onKeyDown={pressKey}
        onKeyUp={onStepEnd}
      />
      <span className="typed-unit" aria-hidden="true">
        {unit}
      </span>
    </span>
  )
}
