import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { colonyStretches, rowLengthMm, wallLengthMm } from '../../src/design/rowRoom.ts'
import { cavityLengthOf, layRow } from '../../src/hive/row.ts'
import { arbitraryDesign } from './arbitraryDesign.ts'

describe('rowLengthMm', () => {
  it('adds up the default row', () => {
    // 20 × 35 frames + 2 × 4 ends + (32 + 2 × 4) follower + 15 play.
    expect(rowLengthMm(DEFAULT_DESIGN)).toBe(763)
  })

  it('is the length that the hive is built to', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        expect(rowLengthMm(design)).toBeCloseTo(cavityLengthOf(design), 6)
      }),
    )
  })
})

describe('colonyStretches', () => {
  it('is one stretch without a divider and on the end walls', () => {
    expect(colonyStretches(DEFAULT_DESIGN, 'front')).toEqual([{ fromMm: 0, toMm: 763 }])
    // 448 of frame and 8 at each side.
    expect(wallLengthMm(DEFAULT_DESIGN, 'left')).toBe(464)
    expect(colonyStretches(DEFAULT_DESIGN, 'left')).toEqual([{ fromMm: 0, toMm: 464 }])
  })

  it('ends at the faces of the divider, where the hive puts it', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const divider = layRow(design).find((item) => item.kind === 'divider')
        const [first, second] = colonyStretches(design, 'front')
        expect(second === undefined).toBe(divider === undefined)
        if (divider === undefined || second === undefined) return
        expect(first.toMm).toBeCloseTo(divider.x0, 6)
        expect(second.fromMm).toBeCloseTo(divider.x1, 6)
      }),
    )
  })
})
