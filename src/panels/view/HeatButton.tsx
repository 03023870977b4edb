import { useViewStore } from '../../store/viewStore.ts'

/** Whether surfaces and section show their temperature instead of their material. */
export const HeatButton = () => {
  const showHeat = useViewStore((s) => s.showHeat)
  const set = useViewStore((s) => s.set)
  return (
    <button
      type="button"
      className="plain"
      aria-pressed={showHeat}
      onClick={() => set({ showHeat: !showHeat, heatProbe: undefined })}
    >
      Temperature
    </button>
  )
}
