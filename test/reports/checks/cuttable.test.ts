import { describe, expect, it } from 'vitest'
import { checkCuttable } from '../../../src/reports/checks/cuttable.ts'
import type { CuttingProblem } from '../../../src/reports/shop/cutting/cuttingPlan.ts'
import { reportOn, SAMPLE } from './sampleHive.ts'

const { shop } = reportOn(SAMPLE)

const checkWith = (problems: readonly CuttingProblem[]) => {
  const cutting = { ...shop.cutting, problems }
  const [check] = checkCuttable({ design: SAMPLE, shop: { ...shop, cutting } })
  if (check === undefined) throw new Error('There is no check.')
  return check
}

const shorter = (frames: number) => ({
  text: 'Make the hive shorter.',
  changes: [{ field: 'cavity.frames', value: frames }],
})

describe('checkCuttable', () => {
  it('is all right when nothing stands in the way', () => {
    expect(checkWith([])).toMatchObject({ verdict: 'ok', measured: 0, fix: undefined })
  })

  it('counts kinds of part once, however many problems they have, and points at them', () => {
    const check = checkWith([
      { labels: ['A', 'B'], message: 'Too long.', remedies: [] },
      { labels: ['B'], message: 'Too wide.', remedies: [] },
    ])
    expect(check).toMatchObject({ verdict: 'fix', measured: 2, why: 'Too long.' })
    expect(check.partIds).toEqual(
      ['A', 'B'].map((label) => shop.cutList.find((row) => row.label === label)?.partIds[0]),
    )
  })

  it('takes the first remedy with an edit of each problem, the larger of two edits of a field', () => {
    const check = checkWith([
      { labels: ['A'], message: 'Too long.', remedies: [{ text: 'Join it.' }, shorter(18)] },
      { labels: ['B'], message: 'Too long.', remedies: [shorter(12)] },
      { labels: ['C'], message: 'Too long.', remedies: [shorter(20)] },
    ])
    // The sample has 24 frames: 12 is furthest from that.
    expect(check.fix).toEqual({
      label: 'Make the hive shorter.',
      changes: [{ field: 'cavity.frames', value: 12 }],
    })
  })

  it('offers nothing when one problem is for the hands alone', () => {
    const check = checkWith([
      { labels: ['A'], message: 'Too long.', remedies: [shorter(12)] },
      { labels: ['B'], message: 'Too wide.', remedies: [{ text: 'Glue it up.' }] },
    ])
    expect(check.fix).toBeUndefined()
  })
})
