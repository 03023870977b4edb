import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { WorldError } from '../../src/solvers/conduction/worldError.ts'
import type { FieldReply, HeatJob, HeatResult } from '../../src/workers/fieldMessages.ts'
import { createFieldServer } from '../../src/workers/fieldServer.ts'

const JOB: HeatJob = { kind: 'field', design: DEFAULT_DESIGN, quality: 'full' }

const result = (message: string): HeatResult => ({ kind: 'failed', message })

/** All that is waiting in this thread has been done. */
const settle = () => new Promise((resolve) => setImmediate(resolve))

const setUp = () => {
  const replies: FieldReply[] = []
  const jobs: { signal: AbortSignal; answer: (r: HeatResult) => void; fail: (e: Error) => void }[] =
    []
  const receive = createFieldServer(
    (_job, signal) =>
      new Promise((answer, fail) => {
        jobs.push({ signal, answer, fail })
      }),
    (reply) => replies.push(reply),
  )
  return { replies, jobs, receive }
}

describe('createFieldServer', () => {
  it('tells what came of a job, with its number', async () => {
    const { receive, jobs, replies } = setUp()
    receive({ kind: 'ask', serial: 7, job: JOB })
    jobs[0]?.answer(result('done'))
    await settle()
    expect(replies).toEqual([{ serial: 7, result: result('done') }])
  })

  it('drops the job under way for a newer one', async () => {
    const { receive, jobs, replies } = setUp()
    receive({ kind: 'ask', serial: 1, job: JOB })
    receive({ kind: 'ask', serial: 2, job: JOB })
    expect(jobs.map(({ signal }) => signal.aborted)).toEqual([true, false])
    jobs[0]?.answer(result('old'))
    jobs[1]?.answer(result('new'))
    await settle()
    expect(replies).toEqual([{ serial: 2, result: result('new') }])
  })

  it('says nothing after a cancel, whatever comes of it', async () => {
    const { receive, jobs, replies } = setUp()
    receive({ kind: 'ask', serial: 1, job: JOB })
    receive({ kind: 'cancel' })
    jobs[0]?.fail(new Error('aborted'))
    await settle()
    expect(replies).toEqual([])
  })

  it.each([
    [new WorldError('There is no matter.'), 'There is no matter.'],
    [new Error('x is 3'), 'The heat of this hive could not be worked out: x is 3'],
  ])('tells of the failure %s', async (error, message) => {
    const { receive, jobs, replies } = setUp()
    receive({ kind: 'ask', serial: 1, job: JOB })
    jobs[0]?.fail(error)
    await settle()
    expect(replies).toEqual([{ serial: 1, result: result(message) }])
  })
})
