import { completeReport, type WholeReport } from '../reports/wholeReport.ts'
import type { Answer } from './answers.ts'

/** A design with its hive and all that is known of it, the workshop's lists included. */
export interface WholeAnswer extends Answer {
  readonly report: WholeReport
}

/** Completes an answer when it is first asked for; only what is loaded later may import this. */
export const wholeAnswerOf = (answer: Answer): WholeAnswer => {
  const before = known.get(answer)
  if (before !== undefined) return before
  const { design, hive, report } = answer
  const whole = { design, hive, report: completeReport(design, hive, report) }
  known.set(answer, whole)
  return whole
}

const known = new WeakMap<Answer, WholeAnswer>()
