import { describe, expect, it } from 'vitest'
import { rowName } from '../../../src/reports/shop/rowName.ts'

describe('rowName', () => {
  it('keeps a name that all share', () => {
    expect(rowName(['Top bar', 'Top bar'])).toBe('Top bar')
  })
  it('keeps the words that all names begin or end with', () => {
    expect(rowName(['Front wall lining', 'Back wall lining'])).toBe('Wall lining')
    expect(rowName(['Cover board 1', 'Cover board 2'])).toBe('Cover board')
  })
  it('joins names that share too little', () => {
    expect(rowName(['Top bar', 'Bottom bar'])).toBe('Top bar / Bottom bar')
    expect(rowName(['A', 'B', 'C', 'D'])).toBe('A / B / C …')
  })
  it('counts no word twice when one name is part of another', () => {
    expect(rowName(['Wall rail', 'Wall rail wall rail'])).toBe('Wall rail')
  })
  it('gives nothing for nothing', () => {
    expect(rowName([])).toBe('')
  })
})
