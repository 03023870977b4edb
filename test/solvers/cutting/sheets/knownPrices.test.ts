import { describe, expect, it } from 'vitest'
import type { SheetJob, SheetResult } from '../../../../src/solvers/cutting/sheets/sheetJob.ts'
import { solveSheets } from '../../../../src/solvers/cutting/sheets/solveSheets.ts'
import {
  readClassInstances,
  readMultisheetInstances,
  readPlantedInstances,
  readRealisticInstances,
} from '../../../references/cutting/readInstances.ts'
import { checkSheetPlan } from '../checkSheetPlan.ts'
import { runSteps } from '../runSteps.ts'

/** Few, so that all instances together take seconds; the benchmark gives them their time. */
const STEPS = 30

function solve(job: SheetJob, name: string, steps = STEPS) {
  const result = runSteps(solveSheets(job), steps, (each) => each.kind === 'plan' && each.proven)
  if (result.kind !== 'plan') throw new Error(result.message)
  expect(checkSheetPlan(job, result), name).toEqual([])
  return result
}

describe('solveSheets on instances with known values', () => {
  it('is never below what cuts allow, nor its bound above what is known: planted', () => {
    let reached = 0
    for (const { name, job, bestKnown, fill } of readPlantedInstances()) {
      if (fill > 0.96) continue
      const { price, bound } = solve(job, name, 300)
      expect(price, name).toBeGreaterThanOrEqual(bestKnown)
      expect(bound, name).toBeLessThanOrEqual(bestKnown)
      if (price === bestKnown) reached++
    }
    // All twelve in 300 steps; one may go either way when the search is changed.
    expect(reached).toBeGreaterThanOrEqual(11)
  })

  it('realistic', () => {
    for (const { name, job, bestKnown, bound } of readRealisticInstances()) {
      const answer = solve(job, name)
      expect(answer.bound, name).toBeLessThanOrEqual(bestKnown)
      expect(answer.price, name).toBeGreaterThanOrEqual(bound)
    }
  })

  it.each(['fixed', 'turning'] as const)('classes of 20 and 40 parts, %s', (way) => {
    for (const { name, job, bestKnown, bestKnownFree, bound } of readClassInstances(way)) {
      if (!/_[24]0_/.test(name)) continue
      const answer = solve(job, name)
      expect(answer.bound, name).toBeLessThanOrEqual(Math.min(bestKnown, bestKnownFree))
      expect(answer.price, name).toBeGreaterThanOrEqual(bound)
    }
  })

  it('is at most 1 % above the best two-stage price for hundreds of copies', () => {
    const [instance] = readMultisheetInstances('fixed').filter(({ name }) =>
      name.includes('gcut9d'),
    )
    if (!instance) throw new Error('no instance')
    const { job, bestKnown } = instance
    const most = bestKnown * 1.01
    const isNear = (each: SheetResult) => each.kind === 'plan' && each.price <= most
    const answer = runSteps(solveSheets(job), 600, isNear)
    if (answer.kind !== 'plan') throw new Error(answer.message)
    expect(checkSheetPlan(job, answer)).toEqual([])
    expect(answer.bound).toBeLessThanOrEqual(bestKnown)
    expect(answer.price).toBeLessThanOrEqual(most)
  })
})
