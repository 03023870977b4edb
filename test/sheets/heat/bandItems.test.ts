import { describe, expect, it } from 'vitest'
import { polygonArea } from '../../../src/geometry/solid.ts'
import type { Part } from '../../../src/hive/part.ts'
import type { DrawingItem } from '../../../src/sheets/drawing.ts'
import { bandItems } from '../../../src/sheets/heat/bandItems.ts'
import type { HeatBand } from '../../../src/sheets/heat/heatBands.ts'
import type { FieldSlice } from '../../../src/sheets/heat/sliceField.ts'
import { cutParts } from '../../../src/sheets/views/cutParts.ts'

const band = (from: number, to: number, r: number): HeatBand => ({
  from,
  to,
  colour: { r, g: 0, b: 0 },
})
const BANDS = [band(0, 0.25, 1), band(0.25, 0.5, 2), band(0.5, 0.75, 3), band(0.75, 1, 4)]

/** A board 100 long and 20 high in the plane of a section along. */
const BOARD: Part = {
  id: 'board',
  name: 'Board',
  group: 'front-wall',
  motion: 'fixed',
  material: 'spruce',
  size: { length: 100, width: 20, thickness: 20 },
  grain: 'x',
  solids: [{ kind: 'box', box: { x0: 0, x1: 100, y0: 0, y1: 20, z0: -10, z1: 10 } }],
  operations: [],
  fixedTo: [],
  explode: { direction: { x: 0, y: 0, z: 1 }, layer: 0 },
  step: 1,
  bought: false,
}

/** Rises evenly along the board, from `from` to `to`, and is 0 beyond it. */
const slice = (from: number, to: number): FieldSlice => {
  const us = [-50, 0, 50, 100, 150]
  const at = (u: number) => (u < 0 || u > 100 ? 0 : from + ((to - from) * u) / 100)
  return {
    uMm: Float64Array.from(us),
    vMm: Float64Array.from([-20, 0, 20, 40]),
    value: Float64Array.from([...us, ...us, ...us, ...us].map(at)),
  }
}

const VIEW = { scale: 1, origin: { x: 0, y: 0 } }

const areas = (items: readonly DrawingItem[]) =>
  items.flatMap((i) =>
    i.kind === 'colour'
      ? [
          [
            i.colour.r,
            i.loops.reduce((s, l) => s + polygonArea(l.map((p) => ({ u: p.x, v: p.y }))), 0),
          ],
        ]
      : [],
  )

const draw = (from: number, to: number) =>
  areas(bandItems(cutParts([BOARD], { axis: 'z', at: 0 }), slice(from, to), BANDS, VIEW))

describe('bandItems', () => {
  it('lays each warmer band over the colder ones, from its isotherm on', () => {
    // From 0.1 to 0.9 over 100 mm: 0.25 is at 18.75, 0.5 at 50, 0.75 at 81.25, times a height of 20.
    const drawn = draw(0.1, 0.9)
    expect(drawn.map(([r]) => r)).toEqual([1, 2, 3, 4])
    ;[2000, 1625, 1000, 375].forEach((area, i) => {
      expect(drawn[i]?.[1]).toBeCloseTo(area, 9)
    })
  })

  it('needs one ground for a face in one band, whatever the air beyond its edges is', () => {
    expect(draw(0.55, 0.7)).toEqual([[3, 2000]])
  })

  it('starts at the coldest band that the face has', () => {
    expect(draw(0.3, 0.6).map(([r]) => r)).toEqual([2, 3])
  })

  it('fills a face beyond the grid too', () => {
    const far = {
      ...BOARD,
      solids: [{ kind: 'box', box: { x0: 900, x1: 910, y0: 0, y1: 20, z0: -1, z1: 1 } }],
    } as const
    const drawn = areas(
      bandItems(cutParts([far], { axis: 'z', at: 0 }), slice(0.1, 0.9), BANDS, VIEW),
    )
    expect(drawn).toEqual([[1, 200]])
  })
})
