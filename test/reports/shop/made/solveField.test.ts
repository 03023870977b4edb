import { describe, expect, it, vi } from 'vitest'
import { solveField } from '../../../../src/reports/shop/made/solveField.ts'

const RANGE = { min: 0, max: 20 }

describe('solveField', () => {
  it('finds where a sum of lengths reaches the goal', () => {
    // 2x + 5 = 25 at x = 10.
    expect(solveField((x) => 2 * x + 5, { value: 4, size: 13 }, 25, RANGE)).toBeCloseTo(10, 6)
  })

  it('follows a kink to the line beyond it', () => {
    // The larger of 12 and x + 5; 15 at x = 10.
    const measure = (x: number) => Math.max(12, x + 5)
    expect(solveField(measure, { value: 7, size: 12 }, 15, RANGE)).toBeCloseTo(10, 6)
  })

  it('steps down where up can not be built', () => {
    const measure = (x: number) => (x > 8 ? undefined : x)
    expect(solveField(measure, { value: 8, size: 8 }, 3, RANGE)).toBeCloseTo(3, 6)
  })

  it('takes the very end of the range but nothing beyond', () => {
    expect(solveField((x) => x, { value: 5, size: 5 }, 20, RANGE)).toBe(20)
    expect(solveField((x) => x, { value: 5, size: 5 }, 20.1, RANGE)).toBeUndefined()
  })

  it('gives up after one look at a field that does not matter', () => {
    const measure = vi.fn(() => 7)
    expect(solveField(measure, { value: 5, size: 7 }, 9, RANGE)).toBeUndefined()
    expect(measure).toHaveBeenCalledTimes(1)
  })

  it('gives up where nothing can be built', () => {
    expect(solveField(() => undefined, { value: 5, size: 7 }, 9, RANGE)).toBeUndefined()
  })

  it('gives up at a jump', () => {
    const measure = (x: number) => (x < 5.5 ? 3 : 9)
    expect(solveField(measure, { value: 5, size: 3 }, 6, RANGE)).toBeUndefined()
  })
})
