import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { count, length } from '../../../src/design/field.ts'
import {
  bringIntoRange,
  commitNumber,
  snapNumber,
  stepNumber,
} from '../../../src/panels/inputs/commitNumber.ts'
import { INCH, METRIC } from '../../../src/units/preferences.ts'

const words = { label: 'Test', meaning: 'A test.' }
const gap = length({ ...words, min: 3, max: 20, step: 0.5, default: 8 })
const frames = count({ ...words, min: 4, max: 200, default: 20 })

describe('commitNumber', () => {
  const commit = (text: string, units = METRIC) => commitNumber(gap, text, { stored: 8, units })

  it('has nothing to say about a plain value in range', () => {
    expect(commit('9.5')).toEqual({ kind: 'set', value: 9.5, note: '' })
  })

  it('shows what it understood when the text was in another unit', () => {
    expect(commit('1/2 in')).toMatchObject({ kind: 'set', value: 12.7 })
    expect(commit('1/2 in').note).toContain('12.7 mm')
  })

  it('limits a value that is out of range and says why', () => {
    expect(commit('40')).toEqual({
      kind: 'set',
      value: 20,
      note: '40 mm is too much: set to 20 mm, the most.',
    })
    expect(commit('1')).toEqual({
      kind: 'set',
      value: 3,
      note: '1 mm is too little: set to 3 mm, the least.',
    })
  })

  it('rounds a count and says so', () => {
    const result = commitNumber(frames, '12.6', { stored: 20, units: METRIC })
    expect(result).toEqual({
      kind: 'set',
      value: 13,
      note: 'Set to 13: only whole numbers here.',
    })
  })

  it('sets nothing when the text cannot be read', () => {
    expect(commit('wide').kind).toBe('error')
  })
})

describe('stepNumber', () => {
  it('goes to the next round value from one between two', () => {
    expect(stepNumber(gap, 8.2, { steps: 1, units: METRIC })).toBe(8.5)
    expect(stepNumber(gap, 8.2, { steps: -1, units: METRIC })).toBe(8)
  })

  it('goes ten steps at a time and stops at the ends', () => {
    expect(stepNumber(gap, 8, { steps: 10, units: METRIC })).toBe(13)
    expect(stepNumber(gap, 18, { steps: 10, units: METRIC })).toBe(20)
    expect(stepNumber(gap, 4, { steps: -10, units: METRIC })).toBe(3)
  })

  it('goes by thirty-seconds of an inch in inches', () => {
    // 1/2 in is 12.7 mm; one 1/32 in more is 13.49375 mm.
    expect(stepNumber(gap, 12.7, { steps: 1, units: INCH })).toBeCloseTo(13.49375, 9)
  })

  it('is undone by the opposite step from any round value', () => {
    fc.assert(
      fc.property(fc.integer({ min: 7, max: 39 }), (halves) => {
        const value = halves / 2
        const up = stepNumber(gap, value, { steps: 1, units: METRIC })
        expect(stepNumber(gap, up, { steps: -1, units: METRIC })).toBe(value)
      }),
    )
  })
})

describe('snapNumber', () => {
  it('takes the nearest round value in range, without binary noise', () => {
    expect(snapNumber(gap, 8.26, METRIC)).toBe(8.5)
    expect(snapNumber(gap, 2, METRIC)).toBe(3)
    const tenths = length({ ...words, min: 0, max: 6, step: 0.1, default: 3 })
    expect(snapNumber(tenths, 0.31, METRIC)).toBe(0.3)
  })
})

describe('bringIntoRange', () => {
  it('leaves a value in range alone', () => {
    expect(bringIntoRange(gap, 7.77)).toBe(7.77)
  })
})
