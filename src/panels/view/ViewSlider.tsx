import type { CSSProperties } from 'react'

export interface Stop {
  readonly at: number
  readonly name: string
}

interface ViewSliderProps {
  readonly name: string
  readonly value: number
  readonly max: number
  readonly valueText: string
  readonly stops: readonly Stop[]
  readonly onChange: (value: number) => void
}

/** A slider of the view with still places below it, so that nothing needs a drag. */
export const ViewSlider = ({ name, value, max, valueText, stops, onChange }: ViewSliderProps) => (
  <div className="view-slider">
    <label>
      <span>{name}</span>
      <input
        type="range"
        className="rule-slider"
        style={{ '--place': value / max } as CSSProperties}
        min={0}
        max={max}
        step={max / 100}
        value={value}
        aria-valuetext={valueText}
        onChange={(e) => onChange(Number(e.target.value))}
      />
    </label>
    <div className="stops">
      {stops.map((stop) => (
        <button
          key={stop.at}
          type="button"
          aria-label={`${name}: ${stop.name}`}
          aria-pressed={Math.abs(value - stop.at) < 0.01}
          onClick={() => onChange(stop.at)}
        >
          {stop.name}
        </button>
      ))}
    </div>
  </div>
)
