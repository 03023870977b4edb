import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Design } from '../../src/design/schema.ts'
import { setField } from '../../src/design/setField.ts'
import { cuttingKey, planFor } from '../../src/reports/shop/cutting/cuttingKey.ts'
import type { CuttingJobs } from '../../src/reports/shop/cutting/cuttingPlan.ts'
import { attachCuttingPlan } from '../../src/store/attachCuttingPlan.ts'
import { useCuttingPlan } from '../../src/store/cuttingPlan.ts'
import { useDesignStore } from '../../src/store/designStore.ts'
import type { CuttingReply } from '../../src/workers/cuttingMessages.ts'

/** The thickness of the walls' insulation stands for what the hive asks of the planner. */
const jobsOf = (design: Design): CuttingJobs => ({
  hives: design.walls.coreMm,
  lumber: [],
  sheets: [],
  problems: [],
})

let detach = () => {}
let asked: number[]
let stopped: number[]
let tell: (reply: CuttingReply) => void
let waiting: Set<() => void>

beforeEach(() => {
  asked = []
  stopped = []
  tell = () => {}
  waiting = new Set()
  detach = attachCuttingPlan({
    designs: useDesignStore,
    plans: useCuttingPlan,
    shownJobs: (design) => (design.walls.coreMm === 33 ? undefined : jobsOf(design)),
    keyOf: cuttingKey,
    ask: (jobs, hear) => {
      asked.push(jobs.hives)
      tell = hear
      return () => stopped.push(jobs.hives)
    },
    timer: (call) => {
      waiting.add(call)
      return () => waiting.delete(call)
    },
  })
})

afterEach(() => {
  detach()
  useDesignStore.setState(useDesignStore.getInitialState(), true)
  useCuttingPlan.setState(useCuttingPlan.getInitialState(), true)
})

const rest = () => {
  for (const call of [...waiting]) {
    waiting.delete(call)
    call()
  }
}

const change = (path: string, value: number | string) =>
  useDesignStore.getState().edit((design) => setField(design, path, value).design)

const answer = (hives: number, isFinal: boolean) => {
  const jobs: CuttingJobs = { hives, lumber: [], sheets: [], problems: [] }
  tell({ kind: 'plan', plan: { jobs, lumber: [], sheets: [], isFinal } })
}

describe('attachCuttingPlan', () => {
  it('asks once the design has been at rest, and takes each better plan', () => {
    expect(asked).toEqual([])
    rest()
    expect(asked).toEqual([60])
    expect(useCuttingPlan.getState().isWorking).toBe(true)
    answer(60, false)
    expect(useCuttingPlan.getState()).toMatchObject({ isWorking: true, plan: { isFinal: false } })
    answer(60, true)
    expect(useCuttingPlan.getState()).toMatchObject({ isWorking: false, plan: { isFinal: true } })
  })

  it('stops what is no longer wanted', () => {
    rest()
    change('walls.coreMm', 61)
    expect(stopped).toEqual([])
    rest()
    expect([asked, stopped]).toEqual([[60, 61], [60]])
  })

  it('asks nothing for a change that is nothing to the planner', () => {
    rest()
    change('title.note', 'For the bench')
    rest()
    expect([asked, stopped]).toEqual([[60], []])
    answer(60, true)
    change('title.note', 'For the club')
    rest()
    expect(asked).toEqual([60])
  })

  it('knows the plan again after an undo', () => {
    rest()
    answer(60, true)
    change('walls.coreMm', 61)
    rest()
    answer(61, true)
    useDesignStore.getState().undo()
    rest()
    expect(asked).toEqual([60, 61])
    expect(useCuttingPlan.getState()).toMatchObject({ plan: { jobs: { hives: 60 } } })
  })

  it('says why there is no plan, and asks again when the design changes', () => {
    rest()
    tell({ kind: 'failed', message: 'The thread ended.' })
    expect(useCuttingPlan.getState()).toMatchObject({
      isWorking: false,
      problem: 'The thread ended.',
    })
    change('walls.coreMm', 61)
    rest()
    expect(asked).toEqual([60, 61])
    expect(useCuttingPlan.getState().problem).toBeUndefined()
  })

  it('asks nothing while there is no hive', () => {
    rest()
    change('walls.coreMm', 33)
    rest()
    expect([asked, stopped]).toEqual([[60], [60]])
    expect(useCuttingPlan.getState().isWorking).toBe(false)
  })

  it('ends with the page', () => {
    rest()
    detach()
    expect(stopped).toEqual([60])
  })
})

describe('planFor', () => {
  const jobs = jobsOf(useDesignStore.getState().design)
  const plan = { jobs, lumber: [], sheets: [], isFinal: true }

  it('takes a plan for equal jobs, and none for others', () => {
    expect(planFor({ ...jobs }, plan)).toBe(plan)
    expect(planFor({ ...jobs, hives: 2 }, plan)).toBeUndefined()
    expect(planFor(jobs, undefined)).toBeUndefined()
  })
})
