import { describe, expect, it } from 'vitest'
import {
  describePrice,
  describeResult,
  PROVEN,
  savedByPlanning,
  sumPlan,
} from '../../../src/panels/workshop/planWords.ts'
import type { LumberAnswer, LumberRefusal } from '../../../src/solvers/cutting/lumber/lumberJob.ts'

const FINAL = { isFinal: true, currency: '' }

const plan = (change: Partial<LumberAnswer>): LumberAnswer => ({
  kind: 'plan',
  patterns: [],
  price: 100,
  bound: 100,
  proven: true,
  certificate: undefined,
  plainPrice: 110,
  boards: 4,
  ...change,
})

const REFUSED: LumberRefusal = {
  kind: 'refused',
  reason: 'too-long',
  parts: [0],
  message: 'No board is so long.',
}

describe('describePrice', () => {
  it('says proven only when it is', () => {
    const proven = describePrice({ price: 100, bound: 100, isProven: true }, FINAL)
    expect(proven).toEqual({ verdict: 'proven', text: PROVEN })
    const unproven = describePrice({ price: 100, bound: 100, isProven: false }, FINAL)
    expect(unproven.verdict).toBe('gap')
    expect(unproven.text).toContain('not proven')
  })

  it('gives the gap in money and percent of the price', () => {
    // 290.909 - 287.709 is 3.20, and 3.20 / 290.909 is 1.1 %.
    const words = describePrice({ price: 290.909, bound: 287.709, isProven: false }, FINAL)
    expect(words.text).toBe('At most 3.20 (1.1 %) above the cheapest possible')
  })

  it('says that it still looks while it does, and never less than a proof once it has one', () => {
    const looking = { isFinal: false, currency: '' }
    const words = describePrice({ price: 100, bound: 90, isProven: false }, looking)
    expect(words.verdict).toBe('looking')
    expect(words.text).toMatch(/^Still looking for better\. So far: at most 10\.00 \(10 %\)/)
    expect(describePrice({ price: 100, bound: 100, isProven: true }, looking).text).toBe(PROVEN)
  })

  it('does not divide by a price of nothing', () => {
    const words = describePrice({ price: 0, bound: 0, isProven: false }, FINAL)
    expect(words.text).not.toContain('NaN')
  })
})

describe('describeResult', () => {
  it('hands on why a group has no plan', () => {
    expect(describeResult(REFUSED, FINAL)).toEqual({
      verdict: 'refused',
      text: 'No board is so long.',
    })
  })
})

describe('sumPlan', () => {
  it('adds up the groups that have a plan', () => {
    const sum = sumPlan([plan({}), REFUSED, plan({ price: 50, bound: 40, proven: false })])
    expect(sum).toEqual({ price: 150, bound: 140, isProven: false })
  })

  it('is proven when every group with a plan is', () => {
    expect(sumPlan([plan({}), plan({})])?.isProven).toBe(true)
  })

  it('is nothing without any plan, which is no proof', () => {
    expect(sumPlan([])).toBeUndefined()
    expect(sumPlan([REFUSED])).toBeUndefined()
  })
})

describe('savedByPlanning', () => {
  it('counts what plain cutting would cost more', () => {
    expect(savedByPlanning([plan({}), plan({ plainPrice: 103 }), REFUSED])).toBeCloseTo(13, 9)
  })

  it('keeps silent about nothing', () => {
    expect(savedByPlanning([plan({ plainPrice: 100 })])).toBeUndefined()
  })
})
