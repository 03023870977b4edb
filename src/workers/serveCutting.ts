import type { CuttingPlan } from '../reports/shop/cutting/cuttingPlan.ts'
import type { CuttingReply } from './cuttingMessages.ts'

export interface CuttingClock {
  /** Milliseconds from any beginning. */
  readonly now: () => number
  readonly mostMs: number
  /** So long a plan may be made handier once its price is proven. */
  readonly polishMs: number
}

/**
 * Runs the planner until it has finished or the time is over, and tells each better plan. A plan that
 * the time ran out on is told once more as the last word, with the gap that it has.
 */
export const serveCutting = (
  work: Generator<CuttingPlan | undefined, CuttingPlan>,
  { now, mostMs, polishMs }: CuttingClock,
  tell: (reply: CuttingReply) => void,
): void => {
  let end = now() + mostMs
  let best: CuttingPlan | undefined
  do {
    const { done, value } = work.next()
    if (done === true) {
      tell({ kind: 'plan', plan: { ...value, isFinal: true } })
      return
    }
    if (value === undefined) continue
    if (isProven(value) && !(best && isProven(best))) end = Math.min(end, now() + polishMs)
    best = value
    tell({ kind: 'plan', plan: { ...value, isFinal: false } })
  } while (now() < end)
  tell(
    best === undefined
      ? { kind: 'failed', message: TOO_LONG }
      : { kind: 'plan', plan: { ...best, isFinal: true } },
  )
}

/** Nothing cheaper exists; only fewer cuts and larger offcuts can still be found. */
const isProven = ({ lumber, sheets }: CuttingPlan): boolean =>
  [...lumber, ...sheets].every((result) => result.kind === 'refused' || result.proven)

const TOO_LONG =
  'No plan was found in the time given. Cut fewer hives at once, or offer fewer kinds of boards.'
