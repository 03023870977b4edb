import { describe, expect, it } from 'vitest'
import { maximalPatterns } from '../../../../src/solvers/cutting/lumber/maximalPatterns.ts'
import { createSpace } from '../../../../src/solvers/cutting/lumber/packingSpace.ts'
import { recutPatterns } from '../../../../src/solvers/cutting/lumber/recutPatterns.ts'
import { searchPatterns } from '../../../../src/solvers/cutting/lumber/searchPatterns.ts'

describe('maximalPatterns', () => {
  it('lists all that hold the first kind and leave no room, least waste first', () => {
    const query = { weights: [5, 3, 2], demand: [2, 1, 2], cap: 10, mostWaste: 10 }
    const found = maximalPatterns(query, { left: 1000 })
    // 5+5, 5+3+2 (full), 5+2+2 (1 left).
    expect(found).toEqual([
      { counts: [2, 0, 0], waste: 0 },
      { counts: [1, 1, 1], waste: 0 },
      { counts: [1, 0, 2], waste: 1 },
    ])
    expect(maximalPatterns({ ...query, mostWaste: 0 }, { left: 1000 })).toHaveLength(2)
  })
})

const search = (
  weights: number[],
  caps: number[],
  task: { boards: number[]; demand: number[] },
) => {
  const steps = searchPatterns(createSpace(weights, caps), task, 10_000)
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
  }
}

describe('searchPatterns', () => {
  it('finds the only way', () => {
    // 6+4, 5+5 and 3+3+4 fill three boards of 10; longest-first alone would go wrong with 5+4.
    const answer = search([6, 5, 4, 3], [10], { boards: [3], demand: [1, 2, 2, 2] })
    expect(answer.kind).toBe('filled')
  })

  it('says that there is none though the lengths would add up', () => {
    // 7+7+6 = 20, but no two go on one board of 10.
    expect(search([7, 6], [10], { boards: [2], demand: [2, 1] }).kind).toBe('impossible')
  })

  it('does not say so when steps run out', () => {
    const steps = searchPatterns(createSpace([7, 6], [10]), { boards: [2], demand: [2, 1] }, 1)
    expect(steps.next().value).toEqual({ kind: 'unknown' })
  })
})

describe('recutPatterns', () => {
  it('cuts three patterns as two', () => {
    // Three boards: 4 of 5 and 2 of 3 in all. Twice 5+5 and once 3+3.
    const task = {
      weights: [5, 3],
      demand: [4, 2],
      groups: [
        { times: 2, cap: 10 },
        { times: 1, cap: 10 },
      ],
    }
    expect(recutPatterns(task, { left: 1000 })).toEqual([
      [2, 0],
      [0, 2],
    ])
  })

  it('gives exactly the demand or nothing', () => {
    const task = { weights: [5, 3], demand: [3, 0], groups: [{ times: 2, cap: 10 }] }
    expect(recutPatterns(task, { left: 1000 })).toBeUndefined()
    const even = { ...task, demand: [4, 0] }
    expect(recutPatterns(even, { left: 1000 })).toEqual([[2, 0]])
    expect(recutPatterns(even, { left: 0 })).toBeUndefined()
  })
})
