import { describe, expect, it } from 'vitest'
import { box } from '../../../src/geometry/box.ts'
import { boxSolid, polygonArea, type Solid } from '../../../src/geometry/solid.ts'
import { cutSolid } from '../../../src/sheets/views/cutSolid.ts'
import { boundsOf } from '../../../src/sheets/views/polygon2.ts'

const BOX = boxSolid(box([0, 30], [5, 25], [-10, 40]))

/** A wedge along x: 10 high at z = 0, 20 at z = 100. */
const WEDGE: Solid = {
  kind: 'prism',
  axis: 'x',
  polygon: [
    { u: 0, v: 0 },
    { u: 100, v: 0 },
    { u: 100, v: 20 },
    { u: 0, v: 10 },
  ],
  from: 0,
  to: 50,
}

describe('cutSolid', () => {
  it('cuts a box to a rectangle, with the front at the left when seen from the right-hand end', () => {
    const face = cutSolid(BOX, { axis: 'x', at: 10 }) ?? []
    expect(boundsOf(face)).toEqual({ u0: -40, u1: 10, v0: 5, v1: 25 })
    const other = cutSolid(BOX, { axis: 'x', at: 10 }, 'from-minus') ?? []
    expect(boundsOf(other)).toEqual({ u0: -10, u1: 40, v0: 5, v1: 25 })
  })

  it('cuts lengthwise with the left end at the left', () => {
    expect(boundsOf(cutSolid(BOX, { axis: 'z', at: 0 }) ?? [])).toEqual({
      u0: 0,
      u1: 30,
      v0: 5,
      v1: 25,
    })
  })

  it('misses what the plane does not go through, and cuts one of two solids that meet at it', () => {
    expect(cutSolid(BOX, { axis: 'x', at: -1 })).toBeUndefined()
    expect(cutSolid(BOX, { axis: 'x', at: 0 })).toBeDefined()
    expect(cutSolid(BOX, { axis: 'x', at: 30 })).toBeUndefined()
  })

  it('gives the whole polygon of a prism cut across', () => {
    // Mean height 15 over 100 mm.
    expect(polygonArea(cutSolid(WEDGE, { axis: 'x', at: 25 }) ?? [])).toBeCloseTo(1500, 9)
  })

  it('cuts a sloping prism lengthwise at the height it has there', () => {
    // At z = 30 the wedge is 13 high.
    const face = cutSolid(WEDGE, { axis: 'z', at: 30 }) ?? []
    expect(boundsOf(face)).toEqual({ u0: 0, u1: 50, v0: 0, v1: 13 })
  })

  it('cuts an upright prism', () => {
    const post: Solid = {
      kind: 'prism',
      axis: 'y',
      polygon: [
        { u: 0, v: 0 },
        { u: 10, v: 0 },
        { u: 0, v: 10 },
      ],
      from: 0,
      to: 100,
    }
    const face = cutSolid(post, { axis: 'x', at: 4 }) ?? []
    const b = boundsOf(face)
    expect([b.u0, b.u1 + 0, b.v0, b.v1]).toEqual([-6, 0, 0, 100])
  })
})
