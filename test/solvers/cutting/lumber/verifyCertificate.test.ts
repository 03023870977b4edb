import { describe, expect, it } from 'vitest'
import type {
  LumberCertificate,
  LumberJob,
} from '../../../../src/solvers/cutting/lumber/lumberJob.ts'
import { verifyCertificate } from '../../../../src/solvers/cutting/lumber/verifyCertificate.ts'
import { bruteForce } from './bruteForce.ts'
import { drawFrom, smallJob } from './randomJobs.ts'
import { planned } from './solved.ts'

// Three pieces of 600 on boards of 1000 at 5.00: one on each, so 15.00, by the weighting "1 each".
const three: LumberJob = {
  stocks: [{ id: 'b', lengthMm: 1000, price: 5 }],
  kerfMm: 3,
  trimMm: 0,
  parts: [{ id: 'a', lengthMm: 600, count: 3 }],
}
const good: LumberCertificate = { priceUnits: 1500, duals: [[1]] }

describe('verifyCertificate', () => {
  it('follows a weighting that shows the least price', () => {
    expect(verifyCertificate(three, 15, good)).toBe(true)
  })

  it('follows no weighting to a price above the least', () => {
    for (const dual of [0, 1, 2, 1000]) {
      const certificate = { priceUnits: 1501, duals: [[dual]] }
      expect(verifyCertificate(three, 15.01, certificate)).toBe(false)
    }
  })

  it('wants price and certificate to be of one mind', () => {
    expect(verifyCertificate(three, 15.01, good)).toBe(false)
    expect(verifyCertificate(three, 14.99, good)).toBe(false)
    expect(verifyCertificate(three, Number.NaN, good)).toBe(false)
    expect(verifyCertificate(three, Infinity, { ...good, priceUnits: Infinity })).toBe(false)
  })

  it('needs no weighting where nothing is cheaper than nothing', () => {
    const free = { ...three, stocks: [{ id: 'b', lengthMm: 1000, price: 0 }] }
    expect(verifyCertificate(free, 0, { priceUnits: 0, duals: [] })).toBe(true)
  })

  it('needs one as soon as there is a price', () => {
    expect(verifyCertificate(three, 15, { ...good, duals: [] })).toBe(false)
    expect(verifyCertificate(three, 15, { ...good, duals: [[0]] })).toBe(false)
  })

  it.each([
    ['a negative weight', [[-1]]],
    ['a weight that is no number', [[Number.NaN]]],
    ['a weight without end', [[Infinity]]],
    ['a fraction', [[0.5]]],
    ['a weight beyond exact whole numbers', [[2 ** 53]]],
    ['weights whose sum is beyond exact whole numbers', [[2 ** 52]]],
    ['too many weights', [[1, 1]]],
    ['too few weights', [[]]],
    ['a second vector that makes no sense', [[1], [Number.NaN]]],
  ])('turns down %s', (_, duals) => {
    expect(verifyCertificate(three, 15, { priceUnits: 1500, duals })).toBe(false)
  })

  it.each([-1500, 1500.5, Number.NaN])('turns down %d price units', (priceUnits) => {
    expect(verifyCertificate(three, 15, { priceUnits, duals: [[1]] })).toBe(false)
  })

  it('turns down jobs that make no sense', () => {
    const [stock] = three.stocks
    if (stock === undefined) throw new Error('no stock')
    expect(verifyCertificate({ ...three, kerfMm: -1 }, 15, good)).toBe(false)
    expect(verifyCertificate({ ...three, trimMm: Number.NaN }, 15, good)).toBe(false)
    const negative = { ...three, stocks: [{ ...stock, price: -5 }] }
    expect(verifyCertificate(negative, 15, good)).toBe(false)
    const half = { ...three, parts: [{ id: 'a', lengthMm: 600, count: 2.5 }] }
    expect(verifyCertificate(half, 15, good)).toBe(false)
  })

  it('counts a saw cut between pieces but not behind the last', () => {
    // 4 × 597 + 3 × 4 = 2400: one board holds all four.
    const flush: LumberJob = {
      stocks: [{ id: 'b', lengthMm: 2400, price: 1 }],
      kerfMm: 4,
      trimMm: 0,
      parts: [{ id: 'a', lengthMm: 597, count: 4 }],
    }
    expect(verifyCertificate(flush, 2, { priceUnits: 200, duals: [[1]] })).toBe(false)
    const trimmed = { ...flush, trimMm: 1 }
    expect(verifyCertificate(trimmed, 2, { priceUnits: 200, duals: [[1]] })).toBe(true)
  })

  it('knows how many boards there are', () => {
    // Two cheap boards at 1.00 and others at 5.00: three pieces cost 7.00.
    const counted: LumberJob = {
      ...three,
      stocks: [
        { id: 'b', lengthMm: 1000, price: 5 },
        { id: 'c', lengthMm: 700, price: 1, count: 2 },
      ],
    }
    expect(verifyCertificate(counted, 7, { priceUnits: 700, duals: [[1]] })).toBe(true)
    const all = {
      ...counted,
      stocks: counted.stocks.map(({ id, lengthMm, price }) => ({ id, lengthMm, price })),
    }
    expect(verifyCertificate(all, 7, { priceUnits: 700, duals: [[1]] })).toBe(false)
  })

  it('multiplies large numbers exactly', () => {
    // 3 × 10^14 worth of parts: the products with prices leave the range of exact floating point.
    const weight = 10 ** 14
    expect(verifyCertificate(three, 15, { priceUnits: 1500, duals: [[weight]] })).toBe(true)
    expect(verifyCertificate(three, 15.01, { priceUnits: 1501, duals: [[weight]] })).toBe(false)
  })

  it('never confirms more than the least price, whatever is done to a certificate', () => {
    let [tried, held] = [0, 0]
    for (let seed = 1; seed <= 80; seed++) {
      const job = smallJob(seed)
      const best = bruteForce(job)
      if (best === undefined || best.price === 0) continue
      const { certificate, price } = planned(job)
      if (certificate === undefined) throw new Error(`seed ${seed}: no certificate`)
      expect(verifyCertificate(job, price, certificate)).toBe(true)
      const draw = drawFrom(seed)
      for (let change = 0; change < 20; change++) {
        const changed = changeCertificate(certificate, draw)
        const claimed = changed.priceUnits / 100
        tried++
        if (!verifyCertificate(job, claimed, changed)) continue
        held++
        expect(claimed, `seed ${seed}`).toBeLessThanOrEqual(best.price)
      }
    }
    expect(tried).toBeGreaterThan(500)
    // Some changes do no harm, so that the check above is not idle.
    expect(held).toBeGreaterThan(50)
  })
})

/** Another price or other weights. */
const changeCertificate = (
  { priceUnits, duals }: LumberCertificate,
  draw: (from: number, to: number) => number,
): LumberCertificate => ({
  priceUnits: priceUnits + draw(-2, 2),
  duals: duals.map((dual) =>
    dual.map((weight) => {
      const choice = draw(0, 5)
      if (choice === 0) return Math.max(0, weight + draw(-2, 2))
      return choice === 1 ? Math.floor((weight * draw(50, 150)) / 100) : weight
    }),
  ),
})
