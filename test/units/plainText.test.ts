import { describe, expect, it } from 'vitest'
import { plainText, quoteTyped } from '../../src/units/plainText.ts'

describe('plainText', () => {
  it.each([
    [' 418\u00a0MM ', '418 mm'],
    ['1′\u20094½″', '1\' 4½"'],
    ['1’ 4”', '1\' 4"'],
    ["16''", '16"'],
    ['16′′', '16"'],
    ['−5 ºC', '-5 °c'],
    ['3⁄4', '3/4'],
    ['4\u200b18', '418'],
  ])('makes %j into %j', (text, plain) => {
    expect(plainText(text)).toBe(plain)
  })
})

describe('quoteTyped', () => {
  it('shows thirty characters at most', () => {
    expect(quoteTyped('418')).toBe('"418"')
    expect(quoteTyped('x'.repeat(31))).toBe(`"${'x'.repeat(30)}…"`)
  })
})
