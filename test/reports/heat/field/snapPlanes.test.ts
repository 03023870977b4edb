import { describe, expect, it } from 'vitest'
import { type Box, box } from '../../../../src/geometry/box.ts'
import type { HeatBlock } from '../../../../src/reports/heat/field/heatBlock.ts'
import { solid } from '../../../../src/reports/heat/field/heatBlock.ts'
import { snapPlanes } from '../../../../src/reports/heat/field/snapPlanes.ts'

const across = [0, 100] as const
const slab = (x0: number, x1: number, isLoose = false): HeatBlock => ({
  placeMm: box([x0, x1], across, across),
  matter: solid(1),
  partId: undefined,
  side: undefined,
  isLoose,
})
const spans = (blocks: readonly HeatBlock[]): readonly (readonly number[])[] =>
  snapPlanes(blocks).map(({ placeMm: { x0, x1 } }: { placeMm: Box }) => [x0, x1])

describe('snapPlanes', () => {
  it('leaves layers of a millimetre alone', () => {
    expect(spans([slab(0, 10), slab(10, 11), slab(11, 30)])).toEqual([
      [0, 10],
      [10, 11],
      [11, 30],
    ])
  })

  it('makes firm faces within 0.6 mm one, so that what nearly touched touches', () => {
    expect(spans([slab(0, 10), slab(10.5, 30)])).toEqual([
      [0, 10],
      [10, 30],
    ])
  })

  it('does not draw a row of near faces together into one', () => {
    expect(spans([slab(0, 10), slab(10.5, 11), slab(11.4, 30)])).toEqual([
      [0, 10],
      [10, 11],
      [11, 30],
    ])
  })

  it('moves a loose face to a firm one within 1.5 mm, never a firm one to a loose', () => {
    expect(spans([slab(0, 10), slab(11.2, 30, true)])).toEqual([
      [0, 10],
      [10, 30],
    ])
    expect(spans([slab(0, 10), slab(12, 30, true)])).toEqual([
      [0, 10],
      [12, 30],
    ])
  })

  it('leaves out a block that has no thickness left', () => {
    expect(spans([slab(0, 10), slab(10, 10.4), slab(10.4, 30)])).toEqual([
      [0, 10],
      [10, 30],
    ])
  })
})
