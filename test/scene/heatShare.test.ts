import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import { ORIGIN, vec3 } from '../../src/geometry/vector.ts'
import { COOLING_MM, shareAt } from '../../src/scene/heatShare.ts'
import { pickPart } from '../../src/scene/pickPart.ts'
import type { PartPose } from '../../src/scene/pose.ts'
import type { FieldGrid } from '../../src/solvers/conduction/fieldGrid.ts'
import { samplePart } from './sampleHive.ts'

/** A cube of 100 mm whose temperature rises from 0 at z 0 to 1 at z 100, in unequal steps. */
const planes = [0, 0.02, 0.1]
const rising: FieldGrid = {
  xM: Float64Array.from(planes),
  yM: Float64Array.from(planes),
  zM: Float64Array.from(planes),
  temperatureC: Float32Array.from({ length: 27 }, (_, i) => 10 * (planes[Math.floor(i / 9)] ?? 0)),
}

describe('shareAt', () => {
  it('reads the field at a point in millimetres', () => {
    expect(shareAt(rising, vec3(50, 50, 10))).toBeCloseTo(0.1, 6)
    expect(shareAt(rising, vec3(3, 99, 60))).toBeCloseTo(0.6, 6)
  })

  it('is exact on the sides of the field and cold away from them', () => {
    expect(shareAt(rising, vec3(50, 50, 100))).toBeCloseTo(1, 6)
    expect(shareAt(rising, vec3(50, 50, 100 + COOLING_MM / 2))).toBeCloseTo(0.5, 6)
    expect(shareAt(rising, vec3(50, 50, 100 + COOLING_MM))).toBe(0)
    expect(shareAt(rising, vec3(50, -400, 100))).toBe(0)
  })
})

describe('a probe', () => {
  const wall = samplePart('wall', box([0, 100], [0, 100], [0, 100]))
  const ray = { origin: vec3(50, 50, 5000), direction: vec3(0, 0, -1) }
  const probe = (pose: PartPose, look = ray, at?: number) => {
    const plane = at === undefined ? undefined : ({ axis: 'z', at } as const)
    const hit = pickPart([{ part: wall, pose }], look, plane)
    return hit === undefined ? undefined : shareAt(rising, hit.closedPoint)
  }
  const still: PartPose = { translation: ORIGIN, turn: undefined, hidden: false }

  it('reads the surface of a part wherever the part is taken', () => {
    expect(probe(still)).toBeCloseTo(1, 6)
    expect(probe({ ...still, translation: vec3(20, -30, 900) })).toBeCloseTo(1, 6)
  })

  it('reads the inner side of a part that is swung open', () => {
    // A half turn about the far lower edge shows the side that lay at z 0.
    const open = { ...still, turn: { angleRad: Math.PI, pivot: ORIGIN } }
    const look = { ...ray, origin: vec3(50, -50, 5000) }
    expect(probe(open, look)).toBeCloseTo(0, 6)
  })

  it('reads the cut face of a section', () => {
    expect(probe(still, ray, 30)).toBeCloseTo(0.3, 6)
    // The part is moved 400 on, so the plane at 430 cuts it where it is 30 deep.
    expect(probe({ ...still, translation: vec3(0, 0, 400) }, ray, 430)).toBeCloseTo(0.3, 6)
  })
})
