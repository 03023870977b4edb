import { describe, expect, it } from 'vitest'
import type { LumberAnswer, LumberJob } from '../../../../src/solvers/cutting/lumber/lumberJob.ts'
import { workshopJob } from './randomJobs.ts'
import { planned } from './solved.ts'

const seeds = [1, 2, 3, 4, 5, 6]
const jobOf = (seed: number): LumberJob =>
  workshopJob(seed, { pieces: 40, kinds: 9, stocks: 1 + (seed % 4) })

/** Both are proven, so their prices say how the jobs compare. */
const provenPrice = (job: LumberJob): number => {
  const answer: LumberAnswer = planned(job)
  expect(answer.proven).toBe(true)
  return answer.price
}

const scaled = (job: LumberJob, factor: number): LumberJob => ({
  stocks: job.stocks.map((stock) => ({ ...stock, lengthMm: stock.lengthMm * factor })),
  parts: job.parts.map((part) => ({ ...part, lengthMm: part.lengthMm * factor })),
  kerfMm: job.kerfMm * factor,
  trimMm: job.trimMm * factor,
})

describe('solveLumber, when a job is changed,', () => {
  it.each(seeds)('%d: asks the same price when everything is twice as long', (seed) => {
    const job = jobOf(seed)
    expect(provenPrice(scaled(job, 2))).toBe(provenPrice(job))
  })

  it.each(seeds)('%d: asks the same price in tenths and in 32nds of an inch', (seed) => {
    const job = jobOf(seed)
    const price = provenPrice(job)
    expect(provenPrice(scaled(job, 0.1))).toBe(price)
    expect(provenPrice(scaled(job, 25.4 / 32))).toBe(price)
  })

  it.each(seeds)('%d: asks the same price in any order', (seed) => {
    const job = jobOf(seed)
    const turned = { ...job, stocks: job.stocks.toReversed(), parts: job.parts.toReversed() }
    expect(provenPrice(turned)).toBe(provenPrice(job))
  })

  it.each(seeds)('%d: does not buy a shorter board that costs more', (seed) => {
    const job = jobOf(seed)
    const stocks = [...job.stocks, { id: 'bad', lengthMm: 1700, price: 99 }]
    const answer = planned({ ...job, stocks })
    expect(answer.price).toBe(provenPrice(job))
    expect(answer.patterns.every(({ stock }) => stock < job.stocks.length)).toBe(true)
  })

  it.each(seeds)('%d: never gets cheaper by a wider saw', (seed) => {
    const job = jobOf(seed)
    const wider = provenPrice({ ...job, kerfMm: job.kerfMm + 2 })
    expect(wider).toBeGreaterThanOrEqual(provenPrice(job))
  })

  it.each(seeds)('%d: asks the same price when a part is listed twice, half of it each', (seed) => {
    const job = jobOf(seed)
    const parts = job.parts.flatMap((part) => [
      { ...part, count: Math.floor(part.count / 2) },
      { ...part, id: `${part.id}-again`, count: Math.ceil(part.count / 2) },
    ])
    expect(provenPrice({ ...job, parts })).toBe(provenPrice(job))
  })

  it.each(seeds)('%d: never gets dearer by a board that is on hand', (seed) => {
    const job = jobOf(seed)
    const stocks = [...job.stocks, { id: 'shed', lengthMm: 1500, price: 0, count: 1 }]
    expect(provenPrice({ ...job, stocks })).toBeLessThanOrEqual(provenPrice(job))
  })
})
