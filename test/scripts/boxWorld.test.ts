import { describe, expect, it } from 'vitest'
import type { BoxFile } from '../../scripts/boxFile.ts'
import { buildBoxWorld } from '../../scripts/boxWorld.ts'

const FILE: BoxFile = {
  boxes: [
    { name: 'shell', x0: 0, x1: 1, y0: 0, y1: 2, z0: 0, z1: 3, k: 0.12 },
    { name: 'sheet', x0: 0, x1: 1, y0: 0, y1: 2, z0: 3, z1: 3, k: 160 },
  ],
  cavity: { x0: 0.1, x1: 0.9, y0: 0.2, y1: 1.8, z0: 0.3, z1: 2.7 },
  bc: { Ti: 35, Te: -5, Rsi: 0.13, Rse: 0.04 },
}

describe('buildBoxWorld', () => {
  it('turns the height of the file, z, into the second axis, and puts the cavity last', () => {
    const { blocks } = buildBoxWorld(FILE).world
    expect(blocks).toEqual([
      { kind: 'solid', minM: [0, 0, 0], maxM: [1, 3, 2], conductivityWPerMK: 0.12 },
      { kind: 'air', minM: [0.1, 0.3, 0.2], maxM: [0.9, 2.7, 1.8], environment: 1 },
    ])
  })

  it('has the outside around all, and the resistances in all directions', () => {
    const { environments, background, beyond } = buildBoxWorld(FILE).world
    const six = (r: number) => [r, r, r, r, r, r]
    expect(environments).toEqual([
      { temperatureC: -5, surfaceResistanceM2KPerW: six(0.04) },
      { temperatureC: 35, surfaceResistanceM2KPerW: six(0.13) },
    ])
    expect([background, ...beyond]).toEqual([0, 0, 0, 0, 0, 0, 0])
  })

  it('leaves out a box without thickness and says so', () => {
    expect(buildBoxWorld(FILE).warnings).toEqual([
      'boxes[1] (sheet) has no thickness and is left out.',
    ])
  })

  it("is graded, unless the file's own uniform mesh is asked for", () => {
    const gridded = { ...FILE, grid: { h: 0.015, min_cells: 2 } }
    const uniform = { leastCellM: 0.015, greatestCellM: 0.015, growth: 1, cellsPerGap: 2 }
    expect(buildBoxWorld(gridded, { useFileGrid: true }).mesh).toMatchObject(uniform)
    const graded = { growth: 1.5, greatestCellM: 0.04 }
    expect(buildBoxWorld(gridded).mesh).toMatchObject({ ...graded, leastCellM: 0.002 })
    expect(buildBoxWorld(FILE, { leastMm: 4, useFileGrid: true }).mesh).toMatchObject({
      ...graded,
      leastCellM: 0.004,
    })
    expect(buildBoxWorld(FILE, { leastMm: 60 }).mesh).toMatchObject({
      leastCellM: 0.06,
      greatestCellM: 0.06,
    })
  })
})
