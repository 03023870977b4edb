import { describe, expect, it } from 'vitest'
import { canBuildWith } from '../../../src/reports/checks/canBuildWith.ts'
import { SAMPLE } from './sampleHive.ts'

describe('canBuildWith', () => {
  it('takes what the hive takes', () => {
    expect(canBuildWith(SAMPLE, [])).toBe(true)
    expect(canBuildWith(SAMPLE, [{ field: 'openings.entrances.0.centreMm', value: 200 }])).toBe(
      true,
    )
  })

  it.each([
    ['frame.topBarLengthMm', 460],
    ['cavity.followerAAfterFrame', 30],
    ['openings.entrances.0.centreMm', 20],
  ])('refuses what the hive refuses: %s of %s', (field, value) => {
    expect(canBuildWith(SAMPLE, [{ field, value }])).toBe(false)
  })
})
