import { WorldError } from '../solvers/conduction/worldError.ts'
import type { AnswerHeat } from './answerHeat.ts'
import type { FieldReply, FieldRequest, HeatJob, HeatResult } from './fieldMessages.ts'

/** Takes requests one by one: a new one ends what the one before it began, and so does a cancel. */
export const createFieldServer = (
  answerHeat: AnswerHeat,
  tell: (reply: FieldReply) => void,
): ((request: FieldRequest) => void) => {
  let current = new AbortController()

  const answer = async (serial: number, job: HeatJob, signal: AbortSignal): Promise<void> => {
    const result = await answerHeat(job, signal).catch(describeFailure)
    if (!signal.aborted) tell({ serial, result })
  }
  return (request) => {
    current.abort()
    current = new AbortController()
    if (request.kind === 'ask') void answer(request.serial, request.job, current.signal)
  }
}

const describeFailure = (error: unknown): HeatResult => {
  const why = error instanceof Error ? error.message : String(error)
  const message =
    error instanceof WorldError ? why : `The heat of this hive could not be worked out: ${why}`
  return { kind: 'failed', message }
}
