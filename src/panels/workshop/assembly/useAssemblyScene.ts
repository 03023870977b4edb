import { useEffect } from 'react'
import type { AssemblyReport } from '../../../reports/shop/assembly/assemblyReport.ts'
import { stepPicture } from '../../../reports/shop/assembly/stepPicture.ts'
import { useViewStore } from '../../../store/viewStore.ts'

/** Shows a step in the hive, seen from where it is seen best; shows the whole hive again at the end. */
export const useAssemblyScene = (assembly: AssemblyReport, place: number): void => {
  useEffect(() => {
    useViewStore.getState().set(CLOSED_UP)
    return () => useViewStore.getState().set({ assembly: undefined })
  }, [])
  useEffect(() => {
    const picture = stepPicture(assembly, place)
    if (picture !== undefined) useViewStore.getState().showStep(picture)
  }, [assembly, place])
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
