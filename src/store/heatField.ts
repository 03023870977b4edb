import { create } from 'zustand'
import type { Design } from '../design/schema.ts'
import type { HeatComparisons } from '../reports/heat/field/heatComparisons.ts'
import type { HeatFieldAnswer } from '../reports/heat/field/heatFieldAnswer.ts'

/** What the conduction solver has said so far, and about which design. */
export interface HeatFieldState {
  /** The newest answer; it may be about an older design than the present one. */
  readonly answer: HeatFieldAnswer | undefined
  /** The design that `answer` is about. */
  readonly answerDesign: Design | undefined
  /** Remedies and baselines; they come after the full answer. */
  readonly comparisons: HeatComparisons | undefined
  /** The design that `comparisons` is about. */
  readonly comparisonsDesign: Design | undefined
  readonly isWorking: boolean
  /** Why there is no answer for the present design, for a person to read. */
  readonly problem: string | undefined
}

export const useHeatField = create<HeatFieldState>()(() => ({
  answer: undefined,
  answerDesign: undefined,
  comparisons: undefined,
  comparisonsDesign: undefined,
  isWorking: false,
  problem: undefined,
}))
