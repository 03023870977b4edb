import type { CuttingPlan } from '../reports/shop/cutting/cuttingPlan.ts'
import type { CuttingReply } from './cuttingMessages.ts'

export interface CuttingClock {
  /** Milliseconds from any beginning. */
  readonly now: () => number
  readonly mostMs: number
}

/**
 * Runs the planner until it has finished or the time is over, and tells each better plan. A plan that
 * the time ran out on is told once more as the last word, with the gap that it has.
 */
export const serveCutting = (
  work: Generator<CuttingPlan | undefined, CuttingPlan>,
  { now, mostMs }: CuttingClock,
  tell: (reply: CuttingReply) => void,
): void => {
  const end = now() + mostMs
  let best: CuttingPlan | undefined
  do {
    const { done, value } = work.next()
    if (done === true) {
      tell({ kind: 'plan', plan: { ...value, isFinal: true } })
      return
    }
    if (value === undefined) continue
    best = value
    tell({ kind: 'plan', plan: { ...value, isFinal: false } })
  } while (now() < end)
  tell(
    best === undefined
      ? { kind: 'failed', message: TOO_LONG }
      : { kind: 'plan', plan: { ...best, isFinal: true } },
  )
}

const TOO_LONG =
  'No plan was found in the time given. Cut fewer hives at once, or offer fewer kinds of boards.'
