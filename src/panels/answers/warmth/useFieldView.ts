import type { HeatFieldAnswer } from '../../../reports/heat/field/heatFieldAnswer.ts'
import { useDesignStore } from '../../../store/designStore.ts'
import { useHeatField } from '../../../store/heatField.ts'

/** What there is to say about heat in three dimensions. */
export interface FieldView {
  readonly answer: HeatFieldAnswer | undefined
  /** The answer is about the design as it was before the last change. */
  readonly isOld: boolean
  readonly isWorking: boolean
  /** Why there is no answer for the present design. */
  readonly problem: string | undefined
}

export const useFieldView = (): FieldView => {
  const answer = useHeatField((s) => s.answer)
  const answerDesign = useHeatField((s) => s.answerDesign)
  const isWorking = useHeatField((s) => s.isWorking)
  const problem = useHeatField((s) => s.problem)
  // Only whether it differs, so that a drag does not draw the answers anew at each step.
  const isOld = useDesignStore((s) => answer !== undefined && s.design !== answerDesign)
  return { answer, isOld, isWorking, problem }
}
