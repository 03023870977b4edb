import type { CuttingJobs, CuttingPlan } from './cuttingPlan.ts'
import { planCutting } from './planCutting.ts'

/** The final plan, however long it takes: for commands that print one answer, the same every time. */
export const solveCuttingPlan = (jobs: CuttingJobs): CuttingPlan => {
  const steps = planCutting(jobs)
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
  }
}
