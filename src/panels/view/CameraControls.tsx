import { type CameraPreset, useViewStore } from '../../store/viewStore.ts'

const LOOKS: readonly { readonly preset: CameraPreset; readonly name: string }[] = [
  { preset: 'three-quarter', name: 'Corner' },
  { preset: 'front', name: 'Front' },
  { preset: 'side', name: 'End' },
  { preset: 'top', name: 'Top' },
  { preset: 'inside', name: 'Inside' },
  { preset: 'underneath', name: 'Below' },
]

/** Where to look from, and whether the dimensions are drawn. */
export const CameraControls = () => {
  const look = useViewStore((s) => s.look)
  const showDimensions = useViewStore((s) => s.showDimensions)
  const set = useViewStore((s) => s.set)
  return (
    <div className="camera-row">
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
      <button
        type="button"
        className="plain"
        aria-pressed={showDimensions}
        onClick={() => set({ showDimensions: !showDimensions })}
      >
        Dimensions
      </button>
    </div>
  )
}
