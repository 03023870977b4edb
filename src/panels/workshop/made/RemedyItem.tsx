import type { FieldEdit } from '../../../design/setField.ts'
import type { MadeRemedy } from '../../../reports/shop/made/madeReport.ts'
import { formatLength, type LengthUnit } from '../../../units/length.ts'
import { VerdictMark } from '../../answers/VerdictMark.tsx'

interface RemedyItemProps {
  readonly remedy: MadeRemedy
  readonly unit: LengthUnit
  readonly onApply: (changes: readonly FieldEdit[]) => void
}

/** A way out with all that would move, before it is applied. */
export const RemedyItem = ({ remedy, unit, onApply }: RemedyItemProps) => {
  const { text, changes, moved, newlyFailed } = remedy
  const mm = (length: number) => formatLength(length, unit)
  return (
    <div className="remedy">
      <p>
        <strong>{text}</strong>
      </p>
      {moved.length === 0 ? (
        <p>No other part changes.</p>
      ) : (
        <details>
          <summary>What moves: {rowsWords(moved.map(({ label }) => label))}</summary>
          <ul className="moved">
            {moved.map(({ label, name, side, beforeMm, afterMm }) => (
              <li key={`${label} ${side}`}>
                <b>{label}</b> {name}: {side} {mm(beforeMm)} to <strong>{mm(afterMm)}</strong>{' '}
                {unit}
              </li>
            ))}
          </ul>
        </details>
      )}
      {newlyFailed.length > 0 && (
        <p className="fastening-warning">
          <VerdictMark verdict="look" />
          <span>Then no longer good: {newlyFailed.join(', ')}</span>
        </p>
      )}
      <button type="button" className="plain" onClick={() => onApply(changes)}>
        Apply
      </button>
    </div>
  )
}

const rowsWords = (labels: readonly string[]): string => [...new Set(labels)].join(', ')
