import { describe, expect, it } from 'vitest'
import { boxSolid, type Solid } from '../../../src/geometry/solid.ts'
import type { Hive } from '../../../src/hive/hive.ts'
import { checkDivider } from '../../../src/reports/checks/divider.ts'
import { at, piece } from '../shop/pieces.ts'
import { measured, SAMPLE } from './sampleHive.ts'

const { dimensions: d } = measured(SAMPLE)
const row: Hive['row'] = [{ kind: 'divider', x0: 100, x1: 112 }]

/** A divider with these gaps: beside and under the sheet, over it, and beyond its ears. */
const dividerWith = (gaps: { side: number; below: number; above: number; ear: number }) => {
  const half = d.cavityWidth / 2 - gaps.side
  const ear = d.cavityWidth / 2 + d.seatWidth - gaps.ear
  const top = d.coverLedgeHeight - gaps.above
  const solids: readonly Solid[] = [
    boxSolid(at(100, gaps.below, -half, 12, top - gaps.below, 2 * half)),
    boxSolid(at(100, d.restHeight, half, 12, top - d.restHeight, ear - half)),
    boxSolid(at(100, d.restHeight, -ear, 12, top - d.restHeight, ear - half)),
  ]
  const parts = [piece(solids, { id: 'divider', group: 'boards' })]
  return checkDivider({ hive: { row, parts, dimensions: d } })[0]
}

const TIGHT = { side: 1, below: 1, above: 0, ear: 1 }

describe('checkDivider', () => {
  it('passes a divider with 1 mm of room all round', () => {
    expect(dividerWith(TIGHT)).toMatchObject({ verdict: 'ok', partIds: ['divider'] })
  })

  it.each(['side', 'below', 'above', 'ear'] as const)('sees a gap of 2 mm: %s', (place) => {
    const check = dividerWith({ ...TIGHT, [place]: 2 })
    expect(check?.verdict).toBe('fix')
    expect(check?.measured).toBeCloseTo(2, 9)
  })

  it('takes a missing divider for a gap as wide as the hive, and needs none for one colony', () => {
    const missing = checkDivider({ hive: { row, parts: [], dimensions: d } })[0]
    expect(missing?.measured).toBe(d.cavityWidth)
    expect(checkDivider({ hive: { row: [], parts: [], dimensions: d } })).toEqual([])
  })
})
