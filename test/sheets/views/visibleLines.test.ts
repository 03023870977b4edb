import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { box } from '../../../src/geometry/box.ts'
import { boxSolid, type Solid } from '../../../src/geometry/solid.ts'
import { FROM_ABOVE, FROM_FRONT, fromCorner } from '../../../src/sheets/views/projection.ts'
import { shapeOf } from '../../../src/sheets/views/shape.ts'
import { visibleLines } from '../../../src/sheets/views/visibleLines.ts'

const see = (solids: readonly (readonly [string, Solid])[], projection = FROM_FRONT) =>
  visibleLines(
    solids.map(([id, s]) => shapeOf(id, s, projection)),
    projection,
  ).lines

const total = (lines: ReturnType<typeof see>, kind: 'silhouette' | 'edge') =>
  lines
    .filter((l) => l.kind === kind)
    .reduce((sum, l) => sum + Math.hypot(l.b.u - l.a.u, l.b.v - l.a.v), 0)

/** Width and height seen from the front, from the left lower corner, at a depth. */
const slab = (x: number, y: number, w: number, h: number, z: number): Solid =>
  boxSolid(box([x, x + w], [y, y + h], [z, z + 10]))

describe('visibleLines', () => {
  it('draws a lone box as its four outer lines', () => {
    const lines = see([['a', slab(0, 0, 30, 20, 0)]])
    expect(lines).toHaveLength(4)
    expect(total(lines, 'silhouette')).toBeCloseTo(100, 6)
  })

  it('hides all of a box behind a larger one', () => {
    const lines = see([
      ['behind', slab(5, 5, 10, 10, 0)],
      ['before', slab(0, 0, 30, 20, 10)],
    ])
    expect(lines.map((l) => l.partId)).toEqual(Array(4).fill('before'))
  })

  it('draws a smaller box before a larger one as edges inside the silhouette', () => {
    const lines = see([
      ['behind', slab(0, 0, 30, 20, 0)],
      ['before', slab(5, 5, 10, 10, 10)],
    ])
    expect(total(lines, 'silhouette')).toBeCloseTo(100, 6)
    expect(total(lines, 'edge')).toBeCloseTo(40, 6)
  })

  it('draws no line where two pieces of one part lie flush, but one between two parts', () => {
    const left = slab(0, 0, 30, 20, 0)
    const right = slab(30, 0, 30, 20, 0)
    expect(
      total(
        see([
          ['a', left],
          ['a', right],
        ]),
        'edge',
      ),
    ).toBeCloseTo(0, 6)
    const two = see([
      ['a', left],
      ['b', right],
    ])
    expect(total(two, 'edge')).toBeCloseTo(20, 6)
    expect(total(two, 'silhouette')).toBeCloseTo(160, 6)
  })

  it('shows the ridge of a sloping solid from above', () => {
    const roof: Solid = {
      kind: 'prism',
      axis: 'x',
      polygon: [
        { u: 0, v: 0 },
        { u: 20, v: 0 },
        { u: 10, v: 5 },
      ],
      from: 0,
      to: 50,
    }
    const lines = see([['roof', roof]], FROM_ABOVE)
    expect(total(lines, 'silhouette')).toBeCloseTo(140, 6)
    expect(total(lines, 'edge')).toBeCloseTo(50, 6)
  })

  it('never changes the outline of a wall when hidden boxes stand behind it', () => {
    const size = fc.integer({ min: 1, max: 20 })
    const hidden = fc.tuple(size, size, size, size).map(([x, y, w, h]) => slab(x, y, w, h, -20))
    fc.assert(
      fc.property(fc.array(hidden, { maxLength: 5 }), (boxes) => {
        const wall = slab(0, 0, 50, 50, 0)
        const lines = see([['wall', wall], ...boxes.map((b, i) => [`b${i}`, b] as const)])
        expect(lines).toEqual(see([['wall', wall]]))
      }),
      { numRuns: 50 },
    )
  })

  it('shows nine edges of a box seen from a corner', () => {
    const lines = see([['a', slab(0, 0, 30, 20, 0)]], fromCorner(-30, 25))
    expect(lines).toHaveLength(9)
    expect(lines.filter((l) => l.kind === 'edge')).toHaveLength(3)
  })
})
