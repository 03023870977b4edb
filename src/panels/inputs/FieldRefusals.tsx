import type { Field } from '../../design/field.ts'
import { useAnswers } from '../../store/answers.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { changeField } from './changeField.ts'
import { showWithUnit } from './numberShown.ts'

/** Why the design can't be built because of this field, and a value that would do. */
export const FieldRefusals = ({
  path,
  field,
}: {
  readonly path: string
  readonly field: Field
}) => {
  const units = useViewStore((s) => s.units)
  const refusals = useAnswers().refusals.filter((r) => r.field === path)
  return refusals.map(({ message, suggestion }) => (
    <div className="refusal" key={message}>
      <p>{message}</p>
      {suggestion !== undefined && field.kind === 'number' && (
        <button type="button" className="plain" onClick={() => changeField(path, suggestion)}>
          Set to {showWithUnit(field, suggestion, units)}
        </button>
      )}
    </div>
  ))
}
