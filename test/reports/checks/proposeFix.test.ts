import { describe, expect, it } from 'vitest'
import { mmText, proposeFix, stepDown, stepUp } from '../../../src/reports/checks/proposeFix.ts'

describe('proposeFix', () => {
  it('offers values that their fields take', () => {
    const changes = [
      { field: 'cavity.frames', value: 20 },
      { field: 'stand.form', value: 'legs' },
      { field: 'shop.cutToCarry', value: true },
      { field: 'walls.liningMaterial', value: 'plywood-softwood' },
      { field: 'openings.entrances.1.heightMm', value: 7 },
    ]
    expect(proposeFix('all', changes)).toEqual({ label: 'all', changes })
  })

  it.each([
    ['cavity.frames', 201],
    ['cavity.frames', 20.5],
    ['cavity.aboveSpaceMm', -1],
    ['stand.form', 'table'],
    ['walls.liningMaterial', 'xps'],
    ['shop.cutToCarry', 1],
    ['walls.nothing', 1],
  ])('offers nothing when %s would be %s', (field, value) => {
    expect(proposeFix('bad', [{ field, value }])).toBeUndefined()
  })

  it('offers nothing when nothing changes', () => {
    expect(proposeFix('none', [])).toBeUndefined()
  })
})

describe('stepUp and stepDown', () => {
  it('keep a value that is a step already, in spite of binary noise', () => {
    expect([stepUp(0.1 + 0.2, 0.1), stepDown(0.3, 0.1)].map((v) => v.toFixed(6))).toEqual([
      '0.300000',
      '0.300000',
    ])
    expect([stepUp(7.1, 0.5), stepDown(7.4, 0.5)]).toEqual([7.5, 7])
  })
})

describe('mmText', () => {
  it('shows one decimal at most', () => {
    expect([mmText(7.5), mmText(12), mmText(38.35)]).toEqual(['7.5 mm', '12 mm', '38.4 mm'])
  })
})
