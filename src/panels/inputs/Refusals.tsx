import { fieldAt, fieldTitle } from '../../design/fieldAt.ts'
import { useAnswers } from '../../store/answers.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { VerdictMark } from '../answers/VerdictMark.tsx'
import { changeField } from './changeField.ts'
import { showWithUnit } from './numberShown.ts'

/** Why the present design can't be built, above the inputs, with a way out where one is known. */
export const Refusals = () => {
  const { refusals, answer } = useAnswers()
  const units = useViewStore((s) => s.units)
  if (refusals.length === 0) return null
  return (
    <section className="refusals" aria-label="This design cannot be built">
      <h3>
        <VerdictMark verdict="fix" /> This cannot be built yet
      </h3>
      <ul>
        {refusals.map(({ field: path, message, suggestion }) => {
          const field = fieldAt(path)
          return (
            <li key={`${path} ${message}`}>
              <p>
                <strong>{fieldTitle(path)}.</strong> {message}
              </p>
              {suggestion !== undefined && field?.kind === 'number' && (
                <button
                  type="button"
                  className="plain"
                  onClick={() => changeField(path, suggestion)}
                >
                  Set {field.label.toLowerCase()} to {showWithUnit(field, suggestion, units)}
                </button>
              )}
            </li>
          )
        })}
      </ul>
      {answer && <p>The hive and the answers shown are of the last design that can be built.</p>}
    </section>
  )
}
