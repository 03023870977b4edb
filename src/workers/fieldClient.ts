import type { FieldReply, FieldRequest, FieldRole, HeatJob, HeatResult } from './fieldMessages.ts'

/**
 * Asks for the heat of a design. A new question takes the place of one that is still under way, whose
 * `tell` is then never called, and neither is it after the cancel that comes back.
 */
export type AskHeat = (job: HeatJob, tell: (result: HeatResult) => void) => () => void

/** The part of a `Worker` that is used. */
export interface FieldThread {
  readonly postMessage: (message: FieldRole | FieldRequest, transfer: Transferable[]) => void
  readonly terminate: () => void
  onmessage: ((event: MessageEvent<FieldReply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/**
 * Two threads, one for each scheme of the solver. They start with the first question; if one breaks
 * down, the question has failed and the next one starts them anew.
 */
export const createFieldClient = (startThread: () => FieldThread = startWorker): AskHeat => {
  let threads: readonly FieldThread[] = []
  let serial = 0
  let current: { readonly serial: number; readonly tell: (result: HeatResult) => void } | undefined

  const finish = (result: HeatResult): void => {
    const { tell } = current ?? {}
    current = undefined
    tell?.(result)
  }
  const breakDown = (message: string): void => {
    for (const thread of threads) thread.terminate()
    threads = []
    finish({ kind: 'failed', message })
  }
  const start = (): void => {
    const { port1, port2 } = new MessageChannel()
    const answers = startThread()
    const cells = startThread()
    threads = [answers, cells]
    for (const thread of threads) {
      thread.onerror = ({ message }) => breakDown(message || NOT_LOADED)
    }
    answers.onmessage = ({ data }) => {
      if (data.serial === current?.serial) finish(data.result)
    }
    answers.postMessage({ kind: 'role', role: 'answers', line: port1 }, [port1])
    cells.postMessage({ kind: 'role', role: 'cells', line: port2 }, [port2])
  }
  const send = (request: FieldRequest): void => threads[0]?.postMessage(request, [])

  return (job, tell) => {
    if (threads.length === 0) start()
    serial += 1
    const own = serial
    current = { serial: own, tell }
    send({ kind: 'ask', serial: own, job })
    return () => {
      if (current?.serial !== own) return
      current = undefined
      send({ kind: 'cancel' })
    }
  }
}

const NOT_LOADED = 'The part of the program that works out the heat could not be loaded.'

const startWorker = (): FieldThread =>
  new Worker(new URL('./fieldWorker.ts', import.meta.url), { type: 'module' })
