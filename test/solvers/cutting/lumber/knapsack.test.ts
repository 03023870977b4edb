import { describe, expect, it } from 'vitest'
import { createKnapsack } from '../../../../src/solvers/cutting/lumber/knapsack.ts'
import { drawFrom } from './randomJobs.ts'

/** By trying every number of every piece. */
const bestByHand = (
  weights: readonly number[],
  values: readonly number[],
  { limits, room, kind = 0 }: { limits: readonly number[]; room: number; kind?: number },
): number => {
  if (kind === weights.length) return 0
  let best = 0
  for (let count = 0; count <= (limits[kind] ?? 0); count++) {
    const left = room - count * (weights[kind] ?? 0)
    if (left < 0) break
    const rest = bestByHand(weights, values, { limits, room: left, kind: kind + 1 })
    best = Math.max(best, count * (values[kind] ?? 0) + rest)
  }
  return best
}

describe('createKnapsack', () => {
  it('finds the best for every capacity, and pieces that make it up', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const draw = drawFrom(seed)
      const make = (from: number, to: number) => Array.from({ length: 4 }, () => draw(from, to))
      const [weights, values, limits] = [make(1, 9), make(0, 12), make(0, 4)]
      const knapsack = createKnapsack(weights, 25)
      knapsack.solve(values, limits)
      for (let room = 0; room <= 25; room++) {
        expect(knapsack.best[room]).toBe(bestByHand(weights, values, { limits, room }))
        const counts = knapsack.trace(room)
        const sum = (by: readonly number[]) =>
          counts.reduce((total, count, kind) => total + count * (by[kind] ?? 0), 0)
        expect(sum(values)).toBe(knapsack.best[room])
        expect(sum(weights)).toBeLessThanOrEqual(room)
        counts.forEach((count, kind) => {
          expect(count).toBeLessThanOrEqual(limits[kind] ?? 0)
        })
      }
    }
  })

  it('takes pieces of no weight for nothing', () => {
    const knapsack = createKnapsack([0, 3], 4)
    knapsack.solve([2, 5], [3, 2])
    expect(knapsack.best[0]).toBe(6)
    expect(knapsack.best[4]).toBe(11)
  })

  it('starts anew each time', () => {
    const knapsack = createKnapsack([2, 3], 6)
    knapsack.solve([5, 7], [9, 9])
    knapsack.solve([1, 0], [1, 9])
    expect(knapsack.best[6]).toBe(1)
    expect(knapsack.trace(6)).toEqual([1, 0])
  })
})
