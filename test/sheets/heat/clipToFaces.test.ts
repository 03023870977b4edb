import { describe, expect, it } from 'vitest'
import { polygonArea } from '../../../src/geometry/solid.ts'
import { clipLines, clipLoop } from '../../../src/sheets/heat/clipToFaces.ts'

const p = (u: number, v: number) => ({ u, v })
const rectangle = (u0: number, u1: number, v0: number, v1: number) => [
  p(u0, v0),
  p(u1, v0),
  p(u1, v1),
  p(u0, v1),
]

const lengths = (lines: readonly (readonly { u: number; v: number }[])[]) =>
  lines.map((line) =>
    line
      .slice(1)
      .reduce((sum, b, i) => sum + Math.hypot(b.u - (line[i]?.u ?? 0), b.v - (line[i]?.v ?? 0)), 0),
  )

describe('clipLines', () => {
  const wall = rectangle(0, 10, 0, 100)
  const lid = rectangle(0, 50, 100, 120)

  it('keeps a line in one piece over the joint of two faces', () => {
    const line = [p(5, 50), p(5, 90), p(5, 110), p(5, 115)]
    const kept = clipLines([line], [wall, lid])
    expect(kept).toHaveLength(1)
    expect(lengths(kept)[0]).toBeCloseTo(65, 6)
  })

  it('cuts a line off where the matter ends, to the slack', () => {
    const [line] = clipLines([[p(5, 50), p(25, 50)]], [wall])
    expect(line?.[0]).toEqual(p(5, 50))
    expect(Math.abs((line?.at(-1)?.u ?? 0) - 10)).toBeLessThan(0.03)
  })

  it('parts a line that goes through air', () => {
    const right = rectangle(40, 50, 0, 100)
    const kept = clipLines([[p(-5, 20), p(60, 20)]], [wall, right])
    expect(lengths(kept).map((l) => Math.round(l))).toEqual([10, 10])
  })

  it('leaves nothing of a line in air', () => {
    expect(clipLines([[p(20, 20), p(30, 20), p(30, 40)]], [wall, lid])).toEqual([])
    expect(clipLines([[p(5, 5), p(6, 6)]], [])).toEqual([])
  })
})

describe('clipLoop', () => {
  const face = rectangle(0, 10, 0, 10)

  it('keeps what lies in the face, however it runs', () => {
    const loop = rectangle(5, 20, -5, 5)
    expect(polygonArea(clipLoop(loop, face))).toBeCloseTo(25, 9)
    expect(polygonArea(clipLoop(loop.toReversed(), face))).toBeCloseTo(25, 9)
  })

  it('is the loop itself within the face, the face within a large loop, and else nothing', () => {
    expect(clipLoop(rectangle(2, 4, 2, 4), face)).toEqual(rectangle(2, 4, 2, 4))
    expect(polygonArea(clipLoop(rectangle(-90, 90, -90, 90), face))).toBeCloseTo(100, 9)
    expect(clipLoop(rectangle(20, 30, 0, 10), face)).toEqual([])
  })

  it('follows a sloping edge', () => {
    const slope = [p(0, 0), p(10, 0), p(10, 10)]
    expect(polygonArea(clipLoop(rectangle(0, 10, 0, 5), slope))).toBeCloseTo(37.5, 9)
  })
})
