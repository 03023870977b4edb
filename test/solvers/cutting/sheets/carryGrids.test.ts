import { describe, expect, it } from 'vitest'
import { listCarryGrids } from '../../../../src/solvers/cutting/sheets/carryGrids.ts'

describe('listCarryGrids', () => {
  it('is one cell without a limit, or where the sheet fits either way round', () => {
    const sheet = { length: 2440, width: 1220 }
    expect(listCarryGrids(sheet, undefined)).toHaveLength(1)
    const [grid, ...others] = listCarryGrids(sheet, { length: 1220, width: 2440 })
    expect(grid).toMatchObject({ sections: 1, cells: 1 })
    expect(others).toEqual([])
  })

  it('has the fewest pieces first', () => {
    // Halves of 1220 × 1220 with the limit's length across; the other way round three by two.
    const grids = listCarryGrids({ length: 2440, width: 1220 }, { length: 1000, width: 1250 })
    const pieces = grids.map(({ sections, cells }) => sections * cells)
    expect(pieces[0]).toBe(3)
    expect(pieces).toEqual([...pieces].sort((a, b) => a - b))
  })
})
