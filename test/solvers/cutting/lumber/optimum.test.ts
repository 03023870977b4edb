import { describe, expect, it } from 'vitest'
import { bruteForce } from './bruteForce.ts'
import { smallJob } from './randomJobs.ts'
import { planned, solved } from './solved.ts'

describe('solveLumber beside every possible plan', () => {
  it('finds and proves the least price of 250 small jobs, with the fewest boards', () => {
    let [plans, refusals] = [0, 0]
    for (let seed = 1; seed <= 250; seed++) {
      const job = smallJob(seed)
      const best = bruteForce(job)
      if (best === undefined) {
        const result = solved(job)
        expect(result.kind, `seed ${seed}`).toBe('refused')
        refusals++
        continue
      }
      const answer = planned(job)
      expect(answer.bound, `seed ${seed}`).toBeLessThanOrEqual(best.price)
      expect(answer.price, `seed ${seed}`).toBeGreaterThanOrEqual(best.price)
      if (answer.proven) expect(answer.price, `seed ${seed}`).toBe(best.price)
      expect(answer, `seed ${seed}`).toMatchObject({ proven: true, boards: best.boards })
      plans++
    }
    expect(plans).toBeGreaterThan(150)
    expect(refusals).toBeGreaterThan(10)
  })
})
