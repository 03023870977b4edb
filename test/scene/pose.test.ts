import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import { ORIGIN, vec3 } from '../../src/geometry/vector.ts'
import type { Part } from '../../src/hive/part.ts'
import {
  applyPose,
  applyPoseDirection,
  CLOSED_VIEW,
  type PoseView,
  partPose,
  undoPose,
  undoPoseDirection,
} from '../../src/scene/pose.ts'
import {
  floorPanel,
  frontCladding,
  frontLining,
  lidPanel,
  lidRim,
  sampleCovers,
  sampleFrames,
  sampleHive,
  samplePart,
  wholeSample,
} from './sampleHive.ts'

const pose = (part: Part | undefined, change: Partial<PoseView>, hive = wholeSample) => {
  if (part === undefined) throw new Error('no such part')
  return partPose(part, hive, { ...CLOSED_VIEW, ...change })
}
const moved = (part: Part | undefined, change: Partial<PoseView>) => pose(part, change).translation

describe('partPose', () => {
  it('leaves every part of the closed hive in its place', () => {
    for (const part of wholeSample.parts) {
      expect(pose(part, {})).toEqual({ translation: ORIGIN, turn: undefined, hidden: false })
    }
  })

  it('turns the lid about its hinge by its whole angle when open', () => {
    const open = pose(lidPanel, { lidOpen: 1 })
    // The hinge lies at y 440, z -300; the front edge is 600 from it and ends straight above it.
    const edge = applyPose(open, vec3(0, 440, 300))
    expect(edge.y).toBeCloseTo(1040, 9)
    expect(edge.z).toBeCloseTo(-300, 9)
  })

  it('drops the floor about its own hinge and leaves the lid shut', () => {
    const open = pose(floorPanel, { floorOpen: 0.5 })
    // Half of 30 degrees: the front edge is 600 from the hinge.
    const edge = applyPose(open, vec3(0, 0, 300))
    expect(edge.y).toBeCloseTo(-600 * Math.sin(Math.PI / 12), 9)
    expect(pose(lidPanel, { floorOpen: 0.5 }).turn).toBeUndefined()
  })

  it('lifts one frame by its depth and 120 mm and leaves the others', () => {
    expect(moved(sampleFrames[1], { liftedFrame: 1, frameLift: 1 })).toEqual(vec3(0, 520, 0))
    expect(moved(sampleFrames[1], { liftedFrame: 1, frameLift: 0.5 })).toEqual(vec3(0, 260, 0))
    expect(moved(sampleFrames[0], { liftedFrame: 1, frameLift: 1 })).toEqual(ORIGIN)
  })

  it('opens the lid for a lifted frame even when the lid slider is at nought', () => {
    expect(pose(lidPanel, { frameLift: 0.1 }).turn?.angleRad).toBeCloseTo(-Math.PI / 2, 12)
  })

  it('lays the cover over a lifted frame on its neighbour, clear of the frame', () => {
    // Frame 2 spans 485 to 515, under cover 3 (400 to 600). Leftwards it must move 115, to end at 485.
    expect(moved(sampleCovers[2], { liftedFrame: 1, frameLift: 1 })).toEqual(vec3(-115, 18, 0))
    expect(moved(sampleCovers[1], { liftedFrame: 1, frameLift: 1 })).toEqual(ORIGIN)
  })

  it('takes a cover off that is too long to lie on another', () => {
    const cloth = samplePart('covers/cloth', box([0, 1000], [420, 421], [-230, 230]), {
      group: 'covers',
      motion: 'cover',
      index: 0,
    })
    const hive = sampleHive([...sampleFrames, cloth])
    expect(pose(cloth, { frameLift: 0.2 }, hive).hidden).toBe(true)
    expect(pose(cloth, { frameLift: 0 }, hive).hidden).toBe(false)
  })

  it('moves nothing for a frame that the hive lacks', () => {
    expect(moved(sampleCovers[2], { liftedFrame: 99, frameLift: 1 })).toEqual(ORIGIN)
  })

  it('takes the covers off for a look into the open hive only', () => {
    const inside = { preset: 'inside', serial: 1 } as const
    expect(pose(sampleCovers[0], { camera: inside, lidOpen: 1 }).hidden).toBe(true)
    expect(pose(sampleCovers[0], { camera: inside, lidOpen: 0 }).hidden).toBe(false)
    expect(pose(frontLining, { camera: inside, lidOpen: 1 }).hidden).toBe(false)
  })

  it('moves a group as one up to 1, and its layers apart after that', () => {
    const one = { explode: 1 }
    expect(moved(frontLining, one)).toEqual(moved(frontCladding, one))
    expect(moved(frontLining, one).z).toBeGreaterThan(0)
    expect(moved(frontLining, { explode: 2 })).toEqual(moved(frontLining, one))
    const apart = moved(frontCladding, { explode: 2 }).z - moved(frontLining, { explode: 2 }).z
    const half = moved(frontCladding, { explode: 1.5 }).z - moved(frontLining, { explode: 1.5 }).z
    expect(apart).toBeGreaterThan(0)
    expect(half).toBeCloseTo(apart / 2, 9)
  })

  it('carries what is on the lid up with the lid, whichever way its layer points', () => {
    expect(moved(lidRim, { explode: 1 })).toEqual(moved(lidPanel, { explode: 1 }))
    expect(moved(lidRim, { explode: 2 }).z).toBeGreaterThan(0)
  })
})

describe('applyPose', () => {
  const tilted = pose(lidPanel, { lidOpen: 0.37, explode: 1.4 })
  const p = vec3(123, 456, -78)

  it('is undone by undoPose', () => {
    const back = undoPose(tilted, applyPose(tilted, p))
    expect(back.x).toBeCloseTo(p.x, 9)
    expect(back.y).toBeCloseTo(p.y, 9)
    expect(back.z).toBeCloseTo(p.z, 9)
  })

  it('turns directions as it turns points', () => {
    const d = vec3(0.2, -0.5, 0.8)
    const a = applyPose(tilted, ORIGIN)
    const b = applyPose(tilted, d)
    const turned = applyPoseDirection(tilted, d)
    expect(turned.y).toBeCloseTo(b.y - a.y, 9)
    expect(turned.z).toBeCloseTo(b.z - a.z, 9)
    expect(undoPoseDirection(tilted, turned).z).toBeCloseTo(d.z, 9)
  })
})
