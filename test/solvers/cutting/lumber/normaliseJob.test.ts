import { describe, expect, it } from 'vitest'
import type { LumberJob } from '../../../../src/solvers/cutting/lumber/lumberJob.ts'
import { normaliseJob } from '../../../../src/solvers/cutting/lumber/normaliseJob.ts'

const job: LumberJob = {
  stocks: [
    { id: 'a', lengthMm: 2400, price: 5.5 },
    { id: 'b', lengthMm: 3000, price: 7 },
    { id: 'c', lengthMm: 2100, price: 6 },
    { id: 'd', lengthMm: 300, price: 1 },
    { id: 'e', lengthMm: 1200, price: 0, count: 2 },
  ],
  kerfMm: 3,
  trimMm: 20,
  parts: [
    { id: 'p', lengthMm: 497, count: 2 },
    { id: 'q', lengthMm: 997, count: 1 },
    { id: 'r', lengthMm: 497, count: 3 },
    { id: 's', lengthMm: 200, count: 0 },
  ],
}

describe('normaliseJob', () => {
  it('merges equal lengths, longest first, and counts in the greatest exact unit', () => {
    const problem = normaliseJob(job)
    // 1000 and 500 mm with their saw cuts: units of 500 mm.
    expect(problem.unitMm).toBe(500)
    expect(problem.weights).toEqual([2, 1])
    expect(problem.demand).toEqual([1, 5])
    expect(problem.members).toEqual([[1], [0, 2]])
  })

  it('leaves out boards that are too short, or beaten by one that is longer and no dearer', () => {
    const problem = normaliseJob(job)
    expect(problem.stocks).toEqual([1, 0, 4])
    // 2983, 2383 and 1183 mm hold 5, 4 and 2 units.
    expect(problem.caps).toEqual([5, 4, 2])
    expect(problem.costs).toEqual([700, 550, 0])
    expect(problem.limits).toEqual([6, 6, 2])
    expect(problem.costStep).toBe(50)
  })

  it('keeps one of two boards that are alike, and counted boards beside them', () => {
    const twin = { id: 'twin', lengthMm: 3000, price: 7 }
    const few = { id: 'few', lengthMm: 3000, price: 6, count: 1 }
    const stocks = [twin, { ...twin, id: 'again' }, few]
    expect(normaliseJob({ ...job, stocks }).stocks).toEqual([2, 0])
  })

  it('rounds pieces up for plans and down for bounds where no exact unit is quick', () => {
    const parts = [
      { id: 'p', lengthMm: 1000 / 3, count: 5 },
      { id: 'q', lengthMm: 500 / 7, count: 9 },
    ]
    const { weights, lowWeights, caps, unitMm } = normaliseJob({ ...job, parts })
    parts.forEach(({ lengthMm }, kind) => {
      expect((weights[kind] ?? 0) * unitMm).toBeGreaterThanOrEqual(lengthMm + 3 - 1e-6)
      expect((lowWeights[kind] ?? 0) * unitMm).toBeLessThanOrEqual(lengthMm + 3)
      expect((weights[kind] ?? 0) - (lowWeights[kind] ?? 0)).toBe(1)
    })
    expect((caps[0] ?? 0) * unitMm).toBeLessThanOrEqual(2983)
    expect(unitMm).toBeLessThanOrEqual(0.1)
  })
})
