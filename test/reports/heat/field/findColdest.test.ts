import { describe, expect, it } from 'vitest'
import { findColdest } from '../../../../src/reports/heat/field/findColdest.ts'
import type { BlockSource } from '../../../../src/reports/heat/field/hiveHeatModel.ts'
import { listInsideFaces } from '../../../../src/reports/heat/field/insideFaces.ts'
import type { FieldGrid } from '../../../../src/solvers/conduction/fieldGrid.ts'
import { BOX, type MadeFace, madeField, panelFaces, SLOT } from './syntheticField.ts'

const SOURCES: readonly BlockSource[] = [
  { partId: undefined, side: undefined },
  { partId: 'front-wall/lining', side: 'front-wall' },
]

const coldestOf = (made: readonly MadeFace[], grid?: FieldGrid) => {
  const hive = { ...BOX, openings: [SLOT] }
  const field = madeField([...panelFaces(() => 1), ...made], grid && { grid })
  const faces = listInsideFaces(hive, { sources: SOURCES }, field)
  return findColdest(hive, { sources: SOURCES }, faces, field.grid)
}

describe('findColdest', () => {
  it('finds the least share and the part that has it', () => {
    const cold = { at: [900, 150, 200], direction: 4, least: 0.5, block: 1 } as const
    expect(coldestOf([cold])).toMatchObject({ fRsi: 0.5, partId: 'front-wall/lining' })
  })

  it('looks away from the openings only', () => {
    const washed = { at: [500, 89, 200], direction: 4, least: 0.25 } as const
    const away = { at: [500, 91, 200], direction: 4, least: 0.5 } as const
    expect(coldestOf([washed, away]).fRsi).toBe(0.5)
  })

  it('names the front left one of places equally cold', () => {
    const cold = ([x, z]: readonly [number, number]): MadeFace => ({
      ...{ at: [x, 2, z], direction: 3 },
      // Rounding makes one of them the coldest by nothing that matters.
      least: x === 999 && z === -199 ? 0.4999 : 0.5,
    })
    const places = [
      ...([999, 1] as const).flatMap((x) => ([-199, 199] as const).map((z) => [x, z] as const)),
    ]
    expect(coldestOf(places.map(cold)).place).toBe(
      'where the front wall, the left end wall and the floor meet',
    )
  })

  it('gives the corner of the face where the grid is coldest', () => {
    // Planes 0 and 20 mm along x, 0 and 10 up, 190 and 200 across; coldest at 20, 0, 200.
    const grid: FieldGrid = {
      xM: Float64Array.of(0, 0.02, 1),
      yM: Float64Array.of(0, 0.01),
      zM: Float64Array.of(0.19, 0.2),
      temperatureC: new Float32Array(12).fill(0.9),
    }
    grid.temperatureC[1 * 6 + 0 * 3 + 1] = 0.5
    const face = { at: [10, 0, 195], direction: 3, least: 0.5 } as const
    expect(coldestOf([face], grid).pointMm).toEqual([20, 0, 200])
  })
})
