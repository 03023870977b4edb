import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import { separation, touches } from '../../src/geometry/separation.ts'
import { boxSolid, type PrismSolid, type Solid } from '../../src/geometry/solid.ts'
import { solidCorners } from '../../src/geometry/solidFrame.ts'

const block = (
  x: readonly [number, number],
  y: readonly [number, number],
  z: readonly [number, number],
): Solid => boxSolid(box(x, y, z))

const cube = block([0, 10], [0, 10], [0, 10])

/** A wedge along x, from z = 0 to 40, that rises from 0 to 30 at its end: slope 3 in 4. */
const wedge: PrismSolid = {
  kind: 'prism',
  axis: 'x',
  from: 0,
  to: 100,
  polygon: [
    { u: 0, v: 0 },
    { u: 40, v: 0 },
    { u: 40, v: 30 },
  ],
}

/** A slab that lies on the wedge's slope, `gap` above it, 5 thick. The slope's normal is (-3, 4) / 5. */
const slabOnWedge = (gap: number, thickness = 5): PrismSolid => {
  const at = (along: number, over: number) => ({
    u: along * 0.8 - over * 0.6,
    v: along * 0.6 + over * 0.8,
  })
  return {
    kind: 'prism',
    axis: 'x',
    from: 0,
    to: 100,
    polygon: [at(0, gap), at(50, gap), at(50, gap + thickness), at(0, gap + thickness)],
  }
}

describe('solidCorners', () => {
  it('gives the eight corners of a box', () => {
    const corners = solidCorners(cube)
    expect(corners).toHaveLength(8)
    expect(corners.filter(({ x, y, z }) => x + y + z === 10)).toHaveLength(3)
  })

  it('puts a prism along each axis where its bounds are', () => {
    const polygon = [
      { u: 1, v: 2 },
      { u: 3, v: 2 },
      { u: 1, v: 5 },
    ]
    const first = (axis: PrismSolid['axis']) =>
      solidCorners({ kind: 'prism', axis, polygon, from: 7, to: 9 })[0]
    expect(first('x')).toEqual({ x: 7, y: 2, z: 1 })
    expect(first('y')).toEqual({ x: 1, y: 7, z: 2 })
    expect(first('z')).toEqual({ x: 1, y: 2, z: 7 })
  })
})

describe('separation', () => {
  it('is the gap between two boxes', () => {
    expect(separation(cube, block([13, 20], [0, 10], [0, 10]))).toBe(3)
    expect(separation(cube, block([0, 10], [-9, -4], [0, 10]))).toBe(4)
  })

  it('is the larger of two gaps for boxes apart along two axes', () => {
    expect(separation(cube, block([13, 20], [15, 20], [0, 10]))).toBe(5)
  })

  it('is zero for boxes that share a face', () => {
    expect(separation(cube, block([0, 10], [10, 12], [0, 10]))).toBe(0)
  })

  it('is the negative depth for boxes that overlap', () => {
    expect(separation(cube, block([8, 20], [4, 6], [3, 20]))).toBe(-2)
  })

  it('is the distance across the slope for a slab over a wedge', () => {
    expect(separation(wedge, slabOnWedge(2))).toBeCloseTo(2, 9)
    expect(separation(wedge, slabOnWedge(0))).toBeCloseTo(0, 9)
    expect(separation(wedge, slabOnWedge(-1))).toBeCloseTo(-1, 9)
  })

  it('does not call a box in the empty corner over a wedge an overlap', () => {
    // The bounds overlap, yet the box's nearest corner (z 8, y 16) is 16 × 0.8 - 8 × 0.6 = 8 off.
    expect(separation(wedge, block([0, 100], [16, 20], [0, 8]))).toBeCloseTo(8, 9)
  })

  it('finds the depth of a box in a wedge', () => {
    // The corner (z 8, y 4) is 4 × 0.8 - 8 × 0.6 = -1.6: 1.6 inside the slope.
    expect(separation(wedge, block([0, 100], [4, 20], [0, 8]))).toBeCloseTo(-1.6, 9)
  })

  it('parts a prism along z from a prism along x', () => {
    const post: PrismSolid = {
      kind: 'prism',
      axis: 'z',
      from: 43,
      to: 50,
      polygon: [
        { u: 0, v: 0 },
        { u: 10, v: 0 },
        { u: 5, v: 10 },
      ],
    }
    expect(separation(wedge, post)).toBe(3)
  })

  it('does not depend on the order, nor on the solids being told as prisms', () => {
    const side = fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 20 }))
    const arbitraryBox = fc
      .tuple(side, side, side)
      .map(([x, y, z]) => box([x[0], x[0] + x[1]], [y[0], y[0] + y[1]], [z[0], z[0] + z[1]]))
    const asPrism = (s: ReturnType<typeof box>): PrismSolid => ({
      kind: 'prism',
      axis: 'y',
      from: s.y0,
      to: s.y1,
      polygon: [
        { u: s.x0, v: s.z0 },
        { u: s.x1, v: s.z0 },
        { u: s.x1, v: s.z1 },
        { u: s.x0, v: s.z1 },
      ],
    })
    fc.assert(
      fc.property(arbitraryBox, arbitraryBox, (a, b) => {
        const gap = separation(boxSolid(a), boxSolid(b))
        expect(separation(boxSolid(b), boxSolid(a))).toBe(gap)
        expect(separation(asPrism(a), boxSolid(b))).toBe(gap)
      }),
      { numRuns: 300, seed: 12 },
    )
  })
})

describe('touches', () => {
  const tolerance = 0.001

  it('is true for boxes that share a patch of a face', () => {
    expect(touches(cube, block([10, 20], [4, 6], [9, 30]), tolerance)).toBe(true)
  })

  it('is false for a gap or an overlap beyond the tolerance', () => {
    expect(touches(cube, block([10.01, 20], [0, 10], [0, 10]), tolerance)).toBe(false)
    expect(touches(cube, block([9.99, 20], [0, 10], [0, 10]), tolerance)).toBe(false)
  })

  it('is false for boxes that meet in an edge or a corner only', () => {
    expect(touches(cube, block([10, 20], [10, 20], [0, 10]), tolerance)).toBe(false)
    expect(touches(cube, block([10, 20], [10, 20], [10, 20]), tolerance)).toBe(false)
  })

  it('is false for a common strip narrower than the patch', () => {
    expect(touches(cube, block([10, 20], [9.7, 20], [0, 10]), tolerance)).toBe(false)
    expect(touches(cube, block([10, 20], [9.3, 20], [0, 10]), tolerance)).toBe(true)
    expect(touches(cube, block([10, 20], [9.3, 20], [0, 10]), tolerance, 1)).toBe(false)
  })

  it('is true for a slab that lies on a slope, and false a hair above it', () => {
    expect(touches(wedge, slabOnWedge(0), tolerance)).toBe(true)
    expect(touches(wedge, slabOnWedge(0.01), tolerance)).toBe(false)
  })

  it('is true for a narrow strip with a gently sloping top that stands on a board', () => {
    // 18 wide, rising 1 in 100: seen along its top's normal the strip reaches into the board by 0.18 only.
    const strip: PrismSolid = {
      kind: 'prism',
      axis: 'x',
      from: 0,
      to: 100,
      polygon: [
        { u: 0, v: 0 },
        { u: 18, v: 0 },
        { u: 18, v: 10.18 },
        { u: 0, v: 10 },
      ],
    }
    expect(touches(strip, block([0, 100], [-6, 0], [0, 500]), tolerance)).toBe(true)
  })
})
