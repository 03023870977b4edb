import { type CameraPreset, useViewStore } from '../../store/viewStore.ts'

const LOOKS: readonly { readonly preset: CameraPreset; readonly name: string }[] = [
  { preset: 'three-quarter', name: 'Corner' },
  { preset: 'front', name: 'Front' },
  { preset: 'side', name: 'End' },
  { preset: 'top', name: 'Top' },
  { preset: 'inside', name: 'Inside' },
  { preset: 'underneath', name: 'Below' },
]

/** Where to look from. */
export const CameraControls = () => {
  const look = useViewStore((s) => s.look)
  return (
    <fieldset className="segments looks">
      <legend>Look from</legend>
      <div>
        {LOOKS.map(({ preset, name }) => (
          <button key={preset} type="button" onClick={() => look(preset)}>
            {name}
          </button>
        ))}
      </div>
    </fieldset>
  )
}

/** Whether the main dimensions are drawn in the view. */
export const DimensionsButton = () => {
  const showDimensions = useViewStore((s) => s.showDimensions)
  const set = useViewStore((s) => s.set)
  return (
    <button
      type="button"
      className="plain"
      aria-pressed={showDimensions}
      onClick={() => set({ showDimensions: !showDimensions })}
    >
      Dimensions
    </button>
  )
}
