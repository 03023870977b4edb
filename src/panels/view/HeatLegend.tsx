import { heatColour, heatLevels } from '../../reports/heat/field/heatColours.ts'
import { useHeatField } from '../../store/heatField.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { formatTemperature, type TemperatureUnit } from '../../units/temperature.ts'
import { useFieldView } from '../answers/warmth/useFieldView.ts'
import { type Night, useNight } from '../night.ts'
import { HeatProbeLine } from './HeatProbeLine.tsx'

/** What the colours of the view mean, while they show temperature: in words, a bar and lines. */
export const HeatLegend = () => {
  const isShown = useViewStore((s) => s.showHeat)
  return isShown ? <Legend /> : null
}

const Legend = () => {
  const hasAnswer = useHeatField((s) => s.answer !== undefined)
  const unit = useViewStore((s) => s.units.temperature)
  const night = useNight()
  const show = (celsius: number) => formatTemperature(celsius, unit, { decimals: 0 })
  return (
    <section className="heat-legend" aria-label="Temperature, what the colours mean">
      {hasAnswer ? (
        <>
          <p className="heat-end">Outside {show(night.outsideC)}</p>
          <HeatBar night={night} unit={unit} />
          <p className="heat-end">Inside {show(night.insideC)}</p>
          <HeatProbeLine />
        </>
      ) : (
        <NoColours />
      )}
    </section>
  )
}

const NoColours = () => {
  const { problem } = useFieldView()
  return (
    <p role="status">
      {problem ?? 'The temperatures are being worked out; the colours come with them.'}
    </p>
  )
}

/** The colours from outside to inside, with the lines of equal temperature that the view draws. */
const HeatBar = ({ night, unit }: { readonly night: Night; readonly unit: TemperatureUnit }) => {
  const levels = heatLevels(night.outsideC, night.insideC, unit)
  return (
    <div className="heat-scale">
      <div className="heat-bar" style={{ backgroundImage: GRADIENT }} aria-hidden="true">
        {levels.map(({ celsius, share }) => (
          <i key={celsius} style={{ left: percent(share) }} />
        ))}
      </div>
      <ul className="heat-ticks" aria-label="Lines of equal temperature">
        {levels.map(({ celsius, share }) => (
          <li key={celsius} style={{ left: percent(share) }}>
            {bareDegrees(celsius, unit)}
          </li>
        ))}
      </ul>
    </div>
  )
}

const percent = (share: number): string => `${share * 100}%`

/** The ticks stand close: the unit is named at the ends. */
const bareDegrees = (celsius: number, unit: TemperatureUnit): string =>
  formatTemperature(celsius, unit, { decimals: 1 }).replace(/(\.0)? °[CF]$/, '')

const STOPS = 24

const GRADIENT = `linear-gradient(to right, ${Array.from({ length: STOPS + 1 }, (_, i) => {
  const { r, g, b } = heatColour(i / STOPS)
  return `rgb(${r} ${g} ${b}) ${percent(i / STOPS)}`
}).join(', ')})`
