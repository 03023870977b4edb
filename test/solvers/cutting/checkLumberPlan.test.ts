import { describe, expect, it } from 'vitest'
import type {
  BarPattern,
  LumberAnswer,
  LumberJob,
} from '../../../src/solvers/cutting/lumber/lumberJob.ts'
import { checkLumberPlan } from './checkLumberPlan.ts'

/** Four pieces of 597 with three cuts of 4 end flush at 2400; two others leave 1200 - 904 = 296. */
const JOB: LumberJob = {
  stocks: [
    { id: 'long', lengthMm: 2400, price: 7.5 },
    { id: 'short', lengthMm: 1200, price: 4.2, count: 2 },
  ],
  kerfMm: 4,
  trimMm: 0,
  parts: [
    { id: 'a', lengthMm: 597, count: 8 },
    { id: 'b', lengthMm: 500, count: 1 },
    { id: 'c', lengthMm: 396, count: 1 },
  ],
}

const FLUSH: BarPattern = {
  stock: 0,
  count: 2,
  pieces: [0, 601, 1202, 1803].map((fromMm) => ({ part: 0, fromMm, lengthMm: 597 })),
  offcutMm: 0,
}

const SHORT: BarPattern = {
  stock: 1,
  count: 1,
  pieces: [
    { part: 1, fromMm: 0, lengthMm: 500 },
    { part: 2, fromMm: 504, lengthMm: 396 },
  ],
  offcutMm: 296,
}

const PLAN: LumberAnswer = {
  kind: 'plan',
  patterns: [FLUSH, SHORT],
  price: 19.2,
  bound: 19.2,
  proven: true,
  certificate: { priceUnits: 1920, duals: [] },
  plainPrice: 22.5,
  boards: 3,
}

const withFlush = (change: Partial<BarPattern>): LumberAnswer => ({
  ...PLAN,
  patterns: [{ ...FLUSH, ...change }, SHORT],
})

const withShort = (change: Partial<BarPattern>): LumberAnswer => ({
  ...PLAN,
  patterns: [FLUSH, { ...SHORT, ...change }],
})

const [first, second] = SHORT.pieces
if (first === undefined || second === undefined) throw new Error('Two pieces are there.')

describe('checkLumberPlan', () => {
  it('accepts a plan that ends flush, where the last piece needs no cut behind it', () => {
    expect(checkLumberPlan(JOB, PLAN)).toEqual([])
  })

  it('accepts a last cut that eats what is left, when that is less than a kerf', () => {
    const job = {
      ...JOB,
      stocks: [{ id: 'long', lengthMm: 2403, price: 7.5 }, ...JOB.stocks.slice(1)],
    }
    expect(checkLumberPlan(job, PLAN)).toEqual([])
  })

  it('accepts half of the trim at either end', () => {
    const pieces = SHORT.pieces.map((piece) => ({ ...piece, fromMm: piece.fromMm + 5 }))
    const flush = FLUSH.pieces.map((piece) => ({ ...piece, fromMm: piece.fromMm + 5 }))
    const [long, short] = JOB.stocks
    if (long === undefined || short === undefined) throw new Error('Two stocks are there.')
    const job = { ...JOB, trimMm: 10, stocks: [{ ...long, lengthMm: 2410 }, short] }
    const patterns = [
      { ...FLUSH, pieces: flush },
      { ...SHORT, pieces, offcutMm: 286 },
    ]
    expect(checkLumberPlan(job, { ...PLAN, patterns })).toEqual([])
    expect(checkLumberPlan(job, PLAN).join()).toContain('begins before 5')
  })

  it.each<[string, LumberAnswer, string]>([
    [
      'a piece shifted by a kerf less 1',
      withShort({ pieces: [first, { ...second, fromMm: 501 }], offcutMm: 299 }),
      'begins before 504',
    ],
    [
      'pieces on top of one another',
      withShort({ pieces: [first, { ...second, fromMm: 0 }], offcutMm: 800 }),
      'begins before 504',
    ],
    [
      'a piece beyond the end',
      withShort({ pieces: [first, { ...second, fromMm: 805 }], offcutMm: 0 }),
      '1201 is beyond 1200',
    ],
    [
      'a flush board 1 mm too full',
      withFlush({ pieces: FLUSH.pieces.map((p, i) => ({ ...p, fromMm: p.fromMm + (i && 1) })) }),
      '2401 is beyond 2400',
    ],
    [
      'a piece at no place',
      withShort({ pieces: [first, { ...second, fromMm: NaN }] }),
      'part 2 at',
    ],
    [
      'a piece of another length',
      withShort({ pieces: [first, { ...second, lengthMm: 395 }], offcutMm: 297 }),
      'part 2 is 395, not 396',
    ],
    ['a copy dropped', withShort({ pieces: [first], offcutMm: 696 }), 'part 2 is cut 0 times'],
    [
      'a copy too many',
      withShort({ pieces: [...SHORT.pieces, { ...second, fromMm: 904, lengthMm: 396 }] }),
      'part 2 is cut 2 times',
    ],
    ['a part that is not there', withShort({ pieces: [{ ...first, part: 3 }] }), 'no part 3'],
    ['a stock that is not there', withShort({ stock: 2 }), 'no stock 2'],
    ['half a board', withShort({ count: 0.5 }), '0.5 boards'],
    ['a board for nothing', withShort({ pieces: [], offcutMm: 1196 }), 'without a piece'],
    ['an offcut that forgets the cut', withShort({ offcutMm: 300 }), 'offcut 300'],
    ['short pieces first', withShort({ pieces: [second, first] }), 'longest not first'],
    ['more boards than there are', withShort({ count: 3 }), '3 of stock 1, but there are 2'],
    ['a wrong price', { ...PLAN, price: 19.1, bound: 19.1 }, 'price 19.1, not 19.2'],
    ['a price that is no number', { ...PLAN, price: NaN }, 'price NaN'],
    ['a wrong number of boards', { ...PLAN, boards: 2 }, '2 boards, not 3'],
    ['a bound above the price', { ...PLAN, bound: 19.3 }, 'bound 19.3'],
    ['a proof with a gap', { ...PLAN, bound: 19 }, 'proven, but bound 19'],
    ['a proof of nothing', { ...PLAN, certificate: undefined }, 'without a certificate'],
  ])('rejects %s', (_, answer, fault) => {
    expect(checkLumberPlan(JOB, answer).join('; ')).toContain(fault)
  })

  it('rejects plain cutting that is cheaper, where the boards are not counted', () => {
    const job = { ...JOB, stocks: JOB.stocks.map(({ count: _, ...stock }) => stock) }
    expect(checkLumberPlan(job, PLAN)).toEqual([])
    const faults = checkLumberPlan(job, { ...PLAN, plainPrice: 19 })
    expect(faults).toEqual(['plain cutting costs 19'])
  })
})
