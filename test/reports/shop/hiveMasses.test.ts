import { describe, expect, it } from 'vitest'
import { hiveMasses } from '../../../src/reports/shop/hiveMasses.ts'
import { materialTotals } from '../../../src/reports/shop/materialTotals.ts'
import { stockSystemOf } from '../../../src/reports/shop/stockSystem.ts'
import { at, piece } from './pieces.ts'

const block = [at(0, 0, 0, 1000, 100, 100)]

describe('the sums over parts', () => {
  // Spruce is 450 kg/m3, so a block of 0.01 m3 is 4.5 kg.
  const parts = [
    piece(block, { id: 'lid', motion: 'lid', group: 'lid' }),
    piece(block, { id: 'floor', motion: 'floor', group: 'floor' }),
    piece(block, { id: 'wall' }),
    piece(block, { id: 'cover', motion: 'cover', group: 'covers' }),
    piece(block, { id: 'bar', motion: 'frame', group: 'frames' }),
    piece(block, { id: 'leg', group: 'stand' }),
  ]

  it('counts each mass once', () => {
    const massKg = hiveMasses(parts)
    expect(massKg.lid).toBeCloseTo(4.5, 9)
    expect(massKg.floor).toBeCloseTo(4.5, 9)
    expect(massKg.frames).toBeCloseTo(4.5, 9)
    expect(massKg.stand).toBeCloseTo(4.5, 9)
    expect(massKg.body).toBeCloseTo(9, 9)
    expect(massKg.empty).toBeCloseTo(27, 9)
  })

  it('gives totals that sum to the empty hive', () => {
    const totals = materialTotals(parts)
    expect(totals).toHaveLength(1)
    const [total] = totals
    expect(total).toMatchObject({ material: 'spruce', thicknessMm: 100, pieces: 6 })
    expect(total?.massKg).toBeCloseTo(27, 9)
    expect(total?.lengthM).toBeCloseTo(6, 9)
    expect(total?.areaM2).toBeCloseTo(0.6, 9)
    expect(total?.volumeM3).toBeCloseTo(0.06, 9)
  })
})

describe('stockSystemOf', () => {
  it('takes whole feet for a lumber yard', () => {
    expect([2438.4, 3657.6, 2400, 3000].map(stockSystemOf)).toEqual([
      'us',
      'us',
      'metric',
      'metric',
    ])
  })
})
