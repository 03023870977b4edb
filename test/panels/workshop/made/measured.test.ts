import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import {
  type Measured,
  madeParts,
  plannedMm,
  withMeasured,
} from '../../../../src/panels/workshop/made/measured.ts'
import type { CutListRow } from '../../../../src/reports/shop/computeShop.ts'

const ROW: CutListRow = {
  label: 'B',
  name: 'Rail',
  material: 'spruce',
  materialName: 'Spruce',
  lengthMm: 907,
  widthMm: 60,
  thicknessMm: 28,
  count: 2,
  grain: 'length',
  hand: 'none',
  massKgEach: 1,
  operations: [],
  groups: [],
  partIds: ['rail-1', 'rail-2'],
  bought: false,
  stock: undefined,
}

const MEASURED: Measured = { row: ROW, partIds: ['rail-2'], side: 'length', mm: 901 }

describe('madeParts', () => {
  it('notes the measured side and keeps the others as planned', () => {
    expect(madeParts(MEASURED)).toEqual([
      { partId: 'rail-2', lengthMm: 901, widthMm: 60, thicknessMm: 28 },
    ])
  })
})

describe('plannedMm', () => {
  it('reads the side that is asked for', () => {
    expect([plannedMm(ROW, 'length'), plannedMm(ROW, 'thickness')]).toEqual([907, 28])
  })
})

describe('withMeasured', () => {
  it('follows and notes in one edit', () => {
    const design = withMeasured(DEFAULT_DESIGN, MEASURED, [{ field: 'walls.coreMm', value: 55 }])
    expect(design.walls.coreMm).toBe(55)
    expect(design.made.map(({ partId }) => partId)).toEqual(['rail-2'])
  })
})
