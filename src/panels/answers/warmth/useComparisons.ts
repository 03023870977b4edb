import type { HeatComparisons } from '../../../reports/heat/field/heatComparisons.ts'
import { useDesignStore } from '../../../store/designStore.ts'
import { useHeatField } from '../../../store/heatField.ts'

export interface Comparison {
  readonly comparisons: HeatComparisons | undefined
  /** They are about the design as it was before the last change. */
  readonly isOld: boolean
}

export const useComparisons = (): Comparison => {
  const comparisons = useHeatField((s) => s.comparisons)
  const about = useHeatField((s) => s.comparisonsDesign)
  const isOld = useDesignStore((s) => comparisons !== undefined && s.design !== about)
  return { comparisons, isOld }
}
