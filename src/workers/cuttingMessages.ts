import type { CuttingJobs, CuttingPlan } from '../reports/shop/cutting/cuttingPlan.ts'

/** To the thread that plans; each thread is asked once. */
export interface CuttingRequest {
  readonly jobs: CuttingJobs
  /** After so long the best plan found is the last word, ms. */
  readonly mostMs: number
}

/** What the thread says: plans that get better, the last of them final, or why there is none. */
export type CuttingReply =
  | { readonly kind: 'plan'; readonly plan: CuttingPlan }
  | { readonly kind: 'failed'; readonly message: string }
