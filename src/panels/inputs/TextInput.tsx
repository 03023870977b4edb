import { useId } from 'react'
import type { TextField } from '../../design/field.ts'
import { changeField } from './changeField.ts'
import { useFieldValue } from './useFieldValue.ts'
import { useGesture } from './useGesture.ts'

/** Words for the sheet. Everything typed between entering and leaving is one undo step. */
export const TextInput = ({
  path,
  field,
}: {
  readonly path: string
  readonly field: TextField
}) => {
  const id = useId()
  const value = String(useFieldValue(path) ?? '')
  const gesture = useGesture()
  const shared = {
    id,
    value,
    maxLength: field.maxLength,
    'aria-describedby': `${id}-about`,
    onChange: (e: { readonly target: { readonly value: string } }) => {
      gesture.begin()
      changeField(path, e.target.value)
    },
    onBlur: gesture.end,
  }
  return (
    <div className="field">
      <label htmlFor={id}>{field.label}</label>
      {field.maxLength > 100 ? (
        <textarea rows={4} {...shared} />
      ) : (
        <input type="text" {...shared} />
      )}
      <p className="about" id={`${id}-about`}>
        {field.meaning}
      </p>
    </div>
  )
}
