import type { Field } from '../../design/field.ts'
import { answersFor } from '../../store/answers.ts'
import { useDesignStore } from '../../store/designStore.ts'
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
  // Nothing is redrawn as long as there is no refusal, however fast the design changes.
  const refusal = useDesignStore((s) => answersFor(s.design).refusals.find((r) => r.field === path))
  if (refusal === undefined) return null
  const { message, suggestion } = refusal
  return (
    <div className="refusal">
      <p>{message}</p>
      {suggestion !== undefined && field.kind === 'number' && (
        <button type="button" className="plain" onClick={() => changeField(path, suggestion)}>
          Set to {showWithUnit(field, suggestion, units)}
        </button>
      )}
    </div>
  )
}
