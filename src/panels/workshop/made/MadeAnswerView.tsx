import type { FieldEdit } from '../../../design/setField.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { formatSize } from '../../answers/formatSize.ts'
import { PlanState } from '../PlanState.tsx'
import { type Measured, plannedMm } from './measured.ts'
import { RemedyItem } from './RemedyItem.tsx'
import type { MadeAnswer } from './useMadeAnswer.ts'

interface MadeAnswerViewProps {
  readonly measured: Measured
  readonly found: MadeAnswer | undefined
  readonly onApply: (changes: readonly FieldEdit[]) => void
  readonly onKeep: () => void
}

/** The ways out for a part that came out to another size, best first. */
export const MadeAnswerView = ({ measured, found, onApply, onKeep }: MadeAnswerViewProps) => {
  const unit = useViewStore((s) => s.units.length)
  const { row, side, mm } = measured
  const off = mm - plannedMm(row, side)
  const lead = `${formatLength(Math.abs(off), unit, { withUnit: true })} too ${OFF_WORDS[side][off > 0 ? 1 : 0]}`
  if (found === undefined) {
    return (
      <div role="status">
        <p className="answer-lead">It came out {lead}.</p>
        <PlanState words={{ verdict: 'looking', text: 'Looking for what can take that up.' }} />
      </div>
    )
  }
  const { mistake, thickness } = found
  const hasNone = thickness === undefined && (mistake === undefined || mistake.absorb.length === 0)
  return (
    <div className="made-answers">
      <p className="answer-lead" role="status">
        It came out {lead}. {hasNone ? 'Nothing in the design can take that up.' : ''}
      </p>
      {thickness && (
        <section>
          <h4>The whole board is so thick</h4>
          <RemedyItem remedy={thickness} unit={unit} onApply={onApply} />
        </section>
      )}
      {mistake && mistake.absorb.length > 0 && (
        <section>
          <h4>What can follow it</h4>
          <ul>
            {mistake.absorb.map((remedy) => (
              <li key={remedy.text}>
                <RemedyItem remedy={remedy} unit={unit} onApply={onApply} />
              </li>
            ))}
          </ul>
        </section>
      )}
      {mistake?.trim !== undefined && (
        <section>
          <h4>Cut it down</h4>
          <p>{mistake.trim}</p>
        </section>
      )}
      {mistake?.shim !== undefined && (
        <section>
          <h4>Fill the gap</h4>
          <p>{mistake.shim}</p>
        </section>
      )}
      {mistake && mistake.canBecome.length > 0 && (
        <section>
          <h4>What it can become</h4>
          <ul>
            {mistake.canBecome.map(({ label, name, sizeMm: [lengthMm, widthMm, thicknessMm] }) => (
              <li key={label}>
                <b className="letter">{label}</b> {name},{' '}
                {formatSize({ lengthMm, widthMm, thicknessMm }, unit)} {unit}
              </li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h4>Use it as it is</h4>
        <p>The design stays; the part is only noted with its real size.</p>
        <button type="button" className="plain" onClick={onKeep}>
          Note it as made
        </button>
      </section>
    </div>
  )
}

const OFF_WORDS = {
  length: ['short', 'long'],
  width: ['narrow', 'wide'],
  thickness: ['thin', 'thick'],
} as const
