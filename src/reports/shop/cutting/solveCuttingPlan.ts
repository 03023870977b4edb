import type { CuttingJobs, CuttingPlan } from './cuttingPlan.ts'
import { planCutting } from './planCutting.ts'

/**
 * The plan as a command prints it, the same every time: steps are counted, not timed. With at most
 * that many steps for each group on average, or until nothing better is looked for.
 */
export const solveCuttingPlan = (jobs: CuttingJobs, stepsForEach = STEPS_FOR_EACH): CuttingPlan => {
  const steps = planCutting(jobs)
  const most = stepsForEach * (jobs.lumber.length + jobs.sheets.length)
  let best: CuttingPlan | undefined
  for (let taken = 1; ; taken += 1) {
    const { value, done } = steps.next()
    best = value ?? best
    if (best !== undefined && (done === true || taken >= most)) return { ...best, isFinal: true }
  }
}

/** About a second each, of which the later ones rarely find anything. */
const STEPS_FOR_EACH = 40
