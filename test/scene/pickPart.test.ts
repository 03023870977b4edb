import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import type { PrismSolid } from '../../src/geometry/solid.ts'
import { ORIGIN, vec3 } from '../../src/geometry/vector.ts'
import type { Part } from '../../src/hive/part.ts'
import { pickPart } from '../../src/scene/pickPart.ts'
import type { PartPose } from '../../src/scene/pose.ts'
import { samplePart } from './sampleHive.ts'

const STILL: PartPose = { translation: ORIGIN, turn: undefined, hidden: false }
const still = (...parts: readonly Part[]) => parts.map((part) => ({ part, pose: STILL }))
const near = samplePart('near', box([0, 100], [0, 100], [80, 100]))
const far = samplePart('far', box([0, 100], [0, 100], [0, 20]))
const ray = { origin: vec3(50, 50, 1000), direction: vec3(0, 0, -1) }

describe('pickPart', () => {
  it('finds the nearer of two parts whatever their order', () => {
    expect(pickPart(still(near, far), ray)?.part.id).toBe('near')
    expect(pickPart(still(far, near), ray)?.part.id).toBe('near')
  })

  it('tells where in the closed hive the ray meets the part, however the part is moved', () => {
    expect(pickPart(still(near), ray)?.closedPoint).toEqual(vec3(50, 50, 100))
    const pose = { ...STILL, translation: vec3(0, -10, 300) }
    expect(pickPart([{ part: near, pose }], ray)?.closedPoint).toEqual(vec3(50, 60, 100))
  })

  it('finds nothing beside the parts or behind the eye', () => {
    expect(pickPart(still(near), { ...ray, origin: vec3(150, 50, 1000) })).toBeUndefined()
    expect(pickPart(still(near), { ...ray, direction: vec3(0, 0, 1) })).toBeUndefined()
  })

  it('passes through what the section cuts away', () => {
    expect(pickPart(still(near, far), ray, { axis: 'z', at: 60 })?.part.id).toBe('far')
  })

  it('finds the part whose cut face the section shows', () => {
    expect(pickPart(still(near, far), ray, { axis: 'z', at: 90 })?.part.id).toBe('near')
  })

  it('follows moved and turned parts and ignores hidden ones', () => {
    const away = { ...STILL, translation: vec3(0, 200, 0) }
    const quarter = { ...STILL, turn: { angleRad: Math.PI / 2, pivot: vec3(0, 0, 100) } }
    const one = (pose: PartPose) => pickPart([{ part: near, pose }], ray)?.part.id
    expect(one(away)).toBeUndefined()
    // Turned about its far lower edge, the board lies flat at y 0 to 20, below the ray.
    expect(one(quarter)).toBeUndefined()
    expect(
      pickPart([{ part: near, pose: quarter }], { ...ray, origin: vec3(50, 10, 1000) })?.part.id,
    ).toBe('near')
    expect(one({ ...STILL, hidden: true })).toBeUndefined()
  })

  it.each(['anticlockwise', 'clockwise'])('meets a %s wedge only under its slope', (winding) => {
    const polygon = [
      { u: 0, v: 0 },
      { u: 40, v: 0 },
      { u: 0, v: 30 },
    ]
    const wedge: PrismSolid = {
      kind: 'prism',
      axis: 'z',
      polygon: winding === 'clockwise' ? polygon.toReversed() : polygon,
      from: 0,
      to: 10,
    }
    const hit = (x: number, y: number) =>
      pickPart(still(samplePart('wedge', [wedge])), { ...ray, origin: vec3(x, y, 500) })?.part.id
    expect(hit(20, 14)).toBe('wedge')
    expect(hit(20, 16)).toBeUndefined()
  })
})
