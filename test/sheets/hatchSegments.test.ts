import { describe, expect, it } from 'vitest'
import { hatchSegments } from '../../src/sheets/hatchSegments.ts'

const at = (x: number, y: number) => ({ x, y })
const SQUARE = [at(0, 0), at(11, 0), at(11, 11), at(0, 11)]
const lengthOf = (segments: ReturnType<typeof hatchSegments>) =>
  segments.reduce((sum, s) => sum + Math.hypot(s.to.x - s.from.x, s.to.y - s.from.y), 0)

describe('hatchSegments', () => {
  it('fills a sheet with lines along it, one every 1.1 mm', () => {
    const lines = hatchSegments(SQUARE, 'ply')
    // 1.1, 2.2 … 9.9; the tenth would lie on the edge.
    expect(lines).toHaveLength(9)
    expect(lengthOf(lines)).toBeCloseTo(99, 6)
    expect(lines.every((s) => s.from.y === s.to.y)).toBe(true)
  })

  it('covers an area with as much line as area over pitch', () => {
    // Long-run density of parallels is 1 / pitch: 121 / 1.6 = 75.6 mm within an end effect.
    expect(lengthOf(hatchSegments(SQUARE, 'wood'))).toBeGreaterThan(68)
    expect(lengthOf(hatchSegments(SQUARE, 'wood'))).toBeLessThan(84)
  })

  it('climbs to the right for wood and to the left for its neighbour', () => {
    const rise = (kind: 'wood' | 'wood-reverse') => {
      const s = hatchSegments(SQUARE, kind)[2]
      return s ? (s.to.y - s.from.y) * (s.to.x - s.from.x) : 0
    }
    expect(rise('wood')).toBeLessThan(0)
    expect(rise('wood-reverse')).toBeGreaterThan(0)
  })

  it('keeps out of the notch of a polygon that is not convex', () => {
    const u = [at(0, 0), at(10, 0), at(10, 10), at(6, 10), at(6, 4), at(4, 4), at(4, 10), at(0, 10)]
    const inNotch = hatchSegments(u, 'ply').filter(
      (s) => s.from.y > 4 && Math.min(s.from.x, s.to.x) < 5 && Math.max(s.from.x, s.to.x) > 5,
    )
    expect(hatchSegments(u, 'ply').length).toBeGreaterThan(9)
    expect(inNotch).toEqual([])
  })

  it('draws nothing for no hatch or a line', () => {
    expect(hatchSegments(SQUARE, 'none')).toEqual([])
    expect(hatchSegments(SQUARE.slice(0, 2), 'wood')).toEqual([])
  })
})
