import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { createFieldClient, type FieldThread } from '../../src/workers/fieldClient.ts'
import type {
  FieldReply,
  FieldRequest,
  FieldRole,
  HeatJob,
  HeatResult,
} from '../../src/workers/fieldMessages.ts'

interface FakeThread extends FieldThread {
  readonly got: (FieldRole | FieldRequest)[]
  isRunning: boolean
}

const setUp = () => {
  const threads: FakeThread[] = []
  const told: HeatResult[] = []
  const ask = createFieldClient(() => {
    const thread: FakeThread = {
      got: [],
      isRunning: true,
      onmessage: null,
      onerror: null,
      postMessage: (message) => thread.got.push(message),
      terminate: () => {
        thread.isRunning = false
        for (const message of thread.got) if (message.kind === 'role') message.line.close()
      },
    }
    threads.push(thread)
    return thread
  })
  const reply = (serial: number, message = `answer ${serial}`) => {
    const data: FieldReply = { serial, result: { kind: 'failed', message } }
    threads[0]?.onmessage?.({ data } as MessageEvent<FieldReply>)
  }
  const end = () => {
    for (const thread of threads) thread.terminate()
  }
  return { threads, told, reply, end, ask: () => ask(JOB, (result) => told.push(result)) }
}

const JOB: HeatJob = { kind: 'field', design: DEFAULT_DESIGN, quality: 'preview' }

describe('createFieldClient', () => {
  it('starts two threads with the first question, joined by a line, and no more with the next', () => {
    const { threads, ask, end } = setUp()
    expect(threads).toHaveLength(0)
    ask()
    ask()
    expect(threads.map(({ got }) => got.map((m) => (m.kind === 'role' ? m.role : m.kind)))).toEqual(
      [['answers', 'ask', 'ask'], ['cells']],
    )
    end()
  })

  it('tells the answer to the newest question only', () => {
    const { ask, reply, told, end } = setUp()
    ask()
    ask()
    reply(1)
    expect(told).toEqual([])
    reply(2)
    reply(2)
    expect(told).toEqual([{ kind: 'failed', message: 'answer 2' }])
    end()
  })

  it('tells nothing after a cancel, which goes to the thread once', () => {
    const { ask, reply, told, threads, end } = setUp()
    const cancel = ask()
    cancel()
    cancel()
    reply(1)
    expect(told).toEqual([])
    expect(threads[0]?.got.filter((m) => m.kind === 'cancel')).toHaveLength(1)
    end()
  })

  it('does not let the cancel of an old question end a newer one', () => {
    const { ask, reply, told, threads, end } = setUp()
    const cancel = ask()
    ask()
    cancel()
    expect(threads[0]?.got.map((m) => m.kind)).toEqual(['role', 'ask', 'ask'])
    reply(2)
    expect(told).toHaveLength(1)
    end()
  })

  it('fails in plain words when a thread can not be loaded, and starts anew with the next', () => {
    const { ask, told, threads, end } = setUp()
    ask()
    threads[1]?.onerror?.({ message: '' } as ErrorEvent)
    expect(told).toEqual([
      {
        kind: 'failed',
        message: 'The part of the program that works out the heat could not be loaded.',
      },
    ])
    expect(threads.map((thread) => thread.isRunning)).toEqual([false, false])
    ask()
    expect(threads).toHaveLength(4)
    end()
  })
})
