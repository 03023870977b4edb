import type { PanelHeat } from '../../reports/heat/computeHeat.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { formatLength } from '../../units/length.ts'
import { formatTrimmed } from '../../units/number.ts'
import { formatResistance } from '../../units/thermal.ts'
import { splitUnit } from '../inputs/numberShown.ts'
import { ResistanceScale } from './ResistanceScale.tsx'
import { Verdict } from './VerdictMark.tsx'

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
}

/** The R-value of one panel, honestly: with its rails, between them, the bounds, and what is wanted. */
export const PanelAnswer = ({ figures, panels, end }: PanelAnswerProps) => {
  const { thermal } = useViewStore((s) => s.units)
  const show = (value: number) => formatResistance(value, thermal)
  const { figure, unit } = splitUnit(show(figures.withRailsM2KPerW))
  const { lowerBoundM2KPerW: lower, upperBoundM2KPerW: upper } = figures
  return (
    <section className="panel-answer">
      <h4>{figures.name}</h4>
      <Verdict verdict={figures.meetsTarget ? 'ok' : 'look'}>
        {`${figures.meetsTarget ? 'Reaches' : 'Short of'} ${show(figures.targetM2KPerW)}`}
      </Verdict>
      <p className="big-figure">
        <span className="big-unit">{unit}</span> {figure}
        <span className="big-note"> with its rails</span>
      </p>
      <ResistanceScale
        betweenRails={figures.betweenRailsM2KPerW}
        withRails={figures.withRailsM2KPerW}
        lower={lower}
        upper={upper}
        target={figures.targetM2KPerW}
        end={end}
      />
      <dl className="figures">
        <dt>Between the rails</dt>
        <dd>{show(figures.betweenRailsM2KPerW)}</dd>
        <dt>{panels.length === 1 ? 'Bounds with rails' : 'Bounds, all of them'}</dt>
        <dd>
          {splitUnit(show(lower)).figure} to {splitUnit(show(upper)).figure}
        </dd>
        <dt>Wanted</dt>
        <dd>{show(figures.targetM2KPerW)}</dd>
      </dl>
      <details className="source">
        <summary>Layers, and how this is worked out</summary>
        {panels.map((panel) => (
          <PanelLayers key={panel.id} panel={panel} />
        ))}
        <p>
          Each panel is worked out twice, once as if heat could not go sideways and once as if it
          could do so freely. The truth lies between these bounds; the figure is their mean (ISO
          6946).
        </p>
      </details>
    </section>
  )
}

const PanelLayers = ({ panel }: { readonly panel: PanelHeat }) => {
  const units = useViewStore((s) => s.units)
  const show = (value: number) => formatResistance(value, units.thermal)
  return (
    <table className="layers">
      <caption>
        {panel.name}: {show(panel.withRailsM2KPerW)}, {formatTrimmed(panel.timberFraction * 100, 0)}{' '}
        % of it timber
      </caption>
      <tbody>
        <tr>
          <th scope="row">Air film inside</th>
          <td />
          <td>{show(panel.surfaceInsideM2KPerW)}</td>
        </tr>
        {panel.layers.map((layer) => (
          <tr key={layer.name}>
            <th scope="row">{layer.name}</th>
            <td>{formatLength(layer.thicknessMm, units.length, { withUnit: true })}</td>
            <td>{show(layer.resistanceM2KPerW)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">Air film outside</th>
          <td />
          <td>{show(panel.surfaceOutsideM2KPerW)}</td>
        </tr>
      </tbody>
    </table>
  )
}
