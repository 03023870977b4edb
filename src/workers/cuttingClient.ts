import type { CuttingJobs } from '../reports/shop/cutting/cuttingPlan.ts'
import type { CuttingReply, CuttingRequest } from './cuttingMessages.ts'

/**
 * Asks for a plan of boards and sheets; `tell` is called for each better plan. Returns how to stop,
 * after which nothing more is told.
 */
export type AskCutting = (jobs: CuttingJobs, tell: (reply: CuttingReply) => void) => () => void

/** The part of a `Worker` that is used. */
export interface CuttingThread {
  readonly postMessage: (request: CuttingRequest) => void
  readonly terminate: () => void
  onmessage: ((event: MessageEvent<CuttingReply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/**
 * Each question has a thread of its own that ends with it: the planner never waits for messages, and
 * ending the thread stops it at once. `mostMs` is what a question may take.
 */
export const createCuttingClient =
  (mostMs: number, startThread: () => CuttingThread = startWorker): AskCutting =>
  (jobs, tell) => {
    const thread = startThread()
    thread.onmessage = ({ data }) => {
      if (data.kind === 'failed' || data.plan.isFinal) thread.terminate()
      tell(data)
    }
    thread.onerror = ({ message }) => {
      thread.terminate()
      tell({ kind: 'failed', message: message || NOT_LOADED })
    }
    thread.postMessage({ jobs, mostMs })
    return () => {
      thread.onmessage = null
      thread.onerror = null
      thread.terminate()
    }
  }

const NOT_LOADED = 'The part of the program that plans boards and sheets could not be loaded.'

const startWorker = (): CuttingThread =>
  new Worker(new URL('./cuttingWorker.ts', import.meta.url), { type: 'module' })
