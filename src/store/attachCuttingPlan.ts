import type { StoreApi } from 'zustand'
import type { Design } from '../design/schema.ts'
import type { CuttingJobs, CuttingPlan } from '../reports/shop/cutting/cuttingPlan.ts'
import type { AskCutting } from '../workers/cuttingClient.ts'
import type { CuttingReply } from '../workers/cuttingMessages.ts'
import type { Timer } from './attachAutosave.ts'
import type { CuttingPlanState } from './cuttingPlan.ts'
import type { DesignState } from './history.ts'

export interface CuttingPlanOptions {
  readonly designs: Pick<StoreApi<DesignState>, 'getState' | 'subscribe'>
  readonly plans: Pick<StoreApi<CuttingPlanState>, 'getState' | 'setState'>
  /** What the shown hive asks of the planner; undefined while there is no hive. */
  readonly shownJobs: (design: Design) => CuttingJobs | undefined
  readonly keyOf: (jobs: CuttingJobs) => string
  readonly ask: AskCutting
  readonly timer: Timer
  /** So long after the last change the design is at rest, and its heat mostly known. */
  readonly restMs?: number
}

/** So many plans are remembered, so that undo and redo need no new ones. */
const MOST_KEPT = 12

/**
 * Keeps the plan of boards and sheets up to date: once the design has been at rest, it is asked for,
 * and each better plan is taken. What is no longer wanted is stopped at once. A change that asks
 * nothing new of the planner keeps its plan. Returns how to stop.
 */
export const attachCuttingPlan = (options: CuttingPlanOptions): (() => void) => {
  const { designs, plans, shownJobs, keyOf, ask, timer, restMs = 1500 } = options
  const finished = new Map<string, CuttingPlan>()
  let wanted: Design | undefined
  let running: { readonly key: string; readonly stop: () => void } | undefined
  let callOffRest = () => {}

  const stopRunning = (): void => {
    running?.stop()
    running = undefined
  }

  const take = (key: string, reply: CuttingReply): void => {
    if (reply.kind === 'failed') {
      running = undefined
      plans.setState({ isWorking: false, problem: reply.message })
      return
    }
    const { plan } = reply
    if (plan.isFinal) {
      running = undefined
      remember(finished, key, plan)
    }
    plans.setState({ plan, planKey: key, isWorking: !plan.isFinal, problem: undefined })
  }

  const askFor = (): void => {
    const jobs = shownJobs(designs.getState().design)
    const key = jobs && keyOf(jobs)
    if (running !== undefined && running.key === key) return
    stopRunning()
    if (jobs === undefined || key === undefined) {
      plans.setState({ isWorking: false })
      return
    }
    const known = finished.get(key)
    if (known === undefined) start(jobs, key)
    else take(key, { kind: 'plan', plan: known })
  }

  const start = (jobs: CuttingJobs, key: string): void => {
    plans.setState({ isWorking: true, problem: undefined })
    running = { key, stop: ask(jobs, (reply) => take(key, reply)) }
  }

  const follow = (): void => {
    const { design } = designs.getState()
    if (design === wanted) return
    wanted = design
    callOffRest()
    callOffRest = timer(askFor, restMs)
  }

  const stopDesigns = designs.subscribe(follow)
  follow()
  return () => {
    stopDesigns()
    callOffRest()
    stopRunning()
  }
}

const remember = (kept: Map<string, CuttingPlan>, key: string, plan: CuttingPlan): void => {
  // The one used last stands last; the first to go is the one not used for longest.
  kept.delete(key)
  kept.set(key, plan)
  const [oldest] = kept.keys()
  if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest)
}
