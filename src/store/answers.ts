import type { Design } from '../design/schema.ts'
import { deriveHive } from '../hive/deriveHive.ts'
import type { Hive } from '../hive/hive.ts'
import type { Refusal } from '../hive/refusal.ts'
import type { HeatFieldAnswer } from '../reports/heat/field/heatFieldAnswer.ts'
import { type Report, runReports } from '../reports/report.ts'
import type { CuttingPlan } from '../reports/shop/cutting/cuttingPlan.ts'
import { useCuttingPlan } from './cuttingPlan.ts'
import { useDesignStore } from './designStore.ts'
import { type HeatFieldState, useHeatField } from './heatField.ts'

/** A design with its hive and report. */
export interface Answer {
  readonly design: Design
  readonly hive: Hive
  readonly report: Report
}

/**
 * What there is to show: the newest hive that could be built, and why the present design can't be
 * built when it can't. `answer` is undefined only when no design has ever been built.
 */
export interface Answers {
  readonly answer: Answer | undefined
  readonly refusals: readonly Refusal[]
  readonly stale: boolean
}

let lastDesign: Design | undefined
let last: Answers = { answer: undefined, refusals: [], stale: false }
let lastField: HeatFieldAnswer | undefined
let lastPlan: CuttingPlan | undefined

/**
 * Derives hive and report, remembered by the identity of the design, with the last good one kept. Once
 * the field of the hive that is shown is solved, its report is made again with the field in it, and so
 * it is with each better plan of boards and sheets.
 */
export const answersFor = (design: Design): Answers => {
  if (design !== lastDesign) {
    const result = deriveHive(design)
    const { answer } = last
    if (result.kind === 'refused') {
      last = { answer, refusals: result.refusals, stale: true }
    } else {
      last = { answer: answerOf(design, result.hive), refusals: [], stale: false }
    }
    lastDesign = design
  }
  const { answer } = last
  if (answer !== undefined && isOutdated(answer.design)) {
    last = { ...last, answer: answerOf(answer.design, answer.hive) }
  }
  return last
}

const answerOf = (design: Design, hive: Hive): Answer => {
  lastField = fieldOf(design)
  lastPlan = useCuttingPlan.getState().plan
  return { design, hive, report: runReports(design, hive, lastField, lastPlan) }
}

const isOutdated = (design: Design): boolean =>
  fieldOf(design) !== lastField || useCuttingPlan.getState().plan !== lastPlan

/** The solved field of this very design. */
const fieldOf = (design: Design): HeatFieldAnswer | undefined => {
  const { answer, answerDesign }: HeatFieldState = useHeatField.getState()
  return answerDesign === design ? answer : undefined
}

export const useAnswers = (): Answers => {
  // Without these, nothing would ask again when the field or a plan comes.
  useHeatField((s) => s.answer)
  useHeatField((s) => s.answerDesign)
  useCuttingPlan((s) => s.plan)
  return useDesignStore((s) => answersFor(s.design))
}
