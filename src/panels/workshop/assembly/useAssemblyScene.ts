import { useEffect } from 'react'
import type { AssemblyStep } from '../../../reports/shop/assembly/assemblyReport.ts'
import { useViewStore } from '../../../store/viewStore.ts'

/** Shows a step in the hive, seen from where it is seen best; shows the whole hive again at the end. */
export const useAssemblyScene = (steps: readonly AssemblyStep[], place: number): void => {
  useEffect(() => {
    useViewStore.getState().set(CLOSED_UP)
    return () => useViewStore.getState().set({ assembly: undefined })
  }, [])
  useEffect(() => {
    const solid = steps.slice(0, Math.max(0, place)).flatMap((step) => step.partIds)
    const fresh = steps[place]?.partIds ?? []
    const view = steps[place]?.view
    if (view !== undefined) useViewStore.getState().showStep({ solid, fresh, view })
  }, [steps, place])
}

/** Nothing taken apart, opened or cut: the steps themselves show what is inside. */
const CLOSED_UP = {
  explode: 0,
  lidOpen: 0,
  floorOpen: 0,
  frameLift: 0,
  sectionAxis: 'none',
  showHeat: false,
} as const
