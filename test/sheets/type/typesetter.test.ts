import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { TYPE } from '../sheetFixture.ts'

const STYLE = { sizeMm: 4, weight: 'regular' } as const

describe('wrap', () => {
  it('breaks at spaces and keeps line ends', () => {
    expect(TYPE.wrap('one two\n\nthree', STYLE, 10)).toEqual(['one', 'two', '', 'three'])
    expect(TYPE.wrap('one two\n\nthree', STYLE, 100)).toEqual(['one two', '', 'three'])
  })

  it('breaks a word only when it is too wide by itself', () => {
    // Figures are 0.6 em: 2.4 mm each, four to 10 mm.
    expect(TYPE.wrap('0 1234567890', STYLE, 10)).toEqual(['0', '1234', '5678', '90'])
  })

  it('never makes a line wider than the column, and loses no letter', () => {
    const word = fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme-ascii' })
    fc.assert(
      fc.property(
        fc.array(word, { maxLength: 8 }),
        fc.integer({ min: 8, max: 60 }),
        (words, width) => {
          const text = words.join(' ')
          const lines = TYPE.wrap(text, STYLE, width)
          for (const line of lines) expect(TYPE.measure(line, STYLE)).toBeLessThanOrEqual(width)
          expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''))
        },
      ),
    )
  })
})

describe('fit', () => {
  const box = { widthMm: 24, heightMm: 12, sizesMm: [10, 5, 4] }

  it('takes the largest size at which the text fits', () => {
    // Four figures at 10 mm are 24 mm wide, but a line of 10 mm is 13.4 mm high.
    expect(TYPE.fit('1234', 'regular', box)).toEqual({ sizeMm: 5, lines: ['1234'] })
  })

  it('takes the last size when none fits', () => {
    const long = '1234567890'.repeat(10)
    expect(TYPE.fit(long, 'regular', box).sizeMm).toBe(4)
  })
})
