import { deriveHive } from '../hive/deriveHive.ts'
import { type Conductances, planComparisons } from '../reports/heat/field/planComparisons.ts'
import { planHiveField } from '../reports/heat/field/planHiveField.ts'
import type { FieldGrid } from '../solvers/conduction/fieldGrid.ts'
import type { FieldQuestion } from '../solvers/conduction/solveWorld.ts'
import { WorldError } from '../solvers/conduction/worldError.ts'
import type { HeatJob, HeatResult } from './fieldMessages.ts'
import { rememberAnswers, type Solve, type SolveField } from './rememberAnswers.ts'

export type AnswerHeat = (job: HeatJob, signal: AbortSignal) => Promise<HeatResult>

/** Fields that are kept: the present design's in both meshes, and those of a step back. */
const MOST_FIELDS = 4

/** Conductances that are kept: a dozen comparisons for each of a few designs. */
const MOST_CONDUCTANCES = 60

/**
 * Answers jobs one at a time. Each starts from the field of the hive that was solved last, and what
 * was solved lately is known without solving.
 */
export const createAnswerHeat = (solve: SolveField): AnswerHeat => {
  const solveField = rememberAnswers(solve, MOST_FIELDS)
  const solveConductances = rememberAnswers<Conductances>(async (question, signal) => {
    const { conductanceWPerK, lowerWPerK, upperWPerK } = await solve(question, signal).catch(
      noWorld,
    )
    return { conductanceWPerK, lowerWPerK, upperWPerK }
  }, MOST_CONDUCTANCES)
  let start: FieldGrid | undefined

  return async (job, signal) => {
    const { design } = job
    const built = deriveHive(design)
    if (built.kind === 'refused') {
      const message = built.refusals[0]?.message ?? 'This hive can not be built.'
      return { kind: 'failed', message }
    }
    if (job.kind === 'comparisons') {
      const plan = planComparisons(design, built.hive, job.others)
      return { kind: 'comparisons', comparisons: await carryOut(plan, solveConductances, signal) }
    }
    const plan = planHiveField(design, built.hive, job.quality)
    const solveOn: SolveField = (question) => solveField({ ...question, start }, signal)
    const answer = await carryOut(plan, solveOn, signal)
    start = answer.grid
    return { kind: 'field', answer }
  }
}

const carryOut = async <Result, Answer>(
  plan: Generator<FieldQuestion, Result, Answer>,
  solve: Solve<Answer>,
  signal: AbortSignal,
): Promise<Result> => {
  let step = plan.next()
  while (step.done !== true) {
    const answer = await solve(step.value, signal)
    signal.throwIfAborted()
    step = plan.next(answer)
  }
  return step.value
}

/** One world without an answer must not cost the other comparisons theirs. */
const noWorld = (error: unknown): Conductances => {
  if (error instanceof WorldError) return NO_CONDUCTANCES
  throw error
}

const NO_CONDUCTANCES: Conductances = {
  conductanceWPerK: undefined,
  lowerWPerK: undefined,
  upperWPerK: undefined,
}
