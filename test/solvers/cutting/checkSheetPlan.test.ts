import { describe, expect, it } from 'vitest'
import type {
  CutNode,
  SheetAnswer,
  SheetJob,
  SheetLayout,
  SheetPiece,
  SheetRect,
} from '../../../src/solvers/cutting/sheets/sheetJob.ts'
import { checkPlaces } from './checkPlaces.ts'
import { checkSheetPlan } from './checkSheetPlan.ts'

const rect = (xMm: number, yMm: number, lengthMm: number, widthMm: number): SheetRect => ({
  xMm,
  yMm,
  lengthMm,
  widthMm,
})

const offcut = (...place: Parameters<typeof rect>): CutNode => ({
  kind: 'offcut',
  rect: rect(...place),
})

const place = (part: number, at: SheetRect, turned = false): SheetPiece => ({ part, ...at, turned })

const leaf = (piece: SheetPiece): CutNode => {
  const { part: _, turned: __, ...at } = piece
  return { kind: 'part', rect: at, piece }
}

interface Where {
  readonly rect: SheetRect
  readonly along: 'length' | 'width'
  readonly atMm: number
}

const cut = (where: Where, first: CutNode, second: CutNode, isCarry = false): CutNode => ({
  kind: 'cut',
  ...where,
  isCarry,
  first,
  second,
})

/** The first two end flush with the sheet: 498 + 4 + 498 = 1000. The last may be turned. */
const JOB: SheetJob = {
  stocks: [{ id: 'ply', lengthMm: 1000, widthMm: 600, price: 12.5, count: 1 }],
  kerfMm: 4,
  trimMm: 0,
  stages: 2,
  parts: [
    { id: 'a', lengthMm: 498, widthMm: 300, count: 2, mayTurn: false },
    { id: 'b', lengthMm: 296, widthMm: 496, count: 1, mayTurn: true },
    { id: 'c', lengthMm: 200, widthMm: 100, count: 1, mayTurn: false },
  ],
}

const LEFT = place(0, rect(0, 0, 498, 300))
const RIGHT = place(0, rect(502, 0, 498, 300))
const TURNED = place(1, rect(0, 304, 496, 296), true)
const SMALL = place(2, rect(500, 304, 200, 100))
const PIECES = [LEFT, RIGHT, TURNED, SMALL]

/** Two strips; the upper one holds a piece that a last cut trims to its width. */
const lower = (left = LEFT, right = RIGHT): CutNode =>
  cut({ rect: rect(0, 0, 1000, 300), along: 'width', atMm: 498 }, leaf(left), leaf(right))

const trimmed = (small = leaf(SMALL)): CutNode =>
  cut(
    { rect: rect(500, 304, 200, 296), along: 'length', atMm: 404 },
    small,
    offcut(500, 408, 200, 192),
  )

const upper = (turned = TURNED, small = trimmed()): CutNode =>
  cut(
    { rect: rect(0, 304, 1000, 296), along: 'width', atMm: 496 },
    leaf(turned),
    cut(
      { rect: rect(500, 304, 500, 296), along: 'width', atMm: 700 },
      small,
      offcut(704, 304, 296, 296),
    ),
  )

const root = (first = lower(), second = upper(), isCarry = false): CutNode =>
  cut({ rect: rect(0, 0, 1000, 600), along: 'length', atMm: 300 }, first, second, isCarry)

const LAYOUT: SheetLayout = {
  stock: 0,
  count: 1,
  root: root(),
  pieces: PIECES,
  offcuts: [rect(704, 304, 296, 296), rect(500, 408, 200, 192)],
  stages: 2,
}

const PLAN: SheetAnswer = {
  kind: 'plan',
  layouts: [LAYOUT],
  price: 12.5,
  bound: 12.5,
  proven: true,
  boundBy: 'area',
  sheets: 1,
}

const withLayout = (change: Partial<SheetLayout>): SheetAnswer => ({
  ...PLAN,
  layouts: [{ ...LAYOUT, ...change }],
})

/** A third direction before the last piece: a strip on the strip. */
const DEEP = cut(
  { rect: rect(500, 304, 200, 296), along: 'length', atMm: 404 },
  leaf(SMALL),
  cut(
    { rect: rect(500, 408, 200, 192), along: 'length', atMm: 500 },
    offcut(500, 408, 200, 92),
    offcut(500, 504, 200, 96),
  ),
)

describe('checkSheetPlan', () => {
  it('accepts pieces that end flush with the sheet, and one trimming cut beyond the stages', () => {
    expect(checkSheetPlan(JOB, PLAN)).toEqual([])
  })

  it('accepts a cut that eats the last of the sheet', () => {
    const [sheet] = JOB.stocks
    if (sheet === undefined) throw new Error('There is a sheet.')
    // 3 mm are left behind the last piece, less than the kerf.
    const stock = { ...sheet, lengthMm: 501, widthMm: 300 }
    const [part] = JOB.parts
    if (part === undefined) throw new Error('There is a part.')
    const job = { ...JOB, stocks: [stock], parts: [{ ...part, count: 1 }] }
    const eaten = cut(
      { rect: rect(0, 0, 501, 300), along: 'width', atMm: 498 },
      leaf(LEFT),
      offcut(501, 0, 0, 300),
    )
    const answer = withLayout({ root: eaten, pieces: [LEFT], offcuts: [], stages: 1 })
    expect(checkSheetPlan(job, answer)).toEqual([])
  })

  it.each<[string, SheetAnswer, string]>([
    [
      'a piece shifted by a kerf less 1',
      withLayout({
        root: root(lower(LEFT, { ...RIGHT, xMm: 499 })),
        pieces: [LEFT, { ...RIGHT, xMm: 499 }, TURNED, SMALL],
      }),
      'leave no room for the saw',
    ],
    [
      'a piece turned against the grain',
      withLayout({
        pieces: [LEFT, RIGHT, TURNED, place(2, rect(500, 304, 100, 200), true)],
      }),
      'part 2 may not turn',
    ],
    [
      'a piece turned in secret',
      withLayout({ pieces: [LEFT, RIGHT, TURNED, place(2, rect(500, 304, 100, 200))] }),
      'part 2 is 100 by 200, not 200 by 100',
    ],
    [
      'a piece that says it is turned and is not',
      withLayout({ pieces: [LEFT, RIGHT, { ...TURNED, turned: false }, SMALL] }),
      'part 1 is 496 by 296, not 296 by 496',
    ],
    [
      'a copy dropped from the list',
      withLayout({ pieces: PIECES.slice(1) }),
      'part 0 is cut 1 times, not 2',
    ],
    [
      'a copy dropped from the tree',
      withLayout({ root: root(offcut(0, 0, 1000, 300)) }),
      '2 pieces sawn',
    ],
    [
      'a copy too many',
      withLayout({ pieces: [...PIECES, place(2, rect(704, 304, 200, 100))] }),
      'part 2 is cut 2 times, not 1',
    ],
    [
      'a piece beyond the edge',
      withLayout({ pieces: [LEFT, { ...RIGHT, xMm: 503 }, TURNED, SMALL] }),
      'part 0 sticks out',
    ],
    [
      'a piece that is listed elsewhere than it is sawn',
      withLayout({ pieces: [LEFT, RIGHT, TURNED, { ...SMALL, xMm: 501 }] }),
      'part 2 is not listed where it is sawn',
    ],
    [
      'a cut that leaves no kerf',
      withLayout({ root: root(lower(), { ...upper(), rect: rect(0, 300, 1000, 300) }) }),
      '1000 by 300 at 0, 300 in the tree',
    ],
    [
      'a cut that does not go from edge to edge',
      withLayout({ root: root({ ...lower(), rect: rect(0, 0, 998, 300) }) }),
      '998 by 300 at 0, 0 in the tree',
    ],
    [
      'a cut beside its rectangle',
      withLayout({
        root: cut({ rect: rect(0, 0, 1000, 600), along: 'length', atMm: 600 }, lower(), upper()),
      }),
      'a cut at 600 misses',
    ],
    [
      'a leaf larger than its part',
      withLayout({ root: root(lower(), upper(TURNED, leaf(SMALL))) }),
      'in the hand',
    ],
    ['a stage too many', withLayout({ root: root(lower(), upper(TURNED, DEEP)) }), '3 stages of 2'],
    ['a wrong number of stages', withLayout({ stages: 1 }), 'said to have 1 stages'],
    [
      'offcuts the smallest first',
      withLayout({ offcuts: LAYOUT.offcuts.toReversed() }),
      'largest first',
    ],
    ['an offcut kept secret', withLayout({ offcuts: LAYOUT.offcuts.slice(1) }), 'not listed'],
    ['an offcut invented', withLayout({ offcuts: [rect(0, 0, 500, 500)] }), 'not sawn'],
    ['a stock that is not there', withLayout({ stock: 1 }), 'no stock 1'],
    ['more sheets than there are', withLayout({ count: 2 }), '2 of stock 0, but there are 1'],
    ['a sheet for nothing', withLayout({ pieces: [] }), 'without a piece'],
    [
      'a carry cut that nobody asked for',
      withLayout({ root: root(lower(), upper(), true) }),
      'nobody',
    ],
    ['a wrong price', { ...PLAN, price: 12, bound: 12 }, 'price 12, not 12.5'],
    ['a wrong number of sheets', { ...PLAN, sheets: 2 }, '2 sheets, not 1'],
    ['a bound above the price', { ...PLAN, bound: 13, proven: false }, 'bound 13'],
    ['a proof with a gap', { ...PLAN, bound: 12 }, 'proven true at 12 of 12.5'],
    ['a proof that is kept secret', { ...PLAN, proven: false }, 'proven false'],
  ])('rejects %s', (_, answer, fault) => {
    expect(checkSheetPlan(JOB, answer).join('; ')).toContain(fault)
  })

  it('rejects pieces in the trimmed edge', () => {
    expect(checkSheetPlan({ ...JOB, trimMm: 1 }, PLAN).join('; ')).toContain('sticks out')
  })

  it('rejects pieces too large to carry, and carry cuts that come late', () => {
    // What is carried begins anew, so the two strips have one stage each.
    const carried = withLayout({ root: root(lower(), upper(), true), stages: 1 })
    const carry = { lengthMm: 300, widthMm: 1000 }
    expect(checkSheetPlan({ ...JOB, carry }, carried)).toEqual([])
    const narrow = { ...JOB, carry: { ...carry, lengthMm: 299 } }
    expect(checkSheetPlan(narrow, carried).join('; ')).toContain('1000 by 300 is too large')
    expect(checkSheetPlan({ ...JOB, carry }, PLAN).join('; ')).toContain('1000 by 600 is too large')
    const late = withLayout({ root: root({ ...lower(), isCarry: true } as CutNode) })
    expect(checkSheetPlan(JOB, late).join('; ')).toContain('carry cut after other cuts')
  })
})

describe('checkPlaces', () => {
  const sheet = { sheet: rect(0, 0, 500, 500), kerfMm: 4, stages: Infinity }
  /** Four pieces round a hole: each cut from edge to edge would go through one of them. */
  const pinwheel = [
    place(0, rect(0, 0, 300, 196)),
    place(0, rect(304, 0, 196, 300)),
    place(0, rect(200, 304, 300, 196)),
    place(0, rect(0, 200, 196, 300)),
  ]

  it('rejects a pinwheel, and accepts it without one of its arms', () => {
    expect(checkPlaces(pinwheel, sheet)).toEqual(['no cut from edge to edge parts the pieces'])
    for (let arm = 0; arm < 4; arm++) {
      expect(checkPlaces(pinwheel.toSpliced(arm, 1), sheet)).toEqual([])
    }
  })

  it('rejects a pinwheel inside another layout', () => {
    const larger = { ...sheet, sheet: rect(0, 0, 500, 604) }
    const pieces = [...pinwheel, place(1, rect(0, 504, 500, 100))]
    expect(checkPlaces(pieces, larger)).toEqual(['no cut from edge to edge parts the pieces'])
  })

  it('counts the changes of direction that the places force', () => {
    // A column beside two rows, one of them of two pieces: across, along, across.
    const pieces = [
      place(0, rect(0, 0, 100, 500)),
      place(1, rect(104, 0, 396, 200)),
      place(2, rect(104, 204, 196, 296)),
      place(2, rect(304, 204, 196, 296)),
    ]
    expect(checkPlaces(pieces, { ...sheet, stages: 3 })).toEqual([])
    expect(checkPlaces(pieces, { ...sheet, stages: 2 })).toEqual(['takes 3 stages of 2'])
    const [column, ...rest] = pieces
    if (column === undefined) throw new Error('There is a column.')
    // Without the column the rows come first, so two directions do; and none for one piece.
    expect(checkPlaces(rest, { ...sheet, stages: 2 })).toEqual([])
    expect(checkPlaces(rest, { ...sheet, stages: 1 })).toEqual(['takes 2 stages of 1'])
    expect(checkPlaces([column], { ...sheet, stages: 0 })).toEqual([])
  })

  it('needs the kerf between pieces, and none behind them', () => {
    const pair = [place(0, rect(0, 0, 248, 500)), place(0, rect(252, 0, 248, 500))]
    expect(checkPlaces(pair, sheet)).toEqual([])
    expect(checkPlaces(pair, { ...sheet, kerfMm: 4.1 })).not.toEqual([])
  })
})
