import { useId, useState } from 'react'
import type { NumberField } from '../../design/field.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { FieldDiagram } from '../diagrams/FieldDiagram.tsx'
import { changeField } from './changeField.ts'
import { commitNumber, snapNumber, stepNumber } from './commitNumber.ts'
import { FieldRefusals } from './FieldRefusals.tsx'
import { showNumber, showRange, showWithUnit, unitName } from './numberShown.ts'
import { RuleSlider } from './RuleSlider.tsx'
import { StepButton } from './StepButton.tsx'
import { sliderRange } from './sliderRange.ts'
import { TypedNumber } from './TypedNumber.tsx'
import { UsualSizes } from './UsualSizes.tsx'
import { useFieldValue } from './useFieldValue.ts'
import { useGesture } from './useGesture.ts'

interface NumberInputProps {
  readonly path: string
  readonly field: NumberField
}

interface Note {
  readonly text: string
  readonly isWrong: boolean
}

const NO_NOTE: Note = { text: '', isWrong: false }

/** One number of the design: typed, stepped or slid, with a drawing and a sentence of what it is. */
export const NumberInput = ({ path, field }: NumberInputProps) => {
  const id = useId()
  const units = useViewStore((s) => s.units)
  const stored = useFieldValue(path)
  const value = typeof stored === 'number' ? stored : field.default
  const gesture = useGesture()
  const [note, setNote] = useState(NO_NOTE)

  const set = (next: number) => next !== value && changeField(path, next)
  const step = (steps: number) => {
    setNote(NO_NOTE)
    set(stepNumber(field, value, { steps, units }))
  }
  const stepGesture = (steps: number) => {
    gesture.begin()
    step(steps)
  }
  const commit = (text: string) => {
    const result = commitNumber(field, text, { stored: value, units })
    setNote({ text: result.note, isWrong: result.kind === 'error' })
    if (result.kind === 'set') set(result.value)
  }
  const [min, max] = sliderRange(path, field, value)
  const stepProps = { onPressStart: gesture.begin, onPressEnd: gesture.end }
  return (
    <div className="field number-field">
      <FieldDiagram path={path} />
      <label htmlFor={id}>{field.label}</label>
      <div className="number-row">
        <StepButton
          {...stepProps}
          sign="−"
          name={`${field.label}: less`}
          disabled={value <= field.min}
          onStep={() => step(-1)}
        />
        <TypedNumber
          id={id}
          shown={showNumber(field, value, units)}
          unit={unitName(field, units)}
          describedBy={`${id}-about ${id}-note`}
          isWrong={note.isWrong}
          onCommit={commit}
          onForget={() => setNote(NO_NOTE)}
          onStep={stepGesture}
          onStepEnd={gesture.end}
        />
        <StepButton
          {...stepProps}
          sign="+"
          name={`${field.label}: more`}
          disabled={value >= field.max}
          onStep={() => step(1)}
        />
      </div>
      <RuleSlider
        name={`${field.label}, slider`}
        {...{ value, min, max }}
        valueText={showWithUnit(field, value, units)}
        snap={(v) => snapNumber(field, v, units)}
        step={(v, steps) => stepNumber(field, v, { steps, units })}
        onStart={gesture.begin}
        onChange={set}
        onEnd={gesture.end}
      />
      <p className={note.isWrong ? 'note wrong' : 'note'} id={`${id}-note`} role="status">
        {note.text}
      </p>
      <FieldRefusals path={path} field={field} />
      <p className="about" id={`${id}-about`}>
        {field.meaning} <span className="range">{showRange(field, units)}.</span>
      </p>
      <UsualSizes path={path} field={field} value={value} />
    </div>
  )
}
