import { describe, expect, it } from 'vitest'
import { seededRandom } from '../../../../src/solvers/cutting/seededRandom.ts'
import type {
  SheetAnswer,
  SheetJob,
  SheetPart,
  SheetResult,
} from '../../../../src/solvers/cutting/sheets/sheetJob.ts'
import { solveSheets } from '../../../../src/solvers/cutting/sheets/solveSheets.ts'
import { checkSheetPlan } from '../checkSheetPlan.ts'
import { leastSheetPrice } from '../leastPrices.ts'
import { runSteps } from '../runSteps.ts'

const PLAIN: SheetJob = {
  stocks: [{ id: 'ply', lengthMm: 2440, widthMm: 1220, price: 48.9 }],
  kerfMm: 3,
  trimMm: 0,
  stages: 'any',
  parts: [],
}

function part(lengthMm: number, widthMm: number, count = 1, mayTurn = false): SheetPart {
  return { id: `${lengthMm}x${widthMm}`, lengthMm, widthMm, count, mayTurn }
}

function expectPlan(job: SheetJob, steps = 40): SheetAnswer {
  const result = runSteps(solveSheets(job), steps)
  if (result.kind !== 'plan') throw new Error(result.message)
  expect(checkSheetPlan(job, result)).toEqual([])
  return result
}

describe('solveSheets: kerf and trim', () => {
  it('lets the last piece end flush: 4 of 597 and 3 cuts of 4 make 2400', () => {
    const sheet = { id: 's', lengthMm: 2400, widthMm: 100, price: 1 }
    const job = { ...PLAIN, stocks: [sheet], kerfMm: 4, parts: [part(597, 100, 4)] }
    const answer = expectPlan(job)
    expect(answer.sheets).toBe(1)
    expect(answer.layouts[0]?.offcuts).toEqual([])
  })

  it('takes a second sheet when one cut is a tenth of a millimetre too wide', () => {
    const sheet = { id: 's', lengthMm: 2400, widthMm: 100, price: 1 }
    const job = { ...PLAIN, stocks: [sheet], kerfMm: 4.1, parts: [part(597, 100, 4)] }
    expect(expectPlan(job).price).toBe(2)
  })

  it('lets the last cut eat a rest narrower than itself', () => {
    const sheet = { id: 's', lengthMm: 2402, widthMm: 102, price: 1 }
    const job = { ...PLAIN, stocks: [sheet], kerfMm: 4, parts: [part(597, 100, 4)] }
    expect(expectPlan(job).sheets).toBe(1)
  })

  it.each([0, 10])('cuts with a kerf of %d mm', (kerfMm) => {
    const parts = [part(600, 400, 5), part(310, 295.5, 8, true), part(120, 80, 20, true)]
    expectPlan({ ...PLAIN, kerfMm, trimMm: 7.5, parts })
  })

  it('takes trim off both edges: 2420 of 2440 is left by 10, not by 11', () => {
    const job = { ...PLAIN, trimMm: 10, parts: [part(2420, 1200)] }
    expect(expectPlan(job).sheets).toBe(1)
    expect(runSteps(solveSheets({ ...job, trimMm: 11 }), 5).kind).toBe('refused')
  })
})

describe('solveSheets: turning', () => {
  const sheet = { id: 's', lengthMm: 1000, widthMm: 500, price: 1 }

  it('turns a part that may be turned, and only that', () => {
    const job = { ...PLAIN, stocks: [sheet], parts: [part(500, 1000, 1, true)] }
    const [piece] = expectPlan(job).layouts[0]?.pieces ?? []
    expect(piece).toMatchObject({ turned: true, lengthMm: 1000, widthMm: 500 })
  })

  it('needs more sheets where the grain forbids the turn', () => {
    // Two of 300 × 500 stand side by side, or lie as 500 × 300 one on one sheet's length.
    const stocks = [{ ...sheet, lengthMm: 620 }]
    const free = { ...PLAIN, stocks, parts: [part(500, 300, 2, true)] }
    const locked = { ...PLAIN, stocks, parts: [part(500, 300, 2)] }
    expect(expectPlan(free).price).toBe(1)
    expect(expectPlan(locked).price).toBe(2)
  })
})

describe('solveSheets: stages', () => {
  const parts = [part(600, 200), part(200, 400), part(200, 400), part(200, 190), part(190, 190, 2)]

  it.each([2, 3, 4, 'any'] as const)('keeps within %s', (stages) => {
    const answer = expectPlan({ ...PLAIN, stages, parts: parts.map((p) => ({ ...p, count: 6 })) })
    if (stages !== 'any') {
      for (const layout of answer.layouts) expect(layout.stages).toBeLessThanOrEqual(stages)
    }
  })

  it('calls a cut sheet of one strip one stage', () => {
    const job = { ...PLAIN, parts: [part(500, 1220, 3)] }
    expect(expectPlan(job).layouts[0]?.stages).toBe(1)
  })
})

describe('solveSheets: carry', () => {
  const carry = { lengthMm: 1300, widthMm: 800 }

  it('divides every sheet into pieces that can be carried', () => {
    const parts = [part(1250, 300, 4), part(700, 640, 3, true), part(300, 250, 12)]
    const answer = expectPlan({ ...PLAIN, carry, parts })
    for (const { root } of answer.layouts) expect(root).toMatchObject({ isCarry: true })
  })

  it('makes no cut to carry where the sheet fits as it is', () => {
    const stocks = [{ id: 's', lengthMm: 1300, widthMm: 700, price: 1 }]
    const [layout] = expectPlan({ ...PLAIN, stocks, carry, parts: [part(600, 600, 2)] }).layouts
    expect(layout?.root).toMatchObject({ kind: 'cut', isCarry: false })
  })

  it('holds a part that fills the whole carried size', () => {
    expectPlan({ ...PLAIN, carry, parts: [part(1300, 800), part(800, 1200)] })
  })
})

describe('solveSheets: stock', () => {
  it('uses an offcut on hand before it buys', () => {
    const stocks = [
      { id: 'new', lengthMm: 2440, widthMm: 1220, price: 48.9 },
      { id: 'offcut', lengthMm: 700, widthMm: 500, price: 0, count: 1 },
    ]
    const answer = expectPlan({ ...PLAIN, stocks, parts: [part(600, 400)] })
    expect(answer).toMatchObject({ price: 0, proven: true, sheets: 1 })
  })

  it('never takes more than there are', () => {
    const stocks = [
      { id: 'on hand', lengthMm: 700, widthMm: 500, price: 1, count: 3 },
      { id: 'new', lengthMm: 700, widthMm: 500, price: 5 },
    ]
    // One part a sheet: three on what is there, two on what is bought.
    const answer = expectPlan({ ...PLAIN, stocks, parts: [part(600, 400, 5)] })
    expect(answer).toMatchObject({ price: 13, proven: true })
  })

  it('says which parts find no place when counted sheets are too few', () => {
    const stocks = [{ id: 's', lengthMm: 700, widthMm: 500, price: 1, count: 2 }]
    const job = { ...PLAIN, stocks, parts: [part(600, 400, 3)] }
    const result = runSteps(solveSheets(job), 400)
    expect(result).toMatchObject({ kind: 'refused', reason: 'not-enough', parts: [0] })
  })

  it('has an empty plan for no parts, proven', () => {
    const answer = expectPlan({ ...PLAIN, parts: [part(100, 100, 0)] })
    expect(answer).toMatchObject({ price: 0, bound: 0, proven: true, sheets: 0, layouts: [] })
  })
})

describe('solveSheets: as it works', () => {
  const random = seededRandom(7)
  const between = (least: number, most: number) => least + Math.floor(random() * (most - least))
  const many = Array.from({ length: 40 }, () =>
    part(between(150, 600), between(80, 400), 10, random() < 0.5),
  )

  it('has a plan for 400 parts within a few steps', () => {
    const job = { ...PLAIN, parts: many }
    const solver = solveSheets(job)
    let result: SheetResult | undefined
    for (let step = 0; step < 60 && !result; step++) result = solver.next().value
    if (result?.kind !== 'plan') throw new Error('no plan')
    expect(checkSheetPlan(job, result)).toEqual([])
  })

  it('only ever gets better, and gives the same plans again', () => {
    const job = { ...PLAIN, parts: many.slice(0, 20).map((each) => ({ ...each, count: 3 })) }
    const run = () => [...firstResults(job, 60)]
    const prices = run()
    expect(prices.length).toBeGreaterThan(0)
    expect(run()).toEqual(prices)
    expect([...prices].sort((a, b) => b.price - a.price)).toEqual(prices)
    expect([...prices].sort((a, b) => a.bound - b.bound)).toEqual(prices)
  })

  it('ends by itself once the price is proven', () => {
    const solver = solveSheets({ ...PLAIN, parts: [part(600, 400, 6)] })
    let steps = 0
    while (!solver.next().done) steps++
    expect(steps).toBeLessThan(1000)
  })

  it('leaves one large offcut: 3 of 600 × 600 in a corner, half the sheet whole', () => {
    const parts = [part(600, 600, 3)]
    const job = { ...PLAIN, parts }
    // In a column of 600 two stand over each other; with two columns 2440 − 1206 = 1234 are left.
    const answer = expectPlan(job, 400)
    const [largest] = answer.layouts[0]?.offcuts ?? []
    expect((largest?.lengthMm ?? 0) * (largest?.widthMm ?? 0)).toBeGreaterThanOrEqual(1234 * 1220)
  })
})

describe('solveSheets: against all ways to cut', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('finds and never undercuts the least price, job %d', (seed) => {
    const random = seededRandom(seed)
    const between = (least: number, most: number) => least + Math.floor(random() * (most - least))
    const job: SheetJob = {
      stocks: [
        { id: 'a', lengthMm: 40, widthMm: 30, price: 10 },
        { id: 'b', lengthMm: 30, widthMm: 20, price: 6 },
      ],
      kerfMm: between(0, 3),
      trimMm: 0,
      stages: 'any',
      parts: Array.from({ length: 6 }, () =>
        part(between(6, 26), between(5, 18), 1, random() < 0.5),
      ),
    }
    const answer = expectPlan(job, 60)
    const least = leastSheetPrice(job)
    expect(answer.bound).toBeLessThanOrEqual(least)
    expect(answer.price).toBe(least)
  })
})

function* firstResults(job: SheetJob, steps: number) {
  const solver = solveSheets(job)
  for (let step = 0; step < steps; step++) {
    const { value, done } = solver.next()
    if (value?.kind === 'plan') yield { price: value.price, bound: value.bound }
    if (done) return
  }
}
