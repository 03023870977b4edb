import { describe, expect, it } from 'vitest'
import { areClose, degreesShort, tickWords } from '../../../src/panels/view/heatTicks.ts'

const levelsAt = (...celsius: readonly number[]) => celsius.map((c) => ({ celsius: c, share: 0 }))

describe('tickWords', () => {
  it('has no unit, and no tenths where none has any', () => {
    expect(tickWords(levelsAt(-5, 0, 5), 'c')).toEqual(['-5', '0', '5'])
    expect(tickWords(levelsAt(-10, 0), 'f')).toEqual(['14', '32'])
  })

  it('has tenths for all where one has some', () => {
    expect(tickWords(levelsAt(-9.2, -9, -8.8), 'c')).toEqual(['-9.2', '-9.0', '-8.8'])
  })
})

describe('areClose', () => {
  it('is so for nine figures with tenths, not for seven, nor for nine whole ones', () => {
    expect(areClose(Array.from({ length: 9 }, () => '14.2'))).toBe(true)
    expect(areClose(Array.from({ length: 7 }, () => '-9.8'))).toBe(false)
    expect(areClose(Array.from({ length: 9 }, () => '-10'))).toBe(false)
  })
})

describe('degreesShort', () => {
  it('has tenths only where they say something', () => {
    expect(degreesShort(-10, 'c')).toBe('-10 °C')
    expect(degreesShort(-8.8, 'c')).toBe('-8.8 °C')
    expect(degreesShort(-10, 'f')).toBe('14 °F')
  })
})
