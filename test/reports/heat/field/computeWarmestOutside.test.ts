import { describe, expect, it } from 'vitest'
import { computeWarmestOutside } from '../../../../src/reports/heat/field/computeWarmestOutside.ts'
import { INSIDE, OUTSIDE } from '../../../../src/reports/heat/field/hiveHeatModel.ts'
import { type MadeFace, madeField } from './syntheticField.ts'

const skin = (areaM2: number, share: number): MadeFace => ({
  ...{ at: [0, 0, 0], direction: 0, areaM2, environment: OUTSIDE },
  least: share,
})
const warmestOf = (...faces: readonly MadeFace[]): number =>
  computeWarmestOutside(madeField(faces).faces)

describe('computeWarmestOutside', () => {
  it('is what 99 % of the outer area stays below, by area and not by number of faces', () => {
    // The warm rims are 3 of 6 faces but 0.9 % of 1 m².
    const rims = [skin(0.003, 0.9), skin(0.003, 0.8), skin(0.003, 0.7)]
    expect(warmestOf(skin(0.5, 0.02), ...rims, skin(0.391, 0.03), skin(0.1, 0.0625))).toBe(0.0625)
    // Two per cent are no rim any more.
    expect(warmestOf(skin(0.98, 0.03), skin(0.02, 0.25))).toBe(0.25)
  })

  it('knows nothing of the inside', () => {
    const inside = { ...skin(1, 0.9), environment: INSIDE }
    expect(warmestOf(skin(1, 0.125), inside)).toBe(0.125)
    expect(warmestOf(inside)).toBe(0)
  })
})
