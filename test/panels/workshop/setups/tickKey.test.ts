import { describe, expect, it } from 'vitest'
import { isSetUpDone, tickKey, ticksOf } from '../../../../src/panels/workshop/setups/tickKey.ts'
import type { SetUp } from '../../../../src/reports/shop/setups/setUpReport.ts'

const SET_UP: SetUp = {
  number: 4,
  kind: 'rip',
  tool: 'Table saw, rip fence',
  setting: { kind: 'length', mm: 144 },
  further: [],
  stock: 'Spruce 20 × 144',
  materialName: 'Spruce',
  rows: [
    { label: 'A', name: 'Cladding', count: 3 },
    { label: 'B', name: 'Cladding', count: 1 },
  ],
  usesStopBlock: false,
  advice: [],
  problem: undefined,
}

const keys = SET_UP.rows.map((row) => tickKey('hive', SET_UP, row))

describe('tickKey', () => {
  it('tells rows of one name apart', () => {
    expect(new Set(keys).size).toBe(2)
  })

  it('outlives another number of the card, but not another setting', () => {
    const later = SET_UP.rows.map((row) => tickKey('hive', { ...SET_UP, number: 9 }, row))
    expect(later).toEqual(keys)
    const wider: SetUp = { ...SET_UP, setting: { kind: 'length', mm: 145 } }
    expect(SET_UP.rows.map((row) => tickKey('hive', wider, row))).not.toContain(keys[0])
  })
})

describe('ticksOf', () => {
  it('is never more than there are pieces', () => {
    expect(ticksOf({ key: 7 }, 'key', 3)).toBe(3)
    expect(ticksOf({}, 'key', 3)).toBe(0)
  })
})

describe('isSetUpDone', () => {
  it('wants every piece of every row', () => {
    const [a = '', b = ''] = keys
    expect(isSetUpDone({ [a]: 3 }, 'hive', SET_UP)).toBe(false)
    expect(isSetUpDone({ [a]: 2, [b]: 1 }, 'hive', SET_UP)).toBe(false)
    expect(isSetUpDone({ [a]: 3, [b]: 1 }, 'hive', SET_UP)).toBe(true)
  })
})
