import { describe, expect, it } from 'vitest'
import { type RandomNumbers, randomNumbers, wholeBetween } from '../../../scripts/randomNumbers.ts'
import type {
  LumberAnswer,
  LumberJob,
  LumberStock,
} from '../../../src/solvers/cutting/lumber/lumberJob.ts'
import { solveLumber } from '../../../src/solvers/cutting/lumber/solveLumber.ts'
import { verifyCertificate } from '../../../src/solvers/cutting/lumber/verifyCertificate.ts'
import type { SheetAnswer, SheetJob } from '../../../src/solvers/cutting/sheets/sheetJob.ts'
import { solveSheets } from '../../../src/solvers/cutting/sheets/solveSheets.ts'
import {
  readClassInstances,
  readLumberInstances,
  readMultisheetInstances,
  readPlantedInstances,
  readRealisticInstances,
} from '../../references/cutting/readInstances.ts'
import { checkLumberPlan } from './checkLumberPlan.ts'
import { checkSheetPlan } from './checkSheetPlan.ts'
import { leastLumberPrice, leastSheetPrice } from './leastPrices.ts'
import { type Planted, plantLumber, plantSheets } from './plantedJobs.ts'
import { provesLumberPrice } from './provesLumberPrice.ts'
import { runSteps } from './runSteps.ts'
import { sheetBound } from './sheetBound.ts'

/** A computer that others use too may take several times as long as a quiet one. */
const PATIENCE_MS = 120_000

/** Of the planner of boards: enough to prove the published kind. */
const STEPS = 250

/** Of the planner of sheets: enough to have its best bound. */
const SHEET_STEPS = 350

const EVEN_PRICE = 1e-6

interface Count {
  readonly proven: number
  readonly all: number
}

const countProven = (answers: readonly { readonly proven: boolean }[]): Count => ({
  proven: answers.filter(({ proven }) => proven).length,
  all: answers.length,
})

/** Solves a job for boards and lets nothing false pass, given a price that is known to be enough. */
const tryLumber = (job: LumberJob, enough: number, steps: number): LumberAnswer => {
  const answer = runSteps(solveLumber(job), steps)
  if (answer.kind === 'refused') throw new Error(answer.message)
  const { price, bound, proven, certificate } = answer
  expect(checkLumberPlan(job, answer)).toEqual([])
  expect(bound).toBeLessThanOrEqual(enough + EVEN_PRICE)
  if (!proven || certificate === undefined) return answer
  expect(price).toBeLessThanOrEqual(enough + EVEN_PRICE)
  expect(verifyCertificate(job, price, certificate)).toBe(true)
  expect(provesLumberPrice(job, price, certificate.duals)).toBe(true)
  return answer
}

const trySheets = (job: SheetJob, enough: number, steps: number): SheetAnswer => {
  const answer = runSteps(
    solveSheets(job),
    steps,
    (result) => result.kind === 'plan' && result.proven,
  )
  if (answer.kind === 'refused') throw new Error(answer.message)
  expect(checkSheetPlan(job, answer)).toEqual([])
  expect(answer.bound).toBeLessThanOrEqual(enough + EVEN_PRICE)
  return answer
}

const board = (lengthMm: number, price: number, count?: number): LumberStock => ({
  id: `board-${lengthMm}-${price}`,
  lengthMm,
  price,
  ...(count === undefined ? {} : { count }),
})

/** Answers to many jobs, each planted with its own numbers. */
const tryPlanted = (
  seeds: number,
  plant: (random: RandomNumbers) => Planted<LumberJob>,
): readonly LumberAnswer[] =>
  Array.from({ length: seeds }, (_, seed) => {
    const { job, price } = plant(randomNumbers(seed))
    return tryLumber(job, price, STEPS)
  })

describe('proofs for boards', () => {
  it(
    'hold for the published kind of instance, whose optimum is known',
    () => {
      const answers = readLumberInstances().map(({ job, optimum }) =>
        tryLumber(job, optimum, STEPS),
      )
      expect(countProven(answers).proven).toBeGreaterThan(20)
    },
    PATIENCE_MS,
  )

  it(
    'hold where boards were cut up without a rest, so that only one way may do',
    () => {
      const answers = tryPlanted(8, (random) =>
        plantLumber(random, {
          stocks: [board(2400, 546), board(3000, 655), board(4200, 960)],
          kerfMm: 3,
          trimMm: 0,
          boards: 8,
          pieces: [3, 6],
          slackMm: 0,
          stepMm: 1,
        }),
      )
      expect(countProven(answers).proven).toBeGreaterThan(2)
    },
    PATIENCE_MS,
  )

  it(
    'hold for one length of board that is nearly full, as in the hardest published sets',
    () => {
      const answers = tryPlanted(8, (random) =>
        plantLumber(random, {
          stocks: [board(1000, 1)],
          kerfMm: 0,
          trimMm: 0,
          boards: 20,
          pieces: [2, 4],
          slackMm: 8,
          stepMm: 1,
        }),
      )
      expect(countProven(answers).proven).toBeGreaterThan(2)
    },
    PATIENCE_MS,
  )

  it(
    'hold where prices tie: alike by length, alike for two lengths, the same board twice',
    () => {
      const tables: readonly (readonly LumberStock[])[] = [
        [board(1800, 3.6), board(2400, 4.8), board(3600, 7.2)],
        [board(1800, 5), board(2400, 5)],
        [board(2400, 0.1), board(2400, 0.1), board(1200, 0.3)],
      ]
      const answers = tables.flatMap((stocks) =>
        tryPlanted(5, (random) =>
          plantLumber(random, {
            stocks,
            kerfMm: 4,
            trimMm: 10,
            boards: 7,
            pieces: [3, 5],
            slackMm: 40,
            stepMm: 1,
          }),
        ),
      )
      expect(countProven(answers).proven).toBeGreaterThan(7)
    },
    PATIENCE_MS,
  )

  it(
    'hold where boards are counted, and some cost nothing',
    () => {
      const answers = tryPlanted(8, (random) =>
        plantLumber(random, {
          stocks: [board(1500, 0, 2), board(2400, 5.46, 4), board(3000, 6.5)],
          kerfMm: 3,
          trimMm: 20,
          boards: 8,
          pieces: [2, 5],
          slackMm: 20,
          stepMm: 1,
        }),
      )
      expect(countProven(answers).proven).toBeGreaterThan(4)
    },
    PATIENCE_MS,
  )

  it.each([
    ['64ths of an inch', 25.4 / 64, 25.4 / 8],
    ['tenths', 0.1, 2.7],
    ['no unit at all', 0, Math.PI],
  ])(
    'hold for lengths in %s, where rounding might lie',
    (_, stepMm, kerfMm) => {
      const answers = tryPlanted(4, (random) =>
        plantLumber(random, {
          stocks: [board(96 * 25.4, 5.46), board(120 * 25.4, 6.5)],
          kerfMm,
          trimMm: 0,
          boards: 4,
          pieces: [2, 4],
          slackMm: 0,
          stepMm,
        }),
      )
      expect(answers.length).toBe(4)
    },
    PATIENCE_MS,
  )

  it.each([3, 6, 7, 11])('know that %d equal shares of a board fit it, kerfs and all', (shares) => {
    // A share has no last digit, so whatever it is rounded up to is too long.
    const lengthMm = (1000 - (shares - 1) * 7) / shares
    const parts = [{ id: 'share', lengthMm, count: shares }]
    const job = { stocks: [board(1000, 2.7), board(1300, 7.9)], kerfMm: 7, trimMm: 0, parts }
    expect(tryLumber(job, 2.7, STEPS)).toMatchObject({ price: 2.7, bound: 2.7, proven: true })
  })

  it(
    'agree with every way to share out a few pieces',
    () => {
      const answers = Array.from({ length: 60 }, (_, seed) => {
        const random = randomNumbers(500 + seed)
        const job = smallLumber(random)
        const least = leastLumberPrice(job)
        if (least === Infinity) {
          expect(runSteps(solveLumber(job), STEPS).kind).toBe('refused')
          return { proven: true }
        }
        const answer = tryLumber(job, least, STEPS)
        expect(answer.price).toBeGreaterThanOrEqual(least - EVEN_PRICE)
        if (answer.proven) expect(answer.price).toBeCloseTo(least, 6)
        return answer
      })
      expect(countProven(answers).proven).toBeGreaterThan(50)
    },
    PATIENCE_MS,
  )
})

/** Nine pieces of a few lengths, some of a board's exact share, and stocks of which some are counted. */
const smallLumber = (random: RandomNumbers): LumberJob => {
  const kerfMm = wholeBetween(random, 0, 10)
  const stocks = Array.from({ length: wholeBetween(random, 1, 3) }, () => {
    const count = random() < 0.3 ? wholeBetween(random, 1, 3) : undefined
    const price = random() < 0.15 ? 0 : wholeBetween(random, 20, 120) / 10
    return board(wholeBetween(random, 10, 30) * 100, price, count)
  })
  const [first] = stocks
  const shares = [2, 3, 4].map((n) => ((first?.lengthMm ?? 0) - (n - 1) * kerfMm) / n)
  const parts = Array.from({ length: wholeBetween(random, 2, 4) }, (_, i) => ({
    id: `part-${i}`,
    lengthMm:
      random() < 0.5 ? (shares[wholeBetween(random, 0, 2)] ?? 0) : wholeBetween(random, 100, 999),
    count: wholeBetween(random, 1, 9 / 4),
  }))
  return { stocks, kerfMm, trimMm: 0, parts }
}

const every = <Instance>(step: number, set: readonly Instance[]): readonly Instance[] =>
  set.filter((_, i) => i % step === 0)

describe('bounds for sheets', () => {
  it(
    'stay at or below what is known to be enough, on published instances',
    () => {
      // Some of each set: the benchmark tries them all.
      const sample = [
        ...every(10, readClassInstances('fixed')),
        ...every(10, readClassInstances('turning').slice(5)),
        ...every(6, readPlantedInstances()),
        ...every(5, readRealisticInstances()),
      ]
      for (const { job, bestKnown } of sample) trySheets(job, bestKnown, SHEET_STEPS)
      for (const turning of ['fixed', 'turning'] as const) {
        for (const { job, bestKnown } of readMultisheetInstances(turning).slice(1, 2)) {
          trySheets(job, bestKnown, SHEET_STEPS)
        }
      }
    },
    PATIENCE_MS,
  )

  it(
    'are no better than what other hands get from the same theory',
    () => {
      const instances = [
        ...every(15, readClassInstances('turning')),
        ...every(6, readRealisticInstances().slice(1)),
      ]
      for (const { job, bestKnown } of instances) {
        const own = sheetBound(job)
        expect(own).toBeLessThanOrEqual(bestKnown + EVEN_PRICE)
        expect(trySheets(job, bestKnown, SHEET_STEPS).bound).toBeLessThanOrEqual(own + EVEN_PRICE)
      }
    },
    PATIENCE_MS,
  )

  it(
    'stay at or below the sheets that were cut up',
    () => {
      for (let seed = 0; seed < 20; seed++) {
        const random = randomNumbers(seed)
        const { job, price } = plantSheets(random, {
          stocks: [
            { id: 'large', lengthMm: 2440, widthMm: 1220, price: 48.9 },
            { id: 'half', lengthMm: 1220, widthMm: 1220, price: 27.9 },
          ],
          kerfMm: wholeBetween(random, 0, 6),
          trimMm: seed % 3 === 0 ? 5 : 0,
          sheets: wholeBetween(random, 1, 4),
          stages: 'any',
          cuts: 12,
          dropped: 0.05,
        })
        trySheets(job, price, SHEET_STEPS)
      }
    },
    PATIENCE_MS,
  )

  it(
    'agree with every way to share out a few parts',
    () => {
      let atLeast = 0
      const answers = Array.from({ length: 40 }, (_, seed) => {
        const job = smallSheets(randomNumbers(900 + seed))
        const least = leastSheetPrice(job)
        if (least === Infinity) {
          expect(runSteps(solveSheets(job), SHEET_STEPS).kind).toBe('refused')
          return { proven: true }
        }
        const answer = trySheets(job, least, 60)
        expect(answer.price).toBeGreaterThanOrEqual(least - EVEN_PRICE)
        if (answer.price <= least + EVEN_PRICE) atLeast++
        return answer
      })
      expect(countProven(answers).proven).toBeGreaterThan(15)
      expect(atLeast).toBeGreaterThan(25)
    },
    PATIENCE_MS,
  )
})

/** Six parts on sheets of a few times their size, some of them a share of a sheet. */
const smallSheets = (random: RandomNumbers): SheetJob => {
  const kerfMm = wholeBetween(random, 0, 8)
  const stocks = Array.from({ length: wholeBetween(random, 1, 2) }, (_, i) => ({
    id: `sheet-${i}`,
    lengthMm: wholeBetween(random, 6, 12) * 100,
    widthMm: wholeBetween(random, 5, 9) * 100,
    price: wholeBetween(random, 100, 400) / 10,
    ...(random() < 0.2 ? { count: 2 } : {}),
  }))
  const [first] = stocks
  const size = (whole: number): number =>
    random() < 0.4 ? (whole - kerfMm) / 2 : wholeBetween(random, 100, 500)
  const parts = Array.from({ length: 6 }, (_, i) => ({
    id: `part-${i}`,
    lengthMm: size(first?.lengthMm ?? 0),
    widthMm: size(first?.widthMm ?? 0),
    count: 1,
    mayTurn: random() < 0.5,
  }))
  return { stocks, kerfMm, trimMm: 0, stages: 'any', parts }
}
