import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import { boxSolid, type Solid } from '../../src/geometry/solid.ts'
import { ORIGIN, type Vec3, vec3 } from '../../src/geometry/vector.ts'
import type { PartPose } from '../../src/scene/pose.ts'
import { cutSolid, type SectionPlane, sectionCaps } from '../../src/scene/sectionCaps.ts'
import { samplePart } from './sampleHive.ts'

const STILL: PartPose = { translation: ORIGIN, turn: undefined, hidden: false }
const turnedBy = (deg: number): PartPose => ({
  ...STILL,
  turn: { angleRad: (deg * Math.PI) / 180, pivot: ORIGIN },
})
const board = boxSolid(box([0, 100], [-10, 10], [-30, 30]))

/** Area of a flat polygon in space: half the length of the summed cross products. */
const areaOf = (points: readonly Vec3[] | undefined): number => {
  const sum = { x: 0, y: 0, z: 0 }
  points?.forEach((a, i) => {
    const b = points[(i + 1) % points.length] ?? a
    sum.x += a.y * b.z - a.z * b.y
    sum.y += a.z * b.x - a.x * b.z
    sum.z += a.x * b.y - a.y * b.x
  })
  return Math.hypot(sum.x, sum.y, sum.z) / 2
}

describe('cutSolid', () => {
  it('cuts a box across x in its end section', () => {
    const cut = cutSolid(board, STILL, { axis: 'x', at: 40 })
    expect(cut).toHaveLength(4)
    expect(cut?.every((p) => p.x === 40)).toBe(true)
    expect(areaOf(cut)).toBeCloseTo(20 * 60, 9)
  })

  it('keeps the area across x when the part is turned about x', () => {
    expect(areaOf(cutSolid(board, turnedBy(33), { axis: 'x', at: 40 }))).toBeCloseTo(1200, 9)
  })

  it('cuts a tilted board across z in a longer section', () => {
    // Its faces lean 60 degrees from the level, so upright through it measures 20 / cos 60.
    const cut = cutSolid(board, turnedBy(60), { axis: 'z', at: 0 })
    expect(areaOf(cut)).toBeCloseTo((100 * 20) / Math.cos(Math.PI / 3), 6)
  })

  it('cuts a wedge across its axis in its own triangle', () => {
    const wedge: Solid = {
      kind: 'prism',
      axis: 'z',
      polygon: [
        { u: 0, v: 0 },
        { u: 40, v: 0 },
        { u: 0, v: 30 },
      ],
      from: 0,
      to: 10,
    }
    const cut = cutSolid(wedge, STILL, { axis: 'z', at: 5 })
    expect(cut).toHaveLength(3)
    expect(areaOf(cut)).toBeCloseTo(600, 9)
    // Across x at 20 the triangle is half as high.
    expect(areaOf(cutSolid(wedge, STILL, { axis: 'x', at: 20 }))).toBeCloseTo(15 * 10, 9)
  })

  it('finds nothing where the plane misses', () => {
    expect(cutSolid(board, STILL, { axis: 'x', at: 101 })).toBeUndefined()
    expect(cutSolid(board, STILL, { axis: 'z', at: -31 })).toBeUndefined()
  })
})

describe('sectionCaps', () => {
  const plane: SectionPlane = { axis: 'x', at: 50 }
  const tee = samplePart('tee', [
    boxSolid(box([0, 100], [0, 10], [0, 30])),
    boxSolid(box([0, 100], [10, 20], [10, 20])),
  ])

  it('fills each piece and outlines the part without the seam between them', () => {
    const [cap] = sectionCaps([{ part: tee, pose: STILL }], plane)
    expect(cap?.pieces.reduce((sum, piece) => sum + areaOf(piece), 0)).toBeCloseTo(300 + 100, 9)
    let around = 0
    const outline = cap?.outline ?? []
    for (let i = 0; i < outline.length; i += 6) {
      const d = [0, 1, 2].map((k) => (outline[i + 3 + k] ?? 0) - (outline[i + k] ?? 0))
      around += Math.hypot(...d)
      expect(outline[i]).toBe(50)
    }
    // Round a T: twice the bar's 30 + 10 and twice the stem's 10.
    expect(around).toBeCloseTo(100, 9)
  })

  it('follows a part that has moved', () => {
    const pose = { ...STILL, translation: vec3(-30, 0, 0) }
    expect(sectionCaps([{ part: tee, pose }], { axis: 'x', at: 75 })).toEqual([])
    expect(sectionCaps([{ part: tee, pose }], { axis: 'x', at: 65 })).toHaveLength(1)
  })

  it('leaves out hidden parts', () => {
    expect(sectionCaps([{ part: tee, pose: { ...STILL, hidden: true } }], plane)).toEqual([])
  })
})
