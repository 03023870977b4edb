import { describe, expect, it } from 'vitest'
import { vec3 } from '../../src/geometry/vector.ts'
import { pickPart } from '../../src/scene/pickPart.ts'
import { CLOSED_VIEW } from '../../src/scene/pose.ts'
import { boundsOfPoints, posedCorners, poseParts } from '../../src/scene/posedPart.ts'
import { frontCladding, frontLining, lidPanel, wholeSample } from './sampleHive.ts'

const STEP = { solid: [frontLining.id], fresh: [frontCladding.id] }
const inStep = { ...CLOSED_VIEW, assembly: STEP }

const shownIn = (view: typeof CLOSED_VIEW): readonly string[] =>
  poseParts(wholeSample, view)
    .filter(({ pose }) => !pose.hidden)
    .map(({ part }) => part.id)

describe('poseParts in a step of assembly', () => {
  it('shows what stands and what is new, and nothing else', () => {
    expect(shownIn(inStep)).toEqual([frontLining.id, frontCladding.id])
    expect(shownIn(CLOSED_VIEW)).toHaveLength(wholeSample.parts.length)
  })

  it('keeps every part in its place, whatever is open, lifted or apart', () => {
    const wild = { ...inStep, explode: 2, lidOpen: 1, floorOpen: 1, frameLift: 1 }
    expect(poseParts(wholeSample, wild)).toEqual(poseParts(wholeSample, inStep))
  })

  it('measures only what is there, so that the camera fits it', () => {
    const bounds = boundsOfPoints(posedCorners(poseParts(wholeSample, inStep)))
    // The front wall of the sample: 1000 long, 420 high, from z 230 to 300.
    expect(bounds).toEqual({ x0: 0, x1: 1000, y0: 0, y1: 420, z0: 230, z1: 300 })
  })

  it('lets the pointer through what is not there', () => {
    const down = { origin: vec3(500, 2000, 290), direction: vec3(0, -1, 0) }
    expect(pickPart(poseParts(wholeSample, CLOSED_VIEW), down)?.part.id).toBe(lidPanel.id)
    expect(pickPart(poseParts(wholeSample, inStep), down)?.part.id).toBe(frontCladding.id)
  })

  it('shows nothing of a hive that has none of the parts', () => {
    expect(shownIn({ ...CLOSED_VIEW, assembly: { solid: [], fresh: ['gone'] } })).toEqual([])
  })
})
