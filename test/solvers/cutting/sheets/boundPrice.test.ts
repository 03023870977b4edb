import { describe, expect, it } from 'vitest'
import { boundPrice } from '../../../../src/solvers/cutting/sheets/boundPrice.ts'
import type { SheetJob } from '../../../../src/solvers/cutting/sheets/sheetJob.ts'
import { buildSheetModel } from '../../../../src/solvers/cutting/sheets/sheetModel.ts'
import {
  readClassInstances,
  readPlantedInstances,
  readRealisticInstances,
} from '../../../references/cutting/readInstances.ts'

function boundOf(job: SheetJob) {
  const steps = boundPrice(buildSheetModel(job, 'bound'))
  let step = steps.next()
  while (!step.done) step = steps.next()
  return step.value
}

function job(parts: readonly (readonly [number, number, number])[], mayTurn = false): SheetJob {
  return {
    stocks: [{ id: 's', lengthMm: 100, widthMm: 60, price: 7 }],
    kerfMm: 0,
    trimMm: 0,
    stages: 'any',
    parts: parts.map(([lengthMm, widthMm, count]) => ({
      id: 'p',
      lengthMm,
      widthMm,
      count,
      mayTurn,
    })),
  }
}

describe('boundPrice', () => {
  it('is the area in whole sheets where parts are small', () => {
    // 13 × 1000 of 6000: 2.17 sheets.
    expect(boundOf(job([[50, 20, 13]]))).toMatchObject({ price: 21, by: 'area' })
  })

  it('counts parts larger than half the sheet one a sheet', () => {
    const bound = boundOf(job([[51, 31, 4]]))
    expect(bound.price).toBe(28)
    expect(bound.by).toContain('dual feasible functions')
  })

  it('takes the better way round for parts that may turn', () => {
    // 51 × 20 lie three on one another; turned five stand side by side.
    expect(boundOf(job([[51, 20, 5]])).price).toBe(14)
    expect(boundOf(job([[51, 20, 5]], true)).price).toBe(7)
  })

  it('knows that counted sheets cannot suffice', () => {
    const one = { ...job([[51, 31, 2]]) }
    const counted = { ...one, stocks: one.stocks.map((stock) => ({ ...stock, count: 1 })) }
    expect(boundOf(counted).isImpossible).toBe(true)
    expect(boundOf(one).isImpossible).toBe(false)
  })

  it('charges a dear sheet for a part that only it takes', () => {
    const large = job([
      [90, 50, 1],
      [10, 10, 1],
    ])
    const stocks = [...large.stocks, { id: 'small', lengthMm: 80, widthMm: 80, price: 1 }]
    expect(boundOf({ ...large, stocks }).price).toBe(7)
  })

  it.each(['fixed', 'turning'] as const)('is at most the best known value, classes, %s', (way) => {
    for (const { name, job: known, bestKnown, bestKnownFree, bound } of readClassInstances(way)) {
      const { price } = boundOf(known)
      // Best known with parts anywhere is no more than with cuts from edge to edge.
      expect(price, name).toBeLessThanOrEqual(Math.min(bestKnown, bestKnownFree))
      expect(price, name).toBeGreaterThanOrEqual(bound)
    }
  })

  it('is at most the planted optimum, and here equal to it', () => {
    for (const { name, job: known, bestKnown } of readPlantedInstances()) {
      expect(boundOf(known).price, name).toBe(bestKnown)
    }
  })

  it('is at most the best known price of the realistic jobs, and no lower than the known bound', () => {
    for (const { name, job: known, bestKnown, bound } of readRealisticInstances()) {
      const { price } = boundOf(known)
      expect(price, name).toBeLessThanOrEqual(bestKnown)
      expect(price, name).toBeGreaterThanOrEqual(bound)
    }
  })
})
