import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { vec3 } from '../../src/geometry/vector.ts'
import { PRESET_DIRECTIONS } from '../../src/scene/cameraPresets.ts'
import { cameraAxes, fitCamera } from '../../src/scene/fitCamera.ts'
import { dot, minus } from '../../src/scene/vectors.ts'

const cube = [0, 1, 2, 3, 4, 5, 6, 7].map((i) =>
  vec3(i & 1 ? 100 : -100, i & 2 ? 100 : -100, i & 4 ? 100 : -100),
)

describe('fitCamera', () => {
  it('stands where a right angle of view just holds the front of a cube', () => {
    const frame = { direction: vec3(0, 0, 1), fovDeg: 90, aspect: 1, margin: 0 }
    // The front face, 200 wide at z 100, fills a right angle from 100 before it.
    const { eye, target } = fitCamera(cube, frame)
    expect(eye.z).toBeCloseTo(200, 9)
    expect(eye.x).toBeCloseTo(0, 9)
    expect(target.z).toBeCloseTo(0, 9)
  })

  it('steps back for a margin: half the picture needs twice the way', () => {
    const frame = { direction: vec3(0, 0, 1), fovDeg: 90, aspect: 1, margin: 0.25 }
    expect(fitCamera(cube, frame).eye.z).toBeCloseTo(100 + 200, 9)
  })

  it('holds every point from every preset and touches at least one side', () => {
    const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true })
    const point = fc.record({ x: coordinate, y: coordinate, z: coordinate })
    fc.assert(
      fc.property(
        fc.array(point, { minLength: 2, maxLength: 20 }),
        fc.constantFrom(...Object.values(PRESET_DIRECTIONS)),
        fc.double({ min: 0.4, max: 3, noNaN: true }),
        (points, direction, aspect) => {
          const { eye } = fitCamera(points, { direction, fovDeg: 20, aspect, margin: 0 })
          const axes = cameraAxes(direction)
          const tan = Math.tan(Math.PI / 18)
          const reach = points.map((p) => {
            const d = minus(p, eye)
            const depth = -dot(d, axes.back)
            return Math.max(
              Math.abs(dot(d, axes.right)) - tan * aspect * depth,
              Math.abs(dot(d, axes.up)) - tan * depth,
            )
          })
          expect(Math.max(...reach)).toBeLessThan(1e-6)
          expect(Math.max(...reach)).toBeGreaterThan(-1e-6)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('refuses to fit nothing', () => {
    const frame = { direction: vec3(0, 0, 1), fovDeg: 20, aspect: 1, margin: 0 }
    expect(() => fitCamera([], frame)).toThrow('no points')
  })
})
