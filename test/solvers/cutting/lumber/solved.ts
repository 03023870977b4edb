import { expect } from 'vitest'
import type {
  LumberAnswer,
  LumberJob,
  LumberResult,
} from '../../../../src/solvers/cutting/lumber/lumberJob.ts'
import { solveLumber } from '../../../../src/solvers/cutting/lumber/solveLumber.ts'
import { checkLumberPlan } from '../checkLumberPlan.ts'

/** The last word of the planner. */
export const solved = (job: LumberJob): LumberResult => {
  const steps = solveLumber(job)
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
  }
}

/** The last word where a plan is expected, and one that can be sawn. */
export const planned = (job: LumberJob): LumberAnswer => {
  const result = solved(job)
  if (result.kind !== 'plan') throw new Error(result.message)
  expect(checkLumberPlan(job, result)).toEqual([])
  return result
}

/** Sawn lengths of one board, by pattern, with the stock's index in front. */
export const distinctPatterns = ({ patterns }: LumberAnswer): number =>
  new Set(patterns.map(({ stock, pieces }) => `${stock}:${pieces.map((p) => p.lengthMm)}`)).size

export const longestOffcutMm = ({ patterns }: LumberAnswer): number =>
  patterns.reduce((most, { offcutMm }) => Math.max(most, offcutMm), 0)
