import { useViewStore } from '../../store/viewStore.ts'
import { formatTrimmed } from '../../units/number.ts'
import { type Stop, ViewSlider } from './ViewSlider.tsx'

const SHUT_OPEN: readonly Stop[] = [
  { at: 0, name: 'Shut' },
  { at: 1, name: 'Open' },
]

const APART: readonly Stop[] = [
  { at: 0, name: 'Together' },
  { at: 1, name: 'Groups' },
  { at: 2, name: 'Layers' },
]

const percent = (share: number): string => `${formatTrimmed(share * 100, 0)} %`

/** What moves in the view: parts, lid and floor. */
export const MotionControls = () => {
  const explode = useViewStore((s) => s.explode)
  const lidOpen = useViewStore((s) => s.lidOpen)
  const floorOpen = useViewStore((s) => s.floorOpen)
  const set = useViewStore((s) => s.set)
  return (
    <>
      <ViewSlider
        name="Take apart"
        value={explode}
        max={2}
        valueText={percent(explode / 2)}
        stops={APART}
        onChange={(value) => set({ explode: value })}
      />
      <ViewSlider
        name="Lid"
        value={lidOpen}
        max={1}
        valueText={`${percent(lidOpen)} open`}
        stops={SHUT_OPEN}
        onChange={(value) => set({ lidOpen: value })}
      />
      <ViewSlider
        name="Floor"
        value={floorOpen}
        max={1}
        valueText={`${percent(floorOpen)} open`}
        stops={SHUT_OPEN}
        onChange={(value) => set({ floorOpen: value })}
      />
    </>
  )
}
