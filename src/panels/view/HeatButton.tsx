import { useViewStore } from '../../store/viewStore.ts'

/** Whether surfaces and section show their temperature instead of their material. */
export const HeatButton = () => {
  const showHeat = useViewStore((s) => s.showHeat)
  const toggleHeat = useViewStore((s) => s.toggleHeat)
  return (
    <button type="button" className="plain" aria-pressed={showHeat} onClick={toggleHeat}>
      Temperature
    </button>
  )
}
