import { useViewStore } from '../../store/viewStore.ts'
import { INCH, METRIC } from '../../units/preferences.ts'
import { Segments } from '../view/Segments.tsx'

const SYSTEMS = [
  { value: 'mm', name: 'mm, RSI' },
  { value: 'in', name: 'in, R' },
] as const

/** Metric with RSI, or inches with US R-values. Nothing stored changes. */
export const UnitSwitch = () => {
  const unit = useViewStore((s) => s.units.length)
  const set = useViewStore((s) => s.set)
  return (
    <Segments
      name="Units"
      options={SYSTEMS}
      value={unit}
      onChoose={(value) => set({ units: value === 'mm' ? METRIC : INCH })}
    />
  )
}
