import { solveLumber } from '../../../solvers/cutting/lumber/solveLumber.ts'
import { solveSheets } from '../../../solvers/cutting/sheets/solveSheets.ts'
import type { CuttingJobs, CuttingPlan } from './cuttingPlan.ts'

/**
 * Plans all boards and sheets. Each step takes about as long as one of the solvers' steps, 20 ms. The
 * first plan comes when every group has one; then all groups are improved in turn. A step gives the
 * plan when it got better, otherwise nothing; the plan returned is final. No clock: the same jobs give
 * the same plans in the same order.
 */
export function* planCutting(jobs: CuttingJobs): Generator<CuttingPlan | undefined, CuttingPlan> {
  const lumber = jobs.lumber.map(({ job }) => start(solveLumber(job)))
  const sheets = jobs.sheets.map(({ job }) => start(solveSheets(job)))
  const all = [...lumber, ...sheets]
  const plan = (isFinal: boolean): CuttingPlan => ({
    jobs,
    lumber: lumber.flatMap(({ best }) => best ?? []),
    sheets: sheets.flatMap(({ best }) => best ?? []),
    isFinal,
  })

  // A plan of each, however rough.
  for (const work of all) {
    while (!work.hasPlan && !work.isDone) {
      work.advance()
      yield undefined
    }
  }
  if (all.some((work) => !work.isDone)) yield plan(false)

  // Better ones, each in turn.
  while (all.some((work) => !work.isDone)) {
    for (const work of all) {
      if (work.isDone) continue
      yield work.advance() ? plan(false) : undefined
    }
  }
  return plan(true)
}

/** A solver at work, and the best that it has found. */
interface Work<R> {
  readonly best: R | undefined
  readonly hasPlan: boolean
  readonly isDone: boolean
  /** One step; true when it found something better. */
  readonly advance: () => boolean
}

const start = <R>(steps: Generator<R | undefined, R>): Work<R> => {
  let best: R | undefined
  let isDone = false
  return {
    get best() {
      return best
    },
    get hasPlan() {
      return best !== undefined
    },
    get isDone() {
      return isDone
    },
    advance: () => {
      const { value, done } = steps.next()
      const isBetter = value !== undefined
      if (isBetter) best = value
      isDone = done === true
      return isBetter
    },
  }
}
