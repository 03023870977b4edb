import { describe, expect, it } from 'vitest'
import { colonyRooms } from '../../../src/reports/checks/colonies.ts'
import { measured, SAMPLE, withFields } from './sampleHive.ts'

describe('colonyRooms', () => {
  it('is one room for one colony, whatever followers stand in it', () => {
    const { row, dimensions } = measured(SAMPLE)
    expect(colonyRooms({ row })).toEqual([
      { colony: 1, frames: 24, x0: 0, x1: dimensions.cavityLength },
    ])
  })

  it('is parted by the divider; places left empty hold no frames', () => {
    const parted = withFields(SAMPLE, [
      { field: 'cavity.divider', value: 'fitted' },
      { field: 'cavity.dividerAfterFrame', value: 10 },
      { field: 'cavity.emptyPlaces', value: 4 },
    ])
    const rooms = colonyRooms(measured(parted))
    expect(rooms.map(({ colony, frames }) => [colony, frames])).toEqual([
      [1, 10],
      [2, 10],
    ])
    const [left, right] = rooms
    expect((right?.x0 ?? 0) - (left?.x1 ?? 0)).toBe(SAMPLE.cavity.dividerThicknessMm)
  })
})
