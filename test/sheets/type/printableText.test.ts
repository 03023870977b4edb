import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readFontMetrics } from '../../../src/sheets/type/fontMetrics.ts'
import { printableText } from '../../../src/sheets/type/printableText.ts'
import { anyText } from '../anyText.ts'
import { FONTS } from '../sheetFixture.ts'

const { covers } = readFontMetrics(FONTS.regular)
const print = (raw: string) => printableText(raw, covers)

describe('printableText', () => {
  it('leaves alone what the typeface has', () => {
    const text = 'Großmutter’s 16 ½″ hive: Ω Ж é – 3 °C ≤ 5 m² ×2'
    expect(print(text)).toEqual({ text, missing: 0 })
  })

  it('puts one mark for each character that is missing', () => {
    expect(print('蜂箱!')).toEqual({ text: '??!', missing: 2 })
    expect(print('שלום')).toEqual({ text: '????', missing: 4 })
  })

  it('counts an emoji of many code points once', () => {
    expect(print('a👨‍👩‍👧b')).toEqual({ text: 'a?b', missing: 1 })
    expect(print('👍🏽')).toEqual({ text: '?', missing: 1 })
    expect(print('🇬🇧🇫🇷')).toEqual({ text: '??', missing: 2 })
    expect(print('🏴\u{e0067}\u{e0062}\u{e007f}')).toEqual({ text: '?', missing: 1 })
    expect(print('1\ufe0f\u20e3').missing).toBe(1)
  })

  it('joins a letter with its mark where there is one sign for both', () => {
    expect(print('e\u0301')).toEqual({ text: 'é', missing: 0 })
  })

  it('makes every line end one, and other white space a space', () => {
    expect(print('a\r\nb\rc\u2028d\ve').text).toBe('a\nb\nc\nd\ne')
    expect(print('a\tb\u00a0c\u3000d').text).toBe('a b c d')
  })

  it('drops controls and marks of direction without a trace', () => {
    expect(print('a\u0000\u0007\u202e\u200b\ufeff\u00adb')).toEqual({ text: 'ab', missing: 0 })
  })

  it('falls back to the plain form of a letter in fancy dress', () => {
    expect(print('Ｂｅｅ 𝐁𝐞𝐞')).toEqual({ text: 'Bee Bee', missing: 0 })
  })

  it('marks a lone half of a surrogate pair', () => {
    expect(print('\ud83d')).toEqual({ text: '?', missing: 1 })
  })

  it('gives text that the typeface has in full, whatever comes', () => {
    fc.assert(
      fc.property(anyText(60), (raw) => {
        const { text, missing } = print(raw)
        expect([...text].every((c) => c === '\n' || covers(c.codePointAt(0) ?? 0))).toBe(true)
        expect(missing).toBeLessThanOrEqual(raw.length)
      }),
    )
  })
})
