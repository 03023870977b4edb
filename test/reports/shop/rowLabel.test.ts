import { describe, expect, it } from 'vitest'
import { rowLabel } from '../../../src/reports/shop/rowLabel.ts'

describe('rowLabel', () => {
  it('counts in letters, as columns of a table do', () => {
    expect([0, 1, 25, 26, 27, 51, 52, 701, 702].map(rowLabel)).toEqual([
      'A',
      'B',
      'Z',
      'AA',
      'AB',
      'AZ',
      'BA',
      'ZZ',
      'AAA',
    ])
  })
})
