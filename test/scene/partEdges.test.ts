import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import { boxSolid, type PrismSolid } from '../../src/geometry/solid.ts'
import { partEdges } from '../../src/scene/partEdges.ts'
import { samplePart } from './sampleHive.ts'

const wedge = (from: number, to: number): PrismSolid => ({
  kind: 'prism',
  axis: 'x',
  polygon: [
    { u: 0, v: 0 },
    { u: 4, v: 0 },
    { u: 0, v: 3 },
  ],
  from,
  to,
})

describe('partEdges', () => {
  it('gives a wedge on a triangle nine edges', () => {
    expect(partEdges(samplePart('wedge', [wedge(0, 10)])).length / 6).toBe(9)
  })

  it('draws the common end of two wedges once', () => {
    expect(partEdges(samplePart('wedges', [wedge(0, 10), wedge(10, 20)])).length / 6).toBe(15)
  })

  it('puts a shape that it has seen before in its own place', () => {
    const solidsAt = (x: number) => [
      boxSolid(box([x, x + 10], [0, 5], [0, 5])),
      boxSolid(box([x + 10, x + 30], [0, 2], [0, 5])),
    ]
    const first = partEdges(samplePart('first', solidsAt(0)))
    const second = partEdges(samplePart('second', solidsAt(250)))
    expect(second).toEqual(first.map((v, i) => (i % 3 === 0 ? v + 250 : v)))
  })

  it('is empty for a part without solids', () => {
    expect(partEdges(samplePart('nothing', []))).toEqual([])
  })
})
