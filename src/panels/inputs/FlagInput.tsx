import { useId } from 'react'
import type { FlagField } from '../../design/field.ts'
import { changeField } from './changeField.ts'
import { useFieldValue } from './useFieldValue.ts'

/** Yes or no, as a tick box on the sheet. */
export const FlagInput = ({
  path,
  field,
}: {
  readonly path: string
  readonly field: FlagField
}) => {
  const id = useId()
  const value = useFieldValue(path)
  return (
    <div className="field flag">
      <label>
        <input
          type="checkbox"
          checked={value === true}
          aria-describedby={id}
          onChange={(e) => changeField(path, e.target.checked)}
        />
        <span>{field.label}</span>
      </label>
      <p className="about" id={id}>
        {field.meaning}
      </p>
    </div>
  )
}
