import { describe, expect, it } from 'vitest'
import type { LumberJob } from '../../../../src/solvers/cutting/lumber/lumberJob.ts'
import { solveLumber } from '../../../../src/solvers/cutting/lumber/solveLumber.ts'
import { checkLumberPlan } from '../checkLumberPlan.ts'
import { type Draw, drawFrom } from './randomJobs.ts'

interface Planted {
  readonly job: LumberJob
  /** The boards that were cut up cost this, so the least price is no more. */
  readonly price: number
}

/** Boards cut up without any rest: whoever claims to prove a price above what they cost is wrong. */
const plant = (draw: Draw, boards: number): Planted => {
  const stocks = [
    { id: 'long', lengthMm: 3000, price: draw(600, 700) / 100 },
    { id: 'short', lengthMm: 2000, price: draw(400, 500) / 100 },
  ]
  const lengths: number[] = []
  let cents = 0
  for (let board = 0; board < boards; board++) {
    const stock = stocks[draw(0, 1)]
    if (stock === undefined) continue
    cents += Math.round(stock.price * 100)
    const pieces = draw(2, 5)
    let left = stock.lengthMm - 3 * (pieces - 1)
    for (let piece = pieces; piece > 1; piece--) {
      const length = draw(Math.floor(left / piece / 2), Math.floor((left / piece) * 1.4))
      lengths.push(length)
      left -= length
    }
    lengths.push(left)
  }
  const parts = lengths.map((lengthMm, index) => ({ id: `p${index}`, lengthMm, count: 1 }))
  return { job: { stocks, parts, kerfMm: 3, trimMm: 0 }, price: cents / 100 }
}

/** What the planner says within so many steps; every answer on the way must be true. */
const follow = ({ job, price }: Planted, mostSteps: number): { proven: boolean; price: number } => {
  let last = { proven: false, price: Infinity }
  const steps = solveLumber(job)
  for (let step = 0; step < mostSteps; step++) {
    const { value, done } = steps.next()
    if (value?.kind === 'plan') {
      expect(checkLumberPlan(job, value)).toEqual([])
      expect(value.bound).toBeLessThanOrEqual(price + 1e-9)
      expect(value.price).toBeLessThanOrEqual(last.price)
      if (value.proven) expect(value.price).toBeLessThanOrEqual(price + 1e-9)
      last = value
    }
    if (done === true) break
  }
  return last
}

describe('solveLumber on boards that were cut up without a rest', () => {
  it('proves nothing false, and mends most of them within a few hundred steps', () => {
    let atPrice = 0
    const jobs = 24
    for (let seed = 1; seed <= jobs; seed++) {
      const planted = plant(drawFrom(seed), 6 + (seed % 3) * 4)
      const last = follow(planted, 500)
      if (last.price <= planted.price + 1e-9) atPrice++
    }
    expect(atPrice).toBeGreaterThan(jobs / 2)
  })

  it('says no false word before it is through either', () => {
    for (let seed = 101; seed <= 112; seed++) follow(plant(drawFrom(seed), 14), 40 + seed)
  })
})
