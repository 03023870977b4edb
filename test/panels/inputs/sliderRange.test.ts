import { describe, expect, it } from 'vitest'
import { CAVITY_FIELDS } from '../../../src/design/cavityFields.ts'
import { ENTRANCE_FIELDS } from '../../../src/design/openingFields.ts'
import { sliderRange } from '../../../src/panels/inputs/sliderRange.ts'

describe('sliderRange', () => {
  it('is the whole range of an ordinary field', () => {
    expect(sliderRange('cavity.playMm', CAVITY_FIELDS.playMm, 15)).toEqual([0, 60])
  })

  it('is narrower where the whole range is of little use', () => {
    expect(sliderRange('cavity.frames', CAVITY_FIELDS.frames, 20)).toEqual([4, 48])
    const { centreMm } = ENTRANCE_FIELDS
    expect(sliderRange('openings.entrances.3.centreMm', centreMm, 150)).toEqual([20, 1500])
  })

  it('stretches to a value that was typed outside it', () => {
    expect(sliderRange('cavity.frames', CAVITY_FIELDS.frames, 120)).toEqual([4, 120])
  })
})
