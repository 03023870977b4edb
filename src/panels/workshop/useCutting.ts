import { useMemo } from 'react'
import type { ShopReport } from '../../reports/shop/computeShop.ts'
import { cuttingKey } from '../../reports/shop/cutting/cuttingKey.ts'
import type { CuttingPlan } from '../../reports/shop/cutting/cuttingPlan.ts'
import { useCuttingPlan } from '../../store/cuttingPlan.ts'

/** The plan that there is to show, and how it stands to the present design. */
export interface CuttingView {
  /** The newest plan; undefined while there has been none. */
  readonly plan: CuttingPlan | undefined
  /** The plan is of a design before the last change. */
  readonly isOld: boolean
  readonly isWorking: boolean
  /** Why there is no plan of the present design. */
  readonly problem: string | undefined
}

/** Follows the planner of boards and sheets. */
export const useCutting = ({ cutting }: Pick<ShopReport, 'cutting'>): CuttingView => {
  const plan = useCuttingPlan((s) => s.plan)
  const planKey = useCuttingPlan((s) => s.planKey)
  const isWorking = useCuttingPlan((s) => s.isWorking)
  const problem = useCuttingPlan((s) => s.problem)
  const key = useMemo(() => cuttingKey(cutting), [cutting])
  return { plan, isOld: plan !== undefined && planKey !== key, isWorking, problem }
}
