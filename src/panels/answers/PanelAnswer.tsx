import type { PanelHeat } from '../../reports/heat/computeHeat.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { NO_VALUE } from '../../units/number.ts'
import { formatResistance } from '../../units/thermal.ts'
import { splitUnit } from '../inputs/numberShown.ts'
import { PanelLayers } from './PanelLayers.tsx'
import { ResistanceScale, ScaleMark } from './ResistanceScale.tsx'
import { Verdict } from './VerdictMark.tsx'
import { fieldStage, STAGE_WORD } from './warmth/fieldWords.ts'
import type { FieldView } from './warmth/useFieldView.ts'

/** What a panel, or all four walls together, come to. */
export interface PanelFigures {
  readonly name: string
  readonly withRailsM2KPerW: number
  readonly betweenRailsM2KPerW: number
  readonly lowerBoundM2KPerW: number
  readonly upperBoundM2KPerW: number
  readonly targetM2KPerW: number
  readonly meetsTarget: boolean
}

interface PanelAnswerProps {
  readonly figures: PanelFigures
  /** The single panels behind the figures, to look into. */
  readonly panels: readonly PanelHeat[]
  readonly end: number
  readonly field: FieldView
  /** As it stands in this hive, m²K/W; undefined while that is not known. */
  readonly inHive: number | undefined
}

/** One panel's three honest answers side by side, the bounds, and what is wanted. */
export const PanelAnswer = ({ figures, panels, end, field, inHive }: PanelAnswerProps) => {
  const { thermal } = useViewStore((s) => s.units)
  const show = (value: number) => formatResistance(value, thermal)
  const bare = (value: number) => splitUnit(show(value)).figure
  const { lowerBoundM2KPerW: lower, upperBoundM2KPerW: upper, targetM2KPerW: target } = figures
  const { withRailsM2KPerW: withRails, betweenRailsM2KPerW: betweenRails } = figures
  return (
    <section className="panel-answer">
      <h4>
        {figures.name}, {splitUnit(show(withRails)).unit}
      </h4>
      <Verdict verdict={figures.meetsTarget ? 'ok' : 'look'}>
        {`${figures.meetsTarget ? 'Reaches' : 'Short of'} ${show(target)}`}
      </Verdict>
      <dl className="trio">
        <div>
          <dt>
            <ScaleMark of="between" /> Between the rails
          </dt>
          <dd>{bare(betweenRails)}</dd>
        </div>
        <div>
          <dt>
            <ScaleMark of="rails" /> With the rails
          </dt>
          <dd>{bare(withRails)}</dd>
        </div>
        <div className={field.isOld ? 'old' : undefined}>
          <dt>
            <ScaleMark of="hive" /> In this hive
          </dt>
          <dd>
            {inHive === undefined ? NO_VALUE : bare(inHive)}
            {/* The eye sees it dimmed or missing, and the word at the head of the answers. */}
            {(inHive === undefined || field.isOld) && (
              <span className="hidden-text">{STAGE_WORD[fieldStage(field)]}</span>
            )}
          </dd>
        </div>
      </dl>
      <ResistanceScale {...{ betweenRails, withRails, lower, upper, target, inHive, end }} />
      <dl className="figures">
        <dt>{panels.length === 1 ? 'Bounds with the rails' : 'Bounds, all of them'}</dt>
        <dd>
          {bare(lower)} to {bare(upper)}
        </dd>
        <dt>
          <ScaleMark of="target" /> Wanted, with the rails
        </dt>
        <dd>{show(target)}</dd>
      </dl>
      <details className="source">
        <summary>Layers, and how this is worked out</summary>
        {panels.map((panel) => (
          <PanelLayers
            key={panel.id}
            panel={panel}
            inHive={field.answer?.panels.find(({ id }) => id === panel.id)?.resistanceM2KPerW}
          />
        ))}
        <p>
          With the rails, each panel is worked out twice, once as if heat could not go sideways and
          once as if it could do so freely. The truth lies between these bounds; the figure is their
          mean (ISO 6946).
        </p>
        <p>
          In this hive, heat is followed in three dimensions, so that corners, edges, rebates and
          openings count. The figure is the inside area for each W/K that goes through it.
        </p>
      </details>
    </section>
  )
}
