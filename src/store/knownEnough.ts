import type { Design } from '../design/schema.ts'
import { planFor } from '../reports/shop/cutting/cuttingKey.ts'
import type { CuttingJobs } from '../reports/shop/cutting/cuttingPlan.ts'
import type { CuttingPlanState } from './cuttingPlan.ts'
import type { HeatFieldState } from './heatField.ts'

/** All is known of the heat of a design, or nothing more is to be hoped for. */
export const isHeatKnown =
  (design: Design) =>
  (state: HeatFieldState): boolean => {
    if (state.problem !== undefined) return true
    const isFull = state.answerDesign === design && state.answer?.quality === 'full'
    return isFull && state.comparisonsDesign === design
  }

/** The boards and sheets of these jobs are planned to the end, or nothing more is to be hoped for. */
export const isCuttingKnown =
  (jobs: CuttingJobs) =>
  (state: CuttingPlanState): boolean =>
    state.problem !== undefined || planFor(jobs, state.plan)?.isFinal === true
