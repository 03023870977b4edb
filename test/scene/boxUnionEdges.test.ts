import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import { boxUnionEdges } from '../../src/scene/boxUnionEdges.ts'

const totalLength = (segments: readonly number[]): number => {
  let sum = 0
  for (let i = 0; i < segments.length; i += 6) {
    const d = [0, 1, 2].map((k) => (segments[i + 3 + k] ?? 0) - (segments[i + k] ?? 0))
    sum += Math.hypot(...d)
  }
  return sum
}

describe('boxUnionEdges', () => {
  it('gives one box its twelve edges', () => {
    const edges = boxUnionEdges([box([0, 2], [0, 3], [0, 5])])
    expect(edges.length / 6).toBe(12)
    expect(totalLength(edges)).toBe(4 * (2 + 3 + 5))
  })

  it('shows no seam where two boxes make one longer box', () => {
    const edges = boxUnionEdges([box([0, 2], [0, 3], [0, 5]), box([2, 7], [0, 3], [0, 5])])
    expect(edges.length / 6).toBe(12)
    expect(totalLength(edges)).toBe(4 * (7 + 3 + 5))
  })

  it('shows the inner corner of an L', () => {
    // An L of three unit squares, 1 thick: two outlines of 8 and six uprights of 1.
    const edges = boxUnionEdges([box([0, 2], [0, 1], [0, 1]), box([0, 1], [1, 2], [0, 1])])
    expect(totalLength(edges)).toBe(2 * 8 + 6)
  })

  it('shows the rim of a hole framed by four boxes, on both faces, and its corners', () => {
    const edges = boxUnionEdges([
      box([0, 10], [0, 4], [0, 1]),
      box([0, 10], [6, 10], [0, 1]),
      box([0, 3], [4, 6], [0, 1]),
      box([7, 10], [4, 6], [0, 1]),
    ])
    // Outside 2 x 40 + 4, hole 2 x 12 + 4.
    expect(totalLength(edges)).toBe(84 + 28)
  })

  it('keeps the common edge of two boxes that meet only there', () => {
    const edges = boxUnionEdges([box([0, 1], [0, 1], [0, 1]), box([1, 2], [1, 2], [0, 1])])
    expect(totalLength(edges)).toBe(2 * 12 - 1)
  })
})
