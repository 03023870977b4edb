import { describe, expect, it } from 'vitest'
import { fewerFrames } from '../../../src/reports/checks/fewerFrames.ts'
import { measured, SAMPLE, withFields } from './sampleHive.ts'

const lengthMm = measured(SAMPLE).dimensions.cavityLength
const shorter = (excessMm: number, changes: Parameters<typeof withFields>[1] = []) =>
  fewerFrames(withFields(SAMPLE, changes), lengthMm, excessMm)

describe('fewerFrames', () => {
  it('takes off as many frames as the excess needs, whole frames only', () => {
    expect(shorter(70)?.changes).toEqual([{ field: 'cavity.frames', value: 22 }])
    expect(shorter(70.1)?.changes).toEqual([{ field: 'cavity.frames', value: 21 }])
  })

  it('leaves boards, empty places and openings their places', () => {
    expect(shorter(70, [{ field: 'cavity.followerAAfterFrame', value: 23 }])).toBeUndefined()
    expect(shorter(70, [{ field: 'cavity.emptyPlaces', value: 22 }])).toBeUndefined()
    expect(shorter(70, [{ field: 'openings.entrances.0.centreMm', value: 850 }])).toBeUndefined()
    expect(
      shorter(70, [
        { field: 'cavity.divider', value: 'fitted' },
        { field: 'cavity.dividerAfterFrame', value: 22 },
      ]),
    ).toBeUndefined()
  })

  it('never leaves fewer frames than a hive may have', () => {
    expect(shorter(21 * 35, [{ field: 'cavity.followers', value: 'none' }])).toBeUndefined()
  })
})
