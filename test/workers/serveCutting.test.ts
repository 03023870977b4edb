import { describe, expect, it } from 'vitest'
import type { CuttingPlan } from '../../src/reports/shop/cutting/cuttingPlan.ts'
import type { LumberAnswer } from '../../src/solvers/cutting/lumber/lumberJob.ts'
import type { CuttingReply } from '../../src/workers/cuttingMessages.ts'
import { serveCutting } from '../../src/workers/serveCutting.ts'

const planOf = (hives: number): CuttingPlan => ({
  jobs: { hives, lumber: [], sheets: [], problems: [] },
  lumber: [],
  sheets: [],
  isFinal: false,
})

/** Each step of the work takes 10 ms by the clock that is handed over. */
const serve = (
  steps: readonly (CuttingPlan | undefined)[],
  mostMs: number,
  polishMs = Number.POSITIVE_INFINITY,
) => {
  const told: CuttingReply[] = []
  let time = 500
  function* work(): Generator<CuttingPlan | undefined, CuttingPlan> {
    for (const step of steps) {
      time += 10
      yield step
    }
    return planOf(99)
  }
  serveCutting(work(), { now: () => time, mostMs, polishMs }, (reply) => told.push(reply))
  return told.map((r) => (r.kind === 'plan' ? [r.plan.jobs.hives, r.plan.isFinal] : r.message))
}

describe('serveCutting', () => {
  it('tells each better plan, and the last word as final', () => {
    expect(serve([planOf(1), undefined, planOf(2)], 1000)).toEqual([
      [1, false],
      [2, false],
      [99, true],
    ])
  })

  it('gives the best plan so far as the last word when the time is over', () => {
    expect(serve([planOf(1), undefined, undefined, planOf(4)], 30)).toEqual([
      [1, false],
      [1, true],
    ])
  })

  it('spends little on a plan whose price is proven', () => {
    const lumber = [{ kind: 'plan', proven: false } as LumberAnswer]
    const open = { ...planOf(1), lumber }
    const steps = [open, undefined, planOf(2), undefined, planOf(3), planOf(4)]
    expect(serve(steps, 1000, 20)).toEqual([
      [1, false],
      [2, false],
      [3, false],
      [3, true],
    ])
  })

  it('says so when the time was over before any plan was found', () => {
    expect(serve([undefined, undefined], 15)).toEqual([expect.stringMatching(/^No plan was found/)])
  })
})
