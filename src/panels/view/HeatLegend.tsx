import { heatColour } from '../../reports/heat/field/heatColours.ts'
import { type HeatRange, heatRange } from '../../reports/heat/field/heatRange.ts'
import { useHeatField } from '../../store/heatField.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { useFieldView } from '../answers/warmth/useFieldView.ts'
import { useNight } from '../night.ts'
import { HeatProbeLine } from './HeatProbeLine.tsx'
import { HeatScaleChoice } from './HeatScaleChoice.tsx'
import { areClose, degreesShort, tickWords } from './heatTicks.ts'

/** What the colours of the view mean, while they show temperature: in words, a bar and lines. */
export const HeatLegend = () => {
  const isShown = useViewStore((s) => s.showHeat)
  return isShown ? <Legend /> : null
}

const Legend = () => {
  const warmestOutsideShare = useHeatField((s) => s.answer?.warmestOutsideShare)
  const scale = useViewStore((s) => s.heatScale ?? 'whole')
  const unit = useViewStore((s) => s.units.temperature)
  const night = useNight()
  if (warmestOutsideShare === undefined) return <NoColours />
  const range = heatRange(scale, { ...night, warmestOutsideShare, unit })
  const end = degreesShort(range.endC, unit)
  return (
    <section className="heat-legend" aria-label={LEGEND_NAME}>
      <p className="heat-end">Outside {degreesShort(night.outsideC, unit)}</p>
      <HeatBar range={range} ticks={tickWords(range.levels, unit)} />
      <p className="heat-end">{scale === 'whole' ? `Inside ${end}` : `${end} and warmer`}</p>
      <div className="heat-foot">
        <HeatProbeLine />
        <HeatScaleChoice />
      </div>
    </section>
  )
}

const LEGEND_NAME = 'Temperature, what the colours mean'

const NoColours = () => {
  const { problem } = useFieldView()
  return (
    <section className="heat-legend" aria-label={LEGEND_NAME}>
      <p role="status">
        {problem ?? 'The temperatures are being worked out; the colours come with them.'}
      </p>
    </section>
  )
}

interface HeatBarProps {
  readonly range: HeatRange
  /** One for each level. */
  readonly ticks: readonly string[]
}

/** The colours from the coldest to the last, with the lines of equal temperature that the view draws. */
const HeatBar = ({ range: { levels, endShare }, ticks }: HeatBarProps) => (
  <div className="heat-scale">
    <div className="heat-bar" style={{ backgroundImage: GRADIENT }} aria-hidden="true">
      {levels.map(({ celsius, share }) => (
        <i key={celsius} style={{ left: percent(share / endShare) }} />
      ))}
    </div>
    <ul
      className={areClose(ticks) ? 'heat-ticks close' : 'heat-ticks'}
      aria-label="Lines of equal temperature"
    >
      {levels.map(({ celsius, share }, i) => (
        <li key={celsius} style={{ left: percent(share / endShare) }}>
          {ticks[i]}
        </li>
      ))}
    </ul>
  </div>
)

const percent = (share: number): string => `${share * 100}%`

const STOPS = 24

const GRADIENT = `linear-gradient(to right, ${Array.from({ length: STOPS + 1 }, (_, i) => {
  const { r, g, b } = heatColour(i / STOPS)
  return `rgb(${r} ${g} ${b}) ${percent(i / STOPS)}`
}).join(', ')})`
