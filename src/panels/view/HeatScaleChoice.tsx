import type { HeatScale } from '../../reports/heat/field/heatRange.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { Segments } from './Segments.tsx'

const SCALES: readonly { readonly value: HeatScale; readonly name: string }[] = [
  { value: 'outside', name: 'Outer skin' },
  { value: 'whole', name: 'Inside too' },
]

/** What the colours are spread over; the person's own choice, whatever the view shows. */
export const HeatScaleChoice = () => {
  const scale = useViewStore((s) => s.heatScale ?? 'whole')
  const set = useViewStore((s) => s.set)
  return (
    <Segments
      name="Colours for"
      options={SCALES}
      value={scale}
      onChoose={(heatScale) => set({ heatScale })}
    />
  )
}
