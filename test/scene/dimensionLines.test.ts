import { describe, expect, it } from 'vitest'
import { box } from '../../src/geometry/box.ts'
import { vec3 } from '../../src/geometry/vector.ts'
import { PRESET_DIRECTIONS } from '../../src/scene/cameraPresets.ts'
import { dimensionKey, dimensionLines } from '../../src/scene/dimensionLines.ts'
import { sampleHive } from './sampleHive.ts'

const { dimensions } = sampleHive([])
const bounds = box([-70, 1070], [-400, 500], [-300, 350])
const from = (direction: { x: number; y: number; z: number }) =>
  dimensionLines(dimensions, bounds, direction)

describe('dimensionLines', () => {
  it('measures the outside by the box around the hive and the inside by the cavity', () => {
    const values = Object.fromEntries(
      from(PRESET_DIRECTIONS['three-quarter']).map((line) => [line.name, line.valueMm]),
    )
    expect(values).toEqual({
      length: 1140,
      width: 650,
      height: 900,
      'inside-length': 1000,
      'inside-width': 460,
      'inside-height': 420,
    })
  })

  it('draws every line clear of the hive', () => {
    for (const direction of Object.values(PRESET_DIRECTIONS)) {
      for (const { from: a, to: b } of from(direction)) {
        const isOutside = (['x', 'y', 'z'] as const).some(
          (axis) =>
            Math.max(a[axis], b[axis]) < bounds[`${axis}0`] ||
            Math.min(a[axis], b[axis]) > bounds[`${axis}1`],
        )
        expect(isOutside).toBe(true)
      }
    }
  })

  it('leaves out what would be seen end-on', () => {
    const names = (direction: Parameters<typeof from>[0]) =>
      from(direction)
        .map((line) => line.name)
        .filter((name) => !name.startsWith('inside'))
    expect(names(PRESET_DIRECTIONS.front)).toEqual(['length', 'height'])
    expect(names(PRESET_DIRECTIONS.side)).toEqual(['width', 'height'])
    expect(names(PRESET_DIRECTIONS.top)).toEqual(['length', 'width'])
  })

  it('goes to the side that the eye is on', () => {
    const length = (z: number) => from(vec3(0.3, 0.6, z)).find((line) => line.name === 'length')
    expect(length(1)?.from.z).toBeGreaterThan(bounds.z1)
    expect(length(-1)?.from.z).toBeLessThan(bounds.z0)
  })
})

describe('dimensionKey', () => {
  it('differs between eyes that see different lines and not between neighbours', () => {
    const keys = Object.values(PRESET_DIRECTIONS).map(dimensionKey)
    expect(new Set(keys).size).toBeGreaterThanOrEqual(4)
    expect(dimensionKey(vec3(0.62, 0.5, 1))).toBe(dimensionKey(vec3(0.6, 0.5, 1.1)))
  })
})
