import { useId, useState } from 'react'
import type { NumberField } from '../../../design/field.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { commitNumber, stepNumber } from '../../inputs/commitNumber.ts'
import { showNumber, unitName } from '../../inputs/numberShown.ts'
import { TypedNumber } from '../../inputs/TypedNumber.tsx'

interface MeasuredInputProps {
  readonly field: NumberField
  readonly planned: number
  readonly onMeasure: (mm: number) => void
}

/** What the tape says: typed, or stepped from the planned size. */
export const MeasuredInput = ({ field, planned, onMeasure }: MeasuredInputProps) => {
  const id = useId()
  const units = useViewStore((s) => s.units)
  const [value, setValue] = useState(planned)
  const [note, setNote] = useState({ text: '', isWrong: false })
  const set = (mm: number) => {
    setValue(mm)
    onMeasure(mm)
  }
  return (
    <div className="made-size">
      <label htmlFor={id}>Measured {field.label.toLowerCase()}</label>
      <TypedNumber
        id={id}
        shown={showNumber(field, value, units)}
        unit={unitName(field, units)}
        describedBy={`${id}-note`}
        isWrong={note.isWrong}
        onCommit={(text) => {
          const read = commitNumber(field, text, { stored: value, units })
          setNote({ text: read.note, isWrong: read.kind === 'error' })
          if (read.kind === 'set') set(read.value)
        }}
        onForget={() => setNote({ text: '', isWrong: false })}
        onStep={(steps) => set(stepNumber(field, value, { steps, units }))}
        onStepEnd={() => {}}
      />
      <p className={note.isWrong ? 'note wrong' : 'note'} id={`${id}-note`} role="status">
        {note.text}
      </p>
    </div>
  )
}
