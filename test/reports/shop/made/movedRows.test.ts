import { describe, expect, it } from 'vitest'
import { movedRows } from '../../../../src/reports/shop/made/movedRows.ts'
import { cutRow } from '../setups/cutRows.ts'

const two = cutRow('A', { partIds: ['p1', 'p2'], count: 2 })

describe('movedRows', () => {
  it('tells each side that changed, whatever the labels became', () => {
    const after = cutRow('C', { ...two, label: 'C', lengthMm: 794, thicknessMm: 27 })
    expect(movedRows([two], [after])).toEqual([
      { label: 'A', name: 'Part A', side: 'length', beforeMm: 800, afterMm: 794 },
      { label: 'A', name: 'Part A', side: 'thickness', beforeMm: 28, afterMm: 27 },
    ])
    expect(movedRows([two], [{ ...two, label: 'B' }])).toEqual([])
  })

  it('follows the parts of a row that is split', () => {
    const same = cutRow('A', { partIds: ['p1'] })
    const other = cutRow('B', { partIds: ['p2'], widthMm: 58 })
    expect(movedRows([two], [same, other])).toEqual([
      { label: 'A', name: 'Part A', side: 'width', beforeMm: 60, afterMm: 58 },
    ])
  })

  it('leaves out made parts and bought ones', () => {
    const after = cutRow('A', { ...two, lengthMm: 794 })
    expect(movedRows([two], [after], new Set(['p1', 'p2']))).toEqual([])
    expect(movedRows([two], [after], new Set(['p1']))).toHaveLength(1)
    expect(movedRows([{ ...two, bought: true }], [{ ...after, bought: true }])).toEqual([])
  })

  it('counts a part that comes or goes as a length from or to nothing', () => {
    const one = cutRow('A', { partIds: ['p1'] })
    const extra = cutRow('B', { partIds: ['p3'], lengthMm: 300 })
    expect(movedRows([two], [one, extra])).toEqual([
      { label: 'A', name: 'Part A', side: 'length', beforeMm: 800, afterMm: 0 },
      { label: 'B', name: 'Part B', side: 'length', beforeMm: 0, afterMm: 300 },
    ])
  })
})
