import { describe, expect, it } from 'vitest'
import type { LumberJob, LumberResult } from '../../../../src/solvers/cutting/lumber/lumberJob.ts'
import { solveLumber } from '../../../../src/solvers/cutting/lumber/solveLumber.ts'
import { drawFrom, workshopJob } from './randomJobs.ts'
import { distinctPatterns, longestOffcutMm, planned, solved } from './solved.ts'

const board = (lengthMm: number, price: number, count?: number) => ({
  id: `board-${lengthMm}`,
  lengthMm,
  price,
  ...(count === undefined ? {} : { count }),
})
const part = (lengthMm: number, count: number) => ({ id: `part-${lengthMm}`, lengthMm, count })
const job = (given: Partial<LumberJob>): LumberJob => ({
  stocks: [board(2400, 5)],
  kerfMm: 3,
  trimMm: 0,
  parts: [part(500, 4)],
  ...given,
})

describe('solveLumber', () => {
  it('lays pieces from the left end, a saw cut between them, longest first', () => {
    const answer = planned(
      job({ parts: [part(400, 1), part(900, 2)], stocks: [board(2400, 5)], trimMm: 20 }),
    )
    expect(answer.patterns).toEqual([
      {
        stock: 0,
        count: 1,
        pieces: [
          { part: 1, fromMm: 10, lengthMm: 900 },
          { part: 1, fromMm: 913, lengthMm: 900 },
          { part: 0, fromMm: 1816, lengthMm: 400 },
        ],
        // 2400 − 10 at the right end − 2219 behind the last saw cut.
        offcutMm: 171,
      },
    ])
    expect(answer).toMatchObject({ price: 5, bound: 5, proven: true, boards: 1 })
  })

  it('fills a board to its end: 4 × 597 mm and 3 cuts of 4 mm are 2400 mm', () => {
    const flush = job({ parts: [part(597, 4)], kerfMm: 4 })
    expect(planned(flush)).toMatchObject({ boards: 1, price: 5 })
    expect(planned(flush).patterns[0]?.offcutMm).toBe(0)
    expect(planned({ ...flush, stocks: [board(2399.9, 5)] }).boards).toBe(2)
  })

  it.each([
    // 10 × 100 mm fill a metre; with cuts of 10 mm nine do, and 8 × 110 + 100 = 980 mm.
    [0, 3],
    [10, 4],
  ])('plans 30 pieces of 100 mm from metres with a cut of %d mm: %d boards', (kerfMm, boards) => {
    const answer = planned(job({ stocks: [board(1000, 1)], parts: [part(100, 30)], kerfMm }))
    expect(answer).toMatchObject({ boards, proven: true })
  })

  it('uses what is on hand first and counts it', () => {
    // Two pieces on the two short boards that cost nothing, two on a bought one.
    const answer = planned(
      job({ stocks: [board(2400, 5), board(1200, 0, 2)], parts: [part(1100, 4)] }),
    )
    expect(answer).toMatchObject({ price: 5, proven: true, boards: 3 })
  })

  it('takes the fewest boards where all of them cost nothing', () => {
    // Four of 500 mm on 2400 mm: 3 boards for 11.
    const answer = planned(job({ stocks: [board(2400, 0)], parts: [part(500, 11)] }))
    expect(answer).toMatchObject({ price: 0, bound: 0, proven: true, boards: 3 })
  })

  it('takes fewer boards for the same money', () => {
    // 2 × 1000 + 2 × 700: one of 4000 mm at 8 or two of 2000 mm at 4.
    const answer = planned(
      job({ stocks: [board(2000, 4), board(4000, 8)], parts: [part(1000, 2), part(700, 2)] }),
    )
    expect(answer).toMatchObject({ price: 8, proven: true, boards: 1 })
  })

  it('leaves one long offcut rather than short ones', () => {
    // Six of 700 mm and two boards of 3000 mm: three on each leave 891 mm, four and two 1594 mm.
    const answer = planned(job({ stocks: [board(3000, 5)], parts: [part(700, 6)] }))
    expect(answer.boards).toBe(2)
    expect(longestOffcutMm(answer)).toBe(3000 - 2 * 703)
  })

  it('names parts of equal length by their own indices', () => {
    const parts = [
      { id: 'left', lengthMm: 500, count: 3 },
      { id: 'right', lengthMm: 500, count: 5 },
    ]
    const answer = planned(job({ parts }))
    const counts = [0, 0]
    for (const { pieces, count } of answer.patterns) {
      for (const piece of pieces) counts[piece.part] = (counts[piece.part] ?? 0) + count
    }
    expect(counts).toEqual([3, 5])
    expect(answer.boards).toBe(2)
  })

  it('plans nothing for nothing', () => {
    for (const parts of [[], [part(500, 0)]]) {
      expect(solved(job({ parts, stocks: [] }))).toMatchObject({
        kind: 'plan',
        patterns: [],
        price: 0,
        proven: true,
      })
    }
  })

  it.each<[string, Partial<LumberJob>, string]>([
    ['a price below 0', { stocks: [board(2400, -1)] }, 'price of 0 or more'],
    ['a price that is none', { stocks: [board(2400, Number.NaN)] }, 'price of 0 or more'],
    ['a board of no length', { stocks: [board(0, 1)] }, 'length of more than 0 mm'],
    ['half a board', { stocks: [board(2400, 1, 1.5)] }, 'whole number of boards'],
    ['a part of no length', { parts: [part(0, 1)] }, 'length of more than 0 mm'],
    ['a length below 0', { parts: [part(-5, 1)] }, 'length of more than 0 mm'],
    ['half a part', { parts: [part(500, 0.5)] }, 'whole number of pieces'],
    ['fewer parts than none', { parts: [part(500, -1)] }, 'whole number of pieces'],
    ['a saw cut below 0', { kerfMm: -3 }, 'saw cut must be 0 mm or wider'],
    ['a trim that is no number', { trimMm: Number.NaN }, 'trim'],
    ['more pieces than a workshop cuts', { parts: [part(500, 10_001)] }, 'Split the job'],
  ])('refuses %s and says what to do', (_, given, words) => {
    const result = solved(job(given))
    expect(result).toMatchObject({ kind: 'refused', reason: 'bad-input' })
    expect(result.kind === 'refused' && result.message).toContain(words)
  })

  it('refuses without a board', () => {
    for (const stocks of [[], [board(2400, 5, 0)], [board(15, 5)]]) {
      expect(solved(job({ stocks, trimMm: 20 }))).toMatchObject({ reason: 'no-stock', parts: [0] })
    }
  })

  it('names all parts that no board takes, with their lengths', () => {
    const parts = [part(2400, 1), part(500, 1), part(3000.5, 2)]
    const result = solved(job({ parts, trimMm: 10, stocks: [board(2400, 5), board(4000, 9, 0)] }))
    expect(result).toMatchObject({ reason: 'too-long', parts: [0, 2] })
    expect(result.kind === 'refused' && result.message).toContain('part-3000.5 (3000.5 mm)')
    expect(result.kind === 'refused' && result.message).toContain('2390 mm')
  })

  it('refuses what counted boards cannot hold, and plans what they just hold', () => {
    // 1500 mm twice do not fit 2400 mm.
    const counted = (count: number) =>
      job({ stocks: [board(2400, 5, count)], parts: [part(1500, 3)] })
    expect(solved(counted(2))).toMatchObject({ reason: 'not-enough', parts: [0] })
    expect(planned(counted(3)).boards).toBe(3)
  })

  it('plans and proves lengths in no common unit', () => {
    const draw = drawFrom(7)
    const parts = Array.from({ length: 8 }, () => part(300 + draw(0, 1e6) / 1234.567, draw(1, 4)))
    const answer = planned(job({ parts, stocks: [board(2438.4, 7), board(3048, 9.5)] }))
    expect(answer.bound).toBeLessThanOrEqual(answer.price)
    expect(answer.proven).toBe(true)
  })

  it('plans a piece that fills the longest board, in whatever unit', () => {
    const lengthMm = 2400 - 1 / 3
    const parts = [part(lengthMm, 2), part(500 + 1 / 7, 3)]
    expect(planned(job({ stocks: [board(lengthMm, 5)], parts })).boards).toBe(3)
  })

  it('says the same each time', () => {
    const twice = [1, 2].map(() => solved(workshopJob(11, { pieces: 80, kinds: 14, stocks: 4 })))
    expect(twice[0]).toEqual(twice[1])
  })

  it('has a plan at once, and each answer is no worse than the one before', () => {
    const answers: LumberResult[] = []
    const steps = solveLumber(workshopJob(3, { pieces: 400, kinds: 50, stocks: 5 }))
    for (let step = 0; step < 60; step++) {
      const { value } = steps.next()
      if (value !== undefined) answers.push(value)
      if (step === 0) expect(value?.kind).toBe('plan')
    }
    const plans = answers.filter((answer) => answer.kind === 'plan')
    plans.forEach((answer, at) => {
      const before = plans[at - 1]
      if (before === undefined) return
      expect(answer.price).toBeLessThanOrEqual(before.price)
      expect(answer.bound).toBeGreaterThanOrEqual(before.bound)
      expect(answer.price).toBeLessThanOrEqual(answer.plainPrice)
    })
    expect(plans.length).toBeGreaterThan(1)
  })

  it('proves nearly all workshop jobs, and needs fewer patterns in the end', () => {
    let [proven, before, after] = [0, 0, 0]
    const jobs = 12
    for (let seed = 1; seed <= jobs; seed++) {
      let first: number | undefined
      let last: LumberResult | undefined
      for (const result of withEnd(workshopJob(seed, { pieces: 80, kinds: 14, stocks: 3 }))) {
        last = result
        if (result.kind !== 'plan' || !result.proven) continue
        first ??= distinctPatterns(result)
      }
      if (last?.kind !== 'plan' || first === undefined) continue
      proven++
      before += first
      after += distinctPatterns(last)
    }
    expect(proven).toBeGreaterThanOrEqual(jobs - 1)
    expect(after).toBeLessThan(before)
  })
})

/** All answers, the last word included. */
function* withEnd(given: LumberJob): Generator<LumberResult, void> {
  const steps = solveLumber(given)
  for (;;) {
    const step = steps.next()
    if (step.value !== undefined) yield step.value
    if (step.done === true) return
  }
}
