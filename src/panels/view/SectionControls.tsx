import { type SectionAxis, useViewStore } from '../../store/viewStore.ts'
import { formatTrimmed } from '../../units/number.ts'
import { Segments } from './Segments.tsx'
import { ViewSlider } from './ViewSlider.tsx'

const CUTS: readonly { readonly value: SectionAxis; readonly name: string }[] = [
  { value: 'none', name: 'Whole' },
  { value: 'x', name: 'Across' },
  { value: 'z', name: 'Along' },
]

const PLACES = [
  { at: 0.25, name: '1/4' },
  { at: 0.5, name: 'Middle' },
  { at: 0.75, name: '3/4' },
] as const

/** Cuts the hive open: across the row or along it, and where. */
export const SectionControls = () => {
  const axis = useViewStore((s) => s.sectionAxis)
  const at = useViewStore((s) => s.sectionAt)
  const set = useViewStore((s) => s.set)
  return (
    <>
      <Segments
        name="Cut open"
        options={CUTS}
        value={axis}
        onChoose={(value) => set({ sectionAxis: value })}
      />
      <ViewSlider
        name="Where"
        value={at}
        max={1}
        valueText={`${formatTrimmed(at * 100, 0)} % of the way`}
        stops={PLACES}
        onChange={(value) =>
          set({ sectionAt: value, ...(axis === 'none' && { sectionAxis: 'x' as const }) })
        }
      />
    </>
  )
}
