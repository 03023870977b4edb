import { useId } from 'react'
import type { ChoiceField } from '../../design/field.ts'
import { changeField } from './changeField.ts'
import { FieldRefusals } from './FieldRefusals.tsx'
import { useFieldValue } from './useFieldValue.ts'

interface ChoiceInputProps {
  readonly path: string
  readonly field: ChoiceField
}

/** A choice: all options in sight when they are few, a list when they are many. */
export const ChoiceInput = ({ path, field }: ChoiceInputProps) => {
  const id = useId()
  const value = String(useFieldValue(path) ?? field.default)
  const options = Object.entries(field.options)
  if (options.length > 4) {
    return (
      <div className="field">
        <label htmlFor={id}>{field.label}</label>
        <select
          id={id}
          value={value}
          aria-describedby={`${id}-about`}
          onChange={(e) => changeField(path, e.target.value)}
        >
          {options.map(([key, name]) => (
            <option key={key} value={key}>
              {name}
            </option>
          ))}
        </select>
        <p className="about" id={`${id}-about`}>
          {field.meaning}
        </p>
        <FieldRefusals path={path} field={field} />
      </div>
    )
  }
  const isShort = options.every(([, name]) => name.length <= SHORT_NAME)
  return (
    <fieldset className="field choice" aria-describedby={`${id}-about`}>
      <legend>{field.label}</legend>
      <div className={isShort ? 'choice-options short' : 'choice-options'}>
        {options.map(([key, name]) => (
          <label key={key} className="choice-option">
            <input
              type="radio"
              name={id}
              value={key}
              checked={key === value}
              onChange={() => changeField(path, key)}
            />
            <span>{name}</span>
          </label>
        ))}
      </div>
      <p className="about" id={`${id}-about`}>
        {field.meaning}
      </p>
      <FieldRefusals path={path} field={field} />
    </fieldset>
  )
}

/** Names of at most this many letters stand two in a row. */
const SHORT_NAME = 14
