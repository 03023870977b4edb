import { describe, expect, it } from 'vitest'
import { formatMoney, proofWords } from '../../../src/sheets/shop/moneyWords.ts'

describe('formatMoney', () => {
  it('has two places and the sign that the user chose', () => {
    expect(formatMoney(12.5, '¤')).toBe('¤ 12.50')
    expect(formatMoney(0, '')).toBe('0.00')
  })
})

describe('proofWords', () => {
  it('says proven only of what is', () => {
    expect(proofWords({ price: 40, bound: 40, proven: true }, '¤')).toMatch(/^¤ 40\.00, proven/)
    expect(proofWords({ price: 40, bound: 40, proven: false }, '¤')).not.toMatch(/proven/)
  })

  it('gives the gap in money and in percent', () => {
    expect(proofWords({ price: 40, bound: 38, proven: false }, '¤')).toBe(
      '¤ 40.00; nothing can cost less than ¤ 38.00, so at most ¤ 2.00 (5.0 %) could be saved.',
    )
  })
})
