import { describe, expect, it } from 'vitest'
import type { LumberJob } from '../../../src/solvers/cutting/lumber/lumberJob.ts'
import type { SheetJob } from '../../../src/solvers/cutting/sheets/sheetJob.ts'
import { leastLumberPrice, leastSheetPrice } from './leastPrices.ts'

describe('leastLumberPrice', () => {
  const job: LumberJob = {
    stocks: [
      { id: 'short', lengthMm: 1000, price: 3 },
      { id: 'long', lengthMm: 1203, price: 5 },
    ],
    kerfMm: 3,
    trimMm: 0,
    parts: [{ id: 'a', lengthMm: 600, count: 3 }],
  }

  it('finds that two pieces fill the long board to its end', () => {
    expect(leastLumberPrice(job)).toBe(8)
    expect(leastLumberPrice({ ...job, trimMm: 1 })).toBe(9)
    expect(leastLumberPrice({ ...job, kerfMm: 3.1 })).toBe(9)
  })

  it('buys no more than there is', () => {
    const [short, long] = job.stocks
    if (short === undefined || long === undefined) throw new Error('Two stocks are there.')
    expect(leastLumberPrice({ ...job, stocks: [{ ...short, price: 0, count: 2 }, long] })).toBe(5)
    expect(leastLumberPrice({ ...job, stocks: [{ ...short, count: 2 }] })).toBe(Infinity)
  })
})

describe('leastSheetPrice', () => {
  const part = { id: 'a', lengthMm: 300, widthMm: 196, mayTurn: true }
  const job: SheetJob = {
    stocks: [{ id: 'ply', lengthMm: 500, widthMm: 500, price: 7 }],
    kerfMm: 4,
    trimMm: 0,
    stages: 'any',
    parts: [{ ...part, count: 4 }],
  }

  it('finds that four pieces would lie on one sheet as a pinwheel only', () => {
    expect(leastSheetPrice(job)).toBe(14)
    expect(leastSheetPrice({ ...job, parts: [{ ...part, count: 3 }] })).toBe(7)
  })

  it('keeps the kerf, the trim and the grain', () => {
    const pair = {
      ...job,
      parts: [{ id: 'a', lengthMm: 248, widthMm: 500, mayTurn: false, count: 2 }],
    }
    expect(leastSheetPrice(pair)).toBe(7)
    expect(leastSheetPrice({ ...pair, kerfMm: 5 })).toBe(14)
    expect(leastSheetPrice({ ...pair, trimMm: 1 })).toBe(Infinity)
    const wide = { ...pair, stocks: [{ id: 'ply', lengthMm: 500, widthMm: 501, price: 7 }] }
    const turned = {
      ...wide,
      parts: wide.parts.map((p) => ({ ...p, lengthMm: 500, widthMm: 249 })),
    }
    expect(leastSheetPrice(turned)).toBe(14)
    expect(
      leastSheetPrice({ ...turned, parts: turned.parts.map((p) => ({ ...p, mayTurn: true })) }),
    ).toBe(14)
  })
})
