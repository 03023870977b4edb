import type { FieldAnswer } from '../../../solvers/conduction/fieldAnswer.ts'
import { type FieldQuestion, solveWorld } from '../../../solvers/conduction/solveWorld.ts'

/** Solves on this thread whatever a plan asks for, until it ends with its answer. */
export const solvePlan = <Answer>(plan: Generator<FieldQuestion, Answer, FieldAnswer>): Answer => {
  let step = plan.next()
  while (step.done !== true) step = plan.next(solveWorld(step.value))
  return step.value
}
