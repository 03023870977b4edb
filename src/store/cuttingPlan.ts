import { create } from 'zustand'
import type { CuttingPlan } from '../reports/shop/cutting/cuttingPlan.ts'

/** What the planner has said so far about boards and sheets. */
export interface CuttingPlanState {
  /** The newest plan; it may be of older jobs than the present ones. */
  readonly plan: CuttingPlan | undefined
  /** The text of the jobs that `plan` is for: see `cuttingKey`. */
  readonly planKey: string | undefined
  readonly isWorking: boolean
  /** Why there is no plan for the present jobs, for a person to read. */
  readonly problem: string | undefined
}

export const useCuttingPlan = create<CuttingPlanState>()(() => ({
  plan: undefined,
  planKey: undefined,
  isWorking: false,
  problem: undefined,
}))
