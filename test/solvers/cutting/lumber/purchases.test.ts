import { describe, expect, it } from 'vitest'
import type { DualCut } from '../../../../src/solvers/cutting/lumber/dualCut.ts'
import { isCutOff, makeCut } from '../../../../src/solvers/cutting/lumber/dualCut.ts'
import { listPurchases } from '../../../../src/solvers/cutting/lumber/listPurchases.ts'
import { createSpace } from '../../../../src/solvers/cutting/lumber/packingSpace.ts'
import { trimCuts } from '../../../../src/solvers/cutting/lumber/trimCuts.ts'
import { drawFrom } from './randomJobs.ts'

const last = <Answer>(steps: Generator<undefined, Answer>): Answer => {
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
  }
}

/** Every number of every board. */
const allOf = (limits: readonly number[]): number[][] =>
  limits.reduce<number[][]>(
    (found, limit) =>
      found.flatMap((boards) =>
        Array.from({ length: limit + 1 }, (_, count) => [...boards, count]),
      ),
    [[]],
  )

const priceOf = (costs: readonly number[], boards: readonly number[]): number =>
  boards.reduce((sum, count, stock) => sum + count * (costs[stock] ?? 0), 0)

const randomCuts = (draw: (from: number, to: number) => number): DualCut[] =>
  Array.from({ length: draw(0, 3) }, () => ({
    values: [],
    worth: Array.from({ length: 3 }, () => draw(0, 9)),
    need: draw(0, 40),
  }))

describe('listPurchases', () => {
  it('lists what no cut forbids, and nothing else, cheapest first', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const draw = drawFrom(seed)
      const costs = [draw(0, 9), draw(1, 9), draw(1, 9)]
      const limits = [draw(0, 4), draw(0, 4), draw(0, 4)]
      const [cuts, from] = [randomCuts(draw), draw(0, 20)]
      const query = { costs, limits, cuts, from, below: from + draw(1, 30), mostVisits: 1e5 }
      const wanted = allOf(limits).filter((boards) => {
        const price = priceOf(costs, boards)
        const isFull = costs.every((cost, stock) => cost > 0 || boards[stock] === limits[stock])
        const isOpen = !cuts.some((cut) => isCutOff(cut, boards))
        return isFull && isOpen && price >= from && price < query.below
      })
      const { purchases: listed, isComplete } = last(listPurchases(query))
      expect(isComplete).toBe(true)
      expect(listed.map(({ boards }) => boards.join()).toSorted()).toEqual(
        wanted.map((boards) => boards.join()).toSorted(),
      )
      expect(listed.map(({ cost }) => cost)).toEqual(
        listed.map(({ cost }) => cost).toSorted((a, b) => a - b),
      )
    }
  })

  it('counts boards that cost nothing where the number of boards matters', () => {
    const query = { costs: [0, 4], limits: [2, 2], cuts: [], from: 4, below: 5, mostVisits: 100 }
    const listed = last(listPurchases({ ...query, boardsBelow: 3 })).purchases
    expect(listed.map(({ boards }) => boards)).toEqual([
      [0, 1],
      [1, 1],
    ])
  })

  it('says that it has not all of them when there are too many', () => {
    const query = { costs: [1, 1], limits: [99, 99], cuts: [], from: 0, below: 50, mostVisits: 100 }
    expect(last(listPurchases(query)).isComplete).toBe(false)
  })
})

// Three pieces of 6 and two of 4 on boards of 10 at 5 and of 7 at 3.
const problem = {
  weights: [6, 4],
  lowWeights: [6, 4],
  demand: [3, 2],
  members: [[0], [1]],
  caps: [10, 7],
  costs: [5, 3],
  limits: [5, 5],
  stocks: [0, 1],
  unitsPerMoney: 100,
  costStep: 1,
  unitMm: 1,
  kerf: 0,
}

describe('makeCut', () => {
  it('is worth what the knapsack can put on each board', () => {
    const cut = makeCut(createSpace(problem.weights, problem.caps), problem.demand, [3, 2])
    // 6 + 4 on the long board; on the short one only the 6.
    expect(cut).toEqual({ values: [3, 2], worth: [5, 3], need: 13 })
    expect(isCutOff(cut, [2, 1])).toBe(false)
    expect(isCutOff(cut, [2, 0])).toBe(true)
  })
})

describe('trimCuts', () => {
  const useless: DualCut = { values: [0, 0], worth: [0, 0], need: 0 }
  const useful: DualCut = { values: [3, 2], worth: [5, 3], need: 13 }

  it('keeps what is needed to forbid all that is cheaper', () => {
    // Each unit of worth costs 1 at least: nothing below 13 will do.
    expect(last(trimCuts(problem, [useless, useful, useless], 13))).toEqual([useful])
  })

  it('says so when something cheaper is not forbidden', () => {
    // Two long boards and a short one cost 13.
    expect(last(trimCuts(problem, [useful, useless], 14))).toBeUndefined()
  })

  it('needs nothing when nothing can be cheaper', () => {
    expect(last(trimCuts(problem, [], 0))).toEqual([])
  })
})
