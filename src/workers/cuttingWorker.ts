import { planCutting } from '../reports/shop/cutting/planCutting.ts'
import type { CuttingReply, CuttingRequest } from './cuttingMessages.ts'
import { serveCutting } from './serveCutting.ts'

// The page's and the worker's globals share one type here; this is the worker's.
const scope = self as unknown as DedicatedWorkerGlobalScope

const tell = (reply: CuttingReply): void => scope.postMessage(reply)

scope.onmessage = ({ data }: MessageEvent<CuttingRequest>) => {
  try {
    const clock = { now: () => performance.now(), mostMs: data.mostMs, polishMs: 1000 }
    serveCutting(planCutting(data.jobs), clock, tell)
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    tell({ kind: 'failed', message: `The boards and sheets could not be planned: ${why}` })
  }
}
