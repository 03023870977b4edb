import { useState } from 'react'
import { markMade, unmarkMade } from '../../../design/madeEdits.ts'
import type { CutListRow } from '../../../reports/shop/computeShop.ts'
import type { Side } from '../../../reports/shop/made/partSize.ts'
import type { Answer } from '../../../store/answers.ts'
import { useBench } from '../../../store/bench.ts'
import { useDesignStore } from '../../../store/designStore.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { formatSize } from '../../answers/formatSize.ts'
import { Segments } from '../../view/Segments.tsx'
import { counted } from '../measureLine.ts'
import { MadeAnswerView } from './MadeAnswerView.tsx'
import { MeasuredInput } from './MeasuredInput.tsx'
import { MEASURED_FIELDS, type Measured, madeParts, plannedMm, withMeasured } from './measured.ts'
import { useMadeAnswer } from './useMadeAnswer.ts'

interface MadePanelProps {
  readonly answer: Answer
  readonly row: CutListRow
}

/** Measure what you made: type a part's real size, see what can follow it, and choose. */
export const MadePanel = ({ answer, row }: MadePanelProps) => {
  const unit = useViewStore((s) => s.units.length)
  const edit = useDesignStore((s) => s.edit)
  const leave = useBench((s) => s.measure)
  const [side, setSide] = useState<Side>('length')
  const [isAll, setAll] = useState(row.count === 1)
  const [mm, setMm] = useState<number>()
  const { made } = answer.design
  const noted = row.partIds.filter((id) => made.some(({ partId }) => partId === id))
  const free = row.partIds.filter((id) => !noted.includes(id))
  const partIds = isAll ? row.partIds : (free.length > 0 ? free : row.partIds).slice(0, 1)
  const planned = plannedMm(row, side)
  const measured: Measured | undefined =
    mm === undefined || Math.abs(mm - planned) < 0.05 ? undefined : { row, partIds, side, mm }
  const found = useMadeAnswer(answer.design, measured)
  const done = () => leave(undefined)
  return (
    <section className="made" aria-label={`Measure ${row.label}, ${row.name}`}>
      <header className="group-head">
        <h3>
          <b className="letter">{row.label}</b> {row.name}
        </h3>
        <button type="button" className="plain" onClick={done}>
          All labels
        </button>
        <p className="part-label-size">
          Planned: {formatSize(row, unit)} {unit}
        </p>
        {noted.length > 0 && (
          <p>
            {counted(noted.length, 'piece')} of {row.count} noted as made.{' '}
            <button
              type="button"
              className="link"
              onClick={() => edit((design) => unmarkMade(design, noted))}
            >
              Forget that
            </button>
          </p>
        )}
      </header>
      <div className="made-form">
        <Segments name="Which side" options={SIDES} value={side} onChoose={setSide} />
        {row.count > 1 && (
          <Segments
            name="How many came out so"
            options={[
              { value: 'one', name: 'One' },
              { value: 'all', name: `All ${row.count}` },
            ]}
            value={isAll ? 'all' : 'one'}
            onChoose={(value) => setAll(value === 'all')}
          />
        )}
        <MeasuredInput
          key={side}
          field={MEASURED_FIELDS[side]}
          planned={planned}
          onMeasure={setMm}
        />
      </div>
      {mm !== undefined && measured === undefined && (
        <p className="answer-lead">That is as planned: nothing has to follow.</p>
      )}
      {measured && (
        <MadeAnswerView
          measured={measured}
          found={found}
          onApply={(changes) => {
            edit((design) => withMeasured(design, measured, changes))
            done()
          }}
          onKeep={() => {
            edit((design) => markMade(design, madeParts(measured)))
            done()
          }}
        />
      )}
      {measured === undefined && (
        <p className="about">
          The hive as drawn needs {formatLength(planned, unit, { withUnit: true })} here. Type what
          your tape says, then press Enter.
        </p>
      )}
    </section>
  )
}

const SIDES = [
  { value: 'length', name: 'Length' },
  { value: 'width', name: 'Width' },
  { value: 'thickness', name: 'Thickness' },
] as const
