import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Box } from '../../../src/geometry/box.ts'
import type { Axis } from '../../../src/geometry/vector.ts'
import { createShapeFinder } from '../../../src/reports/shop/partShape.ts'
import { at, piece } from './pieces.ts'

const shapeOf = (...args: Parameters<typeof piece>) => createShapeFinder()(piece(...args))

/** A board 100 long with a block on it: an L whose arms all differ, in one plane. */
const ell = [at(0, 0, 0, 100, 10, 20), at(0, 10, 0, 30, 15, 20)]

type Rows = readonly [readonly [Axis, 1 | -1], readonly [Axis, 1 | -1], readonly [Axis, 1 | -1]]

/** Boxes after a turn or a mirror: the new x, y, z each come from a signed old axis. */
const laid = (boxes: readonly Box[], rows: Rows): readonly Box[] =>
  boxes.map((b) => {
    const span = ([axis, sign]: readonly [Axis, 1 | -1]): [number, number] => {
      const [lo, hi] = [b[`${axis}0`], b[`${axis}1`]]
      return sign === 1 ? [lo, hi] : [-hi, -lo]
    }
    const [x, y, z] = rows.map(span)
    if (!x || !y || !z) throw new Error('three rows')
    return { x0: x[0], x1: x[1], y0: y[0], y1: y[1], z0: z[0], z1: z[1] }
  })

const MIRROR_X: Rows = [
  ['x', -1],
  ['y', 1],
  ['z', 1],
]
const HALF_TURN_Y: Rows = [
  ['x', -1],
  ['y', 1],
  ['z', -1],
]
const QUARTER_TURN_X: Rows = [
  ['x', 1],
  ['z', 1],
  ['y', -1],
]

/** Three boxes stepping in all three directions: a shape with a left and a right hand. */
const chiral = [at(0, 0, 0, 100, 40, 20), at(0, 40, 0, 30, 10, 20), at(0, 40, 20, 10, 10, 5)]

describe('createShapeFinder', () => {
  it('gives a plain box no shape', () => {
    expect(shapeOf([at(5, 6, 7, 100, 20, 10)])).toEqual({ own: '', mirror: '' })
  })

  it('gives a box made of two halves no shape', () => {
    expect(shapeOf([at(0, 0, 0, 50, 20, 10), at(50, 0, 0, 50, 20, 10)])).toEqual({
      own: '',
      mirror: '',
    })
  })

  it('does not see where a part stands', () => {
    const there = laid(ell, [
      ['x', 1],
      ['y', 1],
      ['z', 1],
    ]).map((b) => ({ ...b, x0: b.x0 + 7.3, x1: b.x1 + 7.3 }))
    expect(shapeOf(there)).toEqual(shapeOf(ell))
  })

  it('calls a flat L its own mirror image', () => {
    const { own, mirror } = shapeOf(ell)
    expect(own).toBe(mirror)
    expect(own).not.toBe('')
  })

  it('tells the hands of a shape that no turn makes equal', () => {
    const left = shapeOf(chiral)
    const right = shapeOf(laid(chiral, MIRROR_X))
    expect(left.own).not.toBe(right.own)
    expect(left.own).toBe(right.mirror)
    expect(left.mirror).toBe(right.own)
  })

  it('finds the same shape after half turns and quarter turns', () => {
    expect(shapeOf(laid(chiral, HALF_TURN_Y))).toEqual(shapeOf(chiral))
    expect(shapeOf(laid(chiral, QUARTER_TURN_X))).toEqual(shapeOf(chiral))
  })

  it('does not care into which boxes a notched board was divided', () => {
    const tall = [at(0, 0, 0, 30, 25, 20), at(30, 0, 0, 70, 10, 20)]
    expect(shapeOf(tall)).toEqual(shapeOf(ell))
  })

  it('turns a square section a quarter round its length, but not round its grain', () => {
    // A notch in the top of a 20 x 20 rail, and the same notch in its side.
    const top = [at(0, 0, 0, 100, 10, 20), at(0, 10, 0, 60, 10, 20)]
    const side = [at(0, 0, 0, 100, 20, 10), at(0, 0, 10, 60, 20, 10)]
    expect(shapeOf(top)).toEqual(shapeOf(side))
    // A square sheet: the same notch along the grain and across it.
    const along = [at(0, 0, 0, 50, 10, 40), at(0, 0, 40, 20, 10, 10)]
    const across = laid(along, [
      ['z', 1],
      ['y', 1],
      ['x', -1],
    ])
    expect(shapeOf(along, { grain: 'x' })).not.toEqual(shapeOf(across, { grain: 'x' }))
    expect(shapeOf(along, { grain: 'x' })).toEqual(shapeOf(across, { grain: 'z' }))
  })

  it('sees a notch in the very middle as symmetric although half its place is no round number', () => {
    // 19.05 mm is 3/4 in: its half, 9.525, lies between two hundredths.
    const stepped = [
      at(0, 0, 0, 100, 19.05, 20),
      at(0, 0, 20, 40, 9.525, 5),
      at(0, 9.525, 20, 20, 9.525, 5),
    ]
    const { own, mirror } = shapeOf([at(0, 0, 0, 100, 19.05, 20), at(0, 4.7625, 20, 40, 9.525, 5)])
    expect(own).toBe(mirror)
    expect(shapeOf(stepped).own).not.toBe(shapeOf(stepped).mirror)
  })

  it('tells a wedge that tapers one way from a level block and joins it with its turned twin', () => {
    const wedge = (low: number, high: number) =>
      ({
        kind: 'prism',
        axis: 'x',
        from: 0,
        to: 20,
        polygon: [
          { u: 0, v: 0 },
          { u: 300, v: 0 },
          { u: 300, v: high },
          { u: 0, v: low },
        ],
      }) as const
    expect(shapeOf([wedge(10, 30)])).toEqual(shapeOf([wedge(30, 10)]))
    expect(shapeOf([wedge(10, 30)])).not.toEqual(shapeOf([wedge(15, 30)]))
  })

  it('keeps the shape of any stack of blocks through any half turns and swaps it by any mirror', () => {
    const block = fc.record({
      length: fc.integer({ min: 10, max: 90 }),
      height: fc.integer({ min: 5, max: 30 }),
      depth: fc.integer({ min: 1, max: 20 }),
    })
    const signs = fc.tuple(
      fc.constantFrom(1, -1),
      fc.constantFrom(1, -1),
      fc.constantFrom(1, -1),
    ) as fc.Arbitrary<[1 | -1, 1 | -1, 1 | -1]>
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 4 }), signs, (blocks, [a, b, c]) => {
        let y = 40
        const boxes = [at(0, 0, 0, 100, 40, 20)]
        for (const { length, height, depth } of blocks) {
          boxes.push(at(0, y, 0, length, height, depth))
          y += height
        }
        const before = shapeOf(boxes)
        const after = shapeOf(
          laid(boxes, [
            ['x', a],
            ['y', b],
            ['z', c],
          ]),
        )
        expect(after).toEqual(a * b * c === 1 ? before : { own: before.mirror, mirror: before.own })
      }),
      { numRuns: 60 },
    )
  })
})
