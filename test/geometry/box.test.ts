import { describe, expect, it } from 'vitest'
import { boundingBox, box, boxExtent, boxVolume } from '../../src/geometry/box.ts'

const plank = box([-2, 8], [1, 4], [-30, 70])

describe('boxExtent', () => {
  it('measures along each axis', () => {
    expect(boxExtent(plank, 'x')).toBe(10)
    expect(boxExtent(plank, 'y')).toBe(3)
    expect(boxExtent(plank, 'z')).toBe(100)
  })
})

describe('boxVolume', () => {
  it('is the product of the three extents', () => {
    expect(boxVolume(plank)).toBe(10 * 3 * 100)
  })

  it('is zero for a box without thickness', () => {
    expect(boxVolume(box([0, 5], [2, 2], [0, 7]))).toBe(0)
  })
})

describe('boundingBox', () => {
  it('reaches from the least to the greatest bound on every axis', () => {
    const other = box([0, 20], [-9, 2], [-10, 10])
    expect(boundingBox([plank, other])).toEqual(box([-2, 20], [-9, 4], [-30, 70]))
  })

  it('is the box itself for one box', () => {
    expect(boundingBox([plank])).toEqual(plank)
  })

  it('throws when there is nothing to bound', () => {
    expect(() => boundingBox([])).toThrow('no boxes')
  })
})
