import { describe, expect, it } from 'vitest'
import type { CuttingJobs } from '../../src/reports/shop/cutting/cuttingPlan.ts'
import { type CuttingThread, createCuttingClient } from '../../src/workers/cuttingClient.ts'
import type { CuttingReply, CuttingRequest } from '../../src/workers/cuttingMessages.ts'

const JOBS: CuttingJobs = { hives: 1, lumber: [], sheets: [], problems: [] }

const planReply = (isFinal: boolean): CuttingReply => ({
  kind: 'plan',
  plan: { jobs: JOBS, lumber: [], sheets: [], isFinal },
})

interface FakeThread extends CuttingThread {
  readonly got: CuttingRequest[]
  isRunning: boolean
}

const setUp = () => {
  const threads: FakeThread[] = []
  const told: CuttingReply[] = []
  const ask = createCuttingClient(4000, () => {
    const thread: FakeThread = {
      got: [],
      isRunning: true,
      onmessage: null,
      onerror: null,
      postMessage: (request) => thread.got.push(request),
      terminate: () => {
        thread.isRunning = false
      },
    }
    threads.push(thread)
    return thread
  })
  const stop = ask(JOBS, (reply) => told.push(reply))
  const [thread] = threads
  if (thread === undefined) throw new Error('No thread was started.')
  const say = (data: CuttingReply) => thread.onmessage?.({ data } as MessageEvent<CuttingReply>)
  return { ask, threads, thread, told, say, stop }
}

describe('createCuttingClient', () => {
  it('asks a thread of its own, with the time it may take', () => {
    expect(setUp().thread.got).toEqual([{ jobs: JOBS, mostMs: 4000 }])
  })

  it('hands every plan on and ends the thread with the last', () => {
    const { thread, say, told } = setUp()
    say(planReply(false))
    expect(thread.isRunning).toBe(true)
    say(planReply(true))
    expect(thread.isRunning).toBe(false)
    expect(told).toEqual([planReply(false), planReply(true)])
  })

  it('ends the thread at once when it is stopped, and tells nothing more', () => {
    const { thread, say, told, stop } = setUp()
    stop()
    say(planReply(true))
    expect(thread.isRunning).toBe(false)
    expect(told).toEqual([])
  })

  it('tells when the thread breaks down, and starts a new one for the next question', () => {
    const { thread, threads, told, ask } = setUp()
    thread.onerror?.({ message: 'out of memory' } as ErrorEvent)
    expect(thread.isRunning).toBe(false)
    expect(told).toEqual([{ kind: 'failed', message: 'out of memory' }])
    ask(JOBS, () => {})
    expect(threads.map(({ isRunning }) => isRunning)).toEqual([false, true])
  })

  it('says in words when a thread could not be loaded', () => {
    const { thread, told } = setUp()
    thread.onerror?.({ message: '' } as ErrorEvent)
    expect(told).toEqual([
      { kind: 'failed', message: expect.stringMatching(/could not be loaded/) },
    ])
  })
})
