import { useDesignStore } from '../../store/designStore.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { formatTrimmed } from '../../units/number.ts'
import { ViewSlider } from './ViewSlider.tsx'

const STOPS = [
  { at: 0, name: 'Hung' },
  { at: 1, name: 'Lifted' },
] as const

/** Lifts one frame out of the row. */
export const FrameControls = () => {
  const frames = useDesignStore((s) => s.design.cavity.frames - s.design.cavity.emptyPlaces)
  const liftedFrame = useViewStore((s) => s.liftedFrame)
  const frameLift = useViewStore((s) => s.frameLift)
  const set = useViewStore((s) => s.set)
  const chosen = Math.min(liftedFrame, frames - 1)
  return (
    <div className="view-pair">
      <label className="view-choice">
        <span>Frame</span>
        <select
          value={chosen}
          onChange={(e) => set({ liftedFrame: Number(e.target.value), frameLift: frameLift || 1 })}
        >
          {Array.from({ length: frames }, (_, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the place in the row is what it is
            <option key={place} value={place}>
              {place + 1}
            </option>
          ))}
        </select>
      </label>
      <ViewSlider
        name="Lift it"
        value={frameLift}
        max={1}
        valueText={`${formatTrimmed(frameLift * 100, 0)} % out`}
        stops={STOPS}
        onChange={(value) => set({ frameLift: value })}
      />
    </div>
  )
}
