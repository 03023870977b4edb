import type { HeatReport } from '../../../reports/heat/computeHeat.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatTrimmed } from '../../../units/number.ts'
import { formatTemperature } from '../../../units/temperature.ts'
import { formatConductance, formatConductanceBand } from '../../../units/thermal.ts'
import { splitUnit } from '../../inputs/numberShown.ts'
import { nightLossW, useNight } from '../../night.ts'
import { FieldState } from './FieldState.tsx'
import { OLD_WORDS, sumOfPanels, watts } from './fieldWords.ts'
import type { FieldView } from './useFieldView.ts'

interface WholeHiveProps {
  readonly heat: HeatReport
  readonly field: FieldView
}

/** What the whole hive loses, with the band that certainly holds it; the panels' sum until it comes. */
export const WholeHive = ({ heat, field }: WholeHiveProps) => {
  const units = useViewStore((s) => s.units)
  const night = useNight()
  const { answer, isOld, problem } = field
  const panelSum = sumOfPanels(heat)
  const conductance = answer?.conductanceWPerK ?? panelSum
  const { figure, unit } = splitUnit(formatConductance(conductance, units.thermal, 2))
  return (
    <section className={isOld ? 'panel-answer old' : 'panel-answer'}>
      <h4>The whole hive</h4>
      <FieldState field={field} />
      <p className="big-figure">
        {figure} <span className="big-unit">{unit}</span>
      </p>
      <p className={isOld ? 'wide old-words' : 'wide'}>{noteOf(field)}</p>
      <div className="wide">
        {answer ? (
          <p>
            Certainly between{' '}
            <strong className="band">
              {formatConductanceBand(answer.lowerWPerK, answer.upperWPerK, units.thermal)}
            </strong>{' '}
            for the hive as modelled. That is the reckoning’s own error; materials and draughts add
            more.
          </p>
        ) : (
          <p>Corners, edges and openings are not in it yet.</p>
        )}
        {problem !== undefined && <p className="field-problem">{problem}</p>}
        {answer && !answer.hasConverged && (
          <p className="field-problem">The reckoning did not settle, so take this as rough.</p>
        )}
      </div>
      <dl className="figures">
        <dt>
          Heat lost on a night of{' '}
          {formatTemperature(night.outsideC, units.temperature, { decimals: 0 }).replace(
            ' ',
            NO_BREAK,
          )}
        </dt>
        <dd>{watts(nightLossW(conductance, night))}</dd>
        {answer && (
          <>
            <dt>The panels’ sum, without corners and edges</dt>
            <dd>{formatConductance(panelSum, units.thermal, 2)}</dd>
          </>
        )}
      </dl>
      {answer && <HowWorkedOut field={answer} />}
    </section>
  )
}

const NO_BREAK = '\u00a0'

/** Always one line, so that nothing below it moves while a slider is dragged. */
const noteOf = ({ answer, isOld }: FieldView): string => {
  if (answer === undefined) return 'for each degree, the sum of the panels'
  return isOld ? OLD_WORDS : 'for each degree colder outside'
}

const HowWorkedOut = ({ field }: { readonly field: NonNullable<FieldView['answer']> }) => (
  <details className="source">
    <summary>How this is worked out</summary>
    <p>
      Heat is followed in three dimensions through every part, at {thousands(field.unknowns)} points
      in {field.iterations} rounds. Two reckonings are made: one can never come out too low, the
      other never too high, so the truth lies between them (principles of Dirichlet and Thomson).
    </p>
    {field.slopeStepError > 0 && (
      <p>
        Slopes are cut into steps. Twice as many would change the figure by{' '}
        {formatTrimmed(field.slopeStepError * 100, 2)} %.
      </p>
    )}
  </details>
)

const thousands = (count: number): string =>
  count < 10_000 ? String(count) : `${Math.round(count / 1000)} thousand`
