import { CAUTIONS } from '../../../catalog/cautions.ts'
import type { AssemblyStep } from '../../../reports/shop/assembly/assemblyReport.ts'
import type { WholeShop } from '../../../reports/shop/benchReport.ts'
import { fastenerWords } from '../../../sheets/shop/fastenerWords.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { formatTrimmed } from '../../../units/number.ts'
import { counted } from '../measureLine.ts'
import { RowButton } from '../RowButton.tsx'
import { useChooseRow } from '../useChooseRow.ts'
import { timeWords } from './timeWords.ts'

interface AssemblyStepViewProps {
  readonly step: AssemblyStep
  readonly shop: WholeShop
}

/** One step: its parts by letter, what to do, what to fasten with, what to measure, what to mind. */
export const AssemblyStepView = ({ step, shop }: AssemblyStepViewProps) => {
  const unit = useViewStore((s) => s.units.length)
  const choice = useChooseRow(shop.cutList)
  const mm = (length: number) => formatLength(length, unit, { withUnit: true })
  const fastenings = step.fastenings.flatMap((i) => shop.fasteners.fastenings[i] ?? [])
  const cautions = CAUTIONS.filter(({ id }) => step.cautions.includes(id))
  return (
    <>
      {step.rows.length > 0 && (
        <ul className="walk-parts">
          {step.rows.map((row) => (
            <li key={row.label}>
              <RowButton label={row.label} name={row.name} choice={choice}>
                <span>{row.name}</span>
                <strong>{row.count} ×</strong>
              </RowButton>
            </li>
          ))}
        </ul>
      )}
      <ol className="walk-do">
        {step.instructions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      {step.secondPerson !== undefined && (
        <div className="walk-two">
          <TwoPeople />
          <p>
            <strong>Two people.</strong> {step.secondPerson}
          </p>
        </div>
      )}
      {fastenings.length > 0 && (
        <section className="walk-part">
          <h4>Fasten</h4>
          <ul>
            {fastenings.map((f) => (
              <li key={`${f.joint} ${f.labels.join()}`}>
                <strong>
                  {f.count} × {fastenerWords(f.fastener, unit)}
                </strong>
                {f.glue && ' with glue'}. {f.joint}
                {f.pilotMm > 0 && `; drill ${mm(f.pilotMm)} first`}.
              </li>
            ))}
          </ul>
        </section>
      )}
      {step.diagonals.length > 0 && (
        <section className="walk-part">
          <h4>Check that it is square</h4>
          <ul>
            {step.diagonals.map((d) => (
              <li key={d.name}>
                {d.name}: both diagonals <strong>{mm(d.lengthMm)}</strong>. They may differ by{' '}
                {mm(d.limitMm)}.
              </li>
            ))}
          </ul>
        </section>
      )}
      {cautions.length > 0 && (
        <section className="walk-part walk-cautions">
          <h4>Take care</h4>
          {cautions.map(({ id, text }) => (
            <p key={id}>{text}</p>
          ))}
        </section>
      )}
      <p className="about">
        {timeWords(step.minutes)}
        {step.waitHours > 0 && ` Then wait ${hours(step.waitHours)} before the next step.`}
      </p>
    </>
  )
}

const hours = (h: number): string =>
  h % 24 === 0 ? counted(h / 24, 'day') : counted(Number(formatTrimmed(h, 1)), 'hour')

/** Two figures with a piece between them. */
const TwoPeople = () => (
  <svg viewBox="0 0 64 40" aria-hidden="true">
    <circle cx="10" cy="7" r="5" />
    <circle cx="54" cy="7" r="5" />
    <path d="M10 12v14M10 26l-5 13M10 26l5 13M10 16l12 7M54 12v14M54 26l-5 13M54 26l5 13M54 16l-12 7M20 20h24v8H20z" />
  </svg>
)
