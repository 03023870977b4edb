import { describe, expect, it } from 'vitest'
import type { LumberJob } from '../../../src/solvers/cutting/lumber/lumberJob.ts'
import { provesLumberPrice } from './provesLumberPrice.ts'

/** Boards of 1000 take one piece of 600, so three pieces take three boards though two hold 1800. */
const JOB: LumberJob = {
  stocks: [{ id: 'board', lengthMm: 1000, price: 3 }],
  kerfMm: 3,
  trimMm: 0,
  parts: [{ id: 'a', lengthMm: 600, count: 3 }],
}

const withStocks = (
  ...stocks: readonly (readonly [length: number, price: number, count?: number])[]
) => ({
  ...JOB,
  stocks: stocks.map(([lengthMm, price, count]) => ({
    id: `${lengthMm}`,
    lengthMm,
    price,
    ...(count === undefined ? {} : { count }),
  })),
})

describe('provesLumberPrice', () => {
  it('believes a vector that shows how little a board yields', () => {
    expect(provesLumberPrice(JOB, 9, [[1]])).toBe(true)
    expect(provesLumberPrice(JOB, 9, [[1000]])).toBe(true)
  })

  it('believes nothing without a vector, and no price above the least', () => {
    expect(provesLumberPrice(JOB, 9, [])).toBe(false)
    expect(provesLumberPrice(JOB, 9, [[0]])).toBe(false)
    expect(provesLumberPrice(JOB, 9.01, [[1]])).toBe(false)
    expect(provesLumberPrice(JOB, 12, [[1]])).toBe(false)
  })

  it('refuses vectors that are not whole weights of the parts', () => {
    for (const dual of [[0.5], [-1], [1, 1], [], [Number.NaN], [Infinity]]) {
      expect(provesLumberPrice(JOB, 9, [[1], dual])).toBe(false)
    }
  })

  it('sees the kerf, the trim and the flush end', () => {
    // Two of 600 and a cut of 3 fill 1203 to the end: two boards for three pieces, not three.
    const flush = withStocks([1203, 3])
    expect(provesLumberPrice(flush, 9, [[1]])).toBe(false)
    expect(provesLumberPrice(flush, 6, [[1]])).toBe(true)
    expect(provesLumberPrice({ ...flush, kerfMm: 3.1 }, 9, [[1]])).toBe(true)
    expect(provesLumberPrice({ ...flush, trimMm: 1 }, 9, [[1]])).toBe(true)
  })

  it('looks at every mixture of boards', () => {
    // 2 × 600 on the long one: 1 long + 1 short = 5 + 3 = 8, below 3 short (9) and 2 long (10).
    const both = withStocks([1000, 3], [1300, 5])
    expect(provesLumberPrice(both, 8, [[1]])).toBe(true)
    expect(provesLumberPrice(both, 9, [[1]])).toBe(false)
    expect(provesLumberPrice(withStocks([1300, 5], [1000, 3]), 9, [[1]])).toBe(false)
  })

  it('counts the boards on hand', () => {
    expect(provesLumberPrice(withStocks([1000, 3], [1300, 0, 1]), 3, [[1]])).toBe(true)
    expect(provesLumberPrice(withStocks([1000, 3], [1300, 0, 1]), 6, [[1]])).toBe(false)
    expect(provesLumberPrice(withStocks([1000, 3], [1300, 0]), 0, [[1]])).toBe(true)
    expect(provesLumberPrice(withStocks([1000, 3], [1300, 0]), 3, [[1]])).toBe(false)
  })

  it('takes no piece more often than it is asked for', () => {
    // One of 700 and one of 300 weigh 4 together; without the count three of 300 would weigh 6.
    const job: LumberJob = {
      ...JOB,
      kerfMm: 0,
      parts: [
        { id: 'a', lengthMm: 700, count: 1 },
        { id: 'b', lengthMm: 300, count: 1 },
        { id: 'c', lengthMm: 301, count: 1 },
      ],
    }
    // Asked 2 + 2 + 1 = 5 is more than one board holds.
    expect(provesLumberPrice(job, 6, [[2, 2, 1]])).toBe(true)
    expect(provesLumberPrice(job, 9, [[2, 2, 1]])).toBe(false)
  })

  it('may use another vector for each purchase', () => {
    // Two short boards take no piece of 700, one long board takes one of the two pieces.
    const job: LumberJob = {
      stocks: [
        { id: 'short', lengthMm: 500, price: 1 },
        { id: 'long', lengthMm: 1000, price: 2 },
      ],
      kerfMm: 0,
      trimMm: 0,
      parts: [
        { id: 'a', lengthMm: 700, count: 1 },
        { id: 'b', lengthMm: 350, count: 1 },
      ],
    }
    const [large, pieces] = [
      [1, 0],
      [1, 1],
    ]
    expect(provesLumberPrice(job, 3, [large, pieces])).toBe(true)
    expect(provesLumberPrice(job, 3, [large])).toBe(false)
    expect(provesLumberPrice(job, 3, [pieces])).toBe(false)
  })
})
