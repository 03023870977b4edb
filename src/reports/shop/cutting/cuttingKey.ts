import type { CuttingJobs, CuttingPlan } from './cuttingPlan.ts'

/** Text that is equal for jobs that ask the planner for the same thing. */
export const cuttingKey = (jobs: CuttingJobs): string => {
  const before = known.get(jobs)
  if (before !== undefined) return before
  const key = JSON.stringify([jobs.hives, jobs.lumber, jobs.sheets])
  known.set(jobs, key)
  return key
}

/** The plan, if it is one for these very jobs. */
export const planFor = (
  jobs: CuttingJobs,
  plan: CuttingPlan | undefined,
): CuttingPlan | undefined =>
  plan !== undefined && cuttingKey(plan.jobs) === cuttingKey(jobs) ? plan : undefined

// A plan is looked at again with every design that is tried; its text is made once.
const known = new WeakMap<CuttingJobs, string>()
