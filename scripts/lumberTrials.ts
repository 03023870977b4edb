import type { LumberJob } from '../src/solvers/cutting/lumber/lumberJob.ts'
import { solveLumber } from '../src/solvers/cutting/lumber/solveLumber.ts'
import { readLumberInstances } from '../test/references/cutting/readInstances.ts'
import { checkLumberPlan } from '../test/solvers/cutting/checkLumberPlan.ts'
import { provesLumberPrice } from '../test/solvers/cutting/provesLumberPrice.ts'
import type { CuttingTrial } from './cuttingTrial.ts'
import { randomLumberJob } from './randomLumberJob.ts'
import { solveFor, workClock } from './solveFor.ts'

const LIMIT_MS = 1000

/** The instances whose optimum is known. */
export const tryKnownLumber = (): readonly CuttingTrial[] =>
  readLumberInstances().map(({ name, job, optimum }) => tryLumber(name, job, optimum))

/** Jobs that no one has seen before: nothing but their certificates shows that they are right. */
export const tryRandomLumber = (count: number): readonly CuttingTrial[] =>
  Array.from({ length: count }, (_, seed) =>
    tryLumber(`random-${seed}`, randomLumberJob(1000 + seed), undefined),
  )

const tryLumber = (name: string, job: LumberJob, optimum: number | undefined): CuttingTrial => {
  const { result, ...time } = solveFor(solveLumber(job), LIMIT_MS, workClock)
  if (result.kind === 'refused') throw new Error(`${name}: ${result.message}`)
  const { price, bound, proven, certificate, plainPrice } = result
  const isBelieved = !proven || provesLumberPrice(job, price, certificate?.duals ?? [])
  return {
    name,
    price,
    bound,
    isProven: proven,
    bestKnown: optimum,
    plainPrice,
    faults: checkLumberPlan(job, result),
    isFalse:
      !isBelieved || bound > (optimum ?? price) + 1e-6 || (proven && price > (optimum ?? price)),
    time,
  }
}
