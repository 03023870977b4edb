import { describe, expect, it } from 'vitest'
import { buildCuttingJobs } from '../../../../src/reports/shop/cutting/buildCuttingJobs.ts'
import type { CuttingJobs } from '../../../../src/reports/shop/cutting/cuttingPlan.ts'
import { planCutting } from '../../../../src/reports/shop/cutting/planCutting.ts'
import { solveCuttingPlan } from '../../../../src/reports/shop/cutting/solveCuttingPlan.ts'
import { cutRow, inShop } from './cutRow.ts'

const NOTHING: CuttingJobs = { hives: 1, lumber: [], sheets: [], problems: [] }

const JOBS = buildCuttingJobs(inShop({}), [
  cutRow({ label: 'A', widthMm: 63, thicknessMm: 38, lengthMm: 590, count: 8 }),
  cutRow({ label: 'B', widthMm: 144, thicknessMm: 20, lengthMm: 700, count: 3 }),
  cutRow({
    label: 'C',
    material: 'plywood-softwood',
    lengthMm: 900,
    widthMm: 450,
    thicknessMm: 12,
    count: 4,
  }),
])

describe('planCutting', () => {
  it('has nothing to do without jobs', () => {
    const step = planCutting(NOTHING).next()
    expect(step.value).toEqual({ jobs: NOTHING, lumber: [], sheets: [], isFinal: true })
    expect(step.done).toBe(true)
  })

  it('gives each plan with an answer to every job, and never a dearer one', () => {
    const totals: number[] = []
    let taken = 0
    const steps = planCutting(JOBS)
    for (; ; taken += 1) {
      const { value: plan, done } = steps.next()
      if (plan !== undefined) {
        expect(plan.lumber).toHaveLength(2)
        expect(plan.sheets).toHaveLength(1)
        expect(plan.isFinal).toBe(done === true)
        const results = [...plan.lumber, ...plan.sheets]
        totals.push(results.reduce((sum, r) => sum + (r.kind === 'plan' ? r.price : 1e9), 0))
      }
      // To the end of the lumber, and well into the sheets.
      if (done === true || taken > 60) break
    }
    expect(totals.length).toBeGreaterThan(0)
    expect([...totals].sort((a, b) => b - a)).toEqual(totals)
  })

  it('finds what can be counted by hand', () => {
    const plan = solveCuttingPlan(JOBS)
    // 2400 - 20 of ends = 2380 holds 4 x 590 + 3 x 3.2 = 2369.6: eight parts from two boards.
    expect(plan.lumber[0]).toMatchObject({ kind: 'plan', boards: 2, proven: true })
    // 2380 holds 3 x 700 + 2 x 3.2 = 2106.4: three parts from one board.
    expect(plan.lumber[1]).toMatchObject({ kind: 'plan', boards: 1, proven: true })
    // Four of 900 x 450 with the grain along a sheet of 2440 x 1220: two by two.
    expect(plan.sheets[0]).toMatchObject({ kind: 'plan', sheets: 1 })
  })

  it('gives the same plan every time', () => {
    expect(solveCuttingPlan(JOBS, 10)).toEqual(solveCuttingPlan(structuredClone(JOBS), 10))
  })
})
