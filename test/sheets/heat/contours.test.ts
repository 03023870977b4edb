import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { polygonArea } from '../../../src/geometry/solid.ts'
import {
  type ContourLine,
  traceContour,
  traceRegionAbove,
} from '../../../src/sheets/heat/contours.ts'
import type { FieldSlice } from '../../../src/sheets/heat/sliceField.ts'
import type { ModelPoint } from '../../../src/sheets/view.ts'

const sliceOf = (
  us: readonly number[],
  vs: readonly number[],
  valueAt: (u: number, v: number) => number,
): FieldSlice => ({
  uMm: Float64Array.from(us),
  vMm: Float64Array.from(vs),
  value: Float64Array.from(vs.flatMap((v) => us.map((u) => valueAt(u, v)))),
})

/** Lines that grow apart: 0, 1, 3, 6, 10 … */
const uneven = (count: number) => Array.from({ length: count }, (_, i) => (i * (i + 1)) / 2)
const even = (from: number, to: number, count: number) =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1))

/** Positive for loops that run anticlockwise. */
const signedArea = (loop: readonly ModelPoint[]): number =>
  loop.reduce((sum, a, i) => {
    const b = loop[(i + 1) % loop.length] ?? a
    return sum + (a.u * b.v - b.u * a.v) / 2
  }, 0)

const ends = ({ points }: ContourLine) => [points[0], points.at(-1)]

describe('traceContour', () => {
  it('gives straight lines at exact places for a linear field on an uneven grid', () => {
    // Falls by 1 for each mm along u, and does not change along v.
    const slice = sliceOf(uneven(6), uneven(5), (u) => 20 - u)
    const lines = traceContour(slice, 16.5)
    expect(lines).toHaveLength(1)
    expect(lines[0]?.points.map((p) => p.v).sort((a, b) => a - b)).toEqual([0, 1, 3, 6, 10])
    for (const p of lines[0]?.points ?? []) expect(p.u).toBeCloseTo(3.5, 12)
  })

  it('lays the lines of a slanting linear field on u + 2v = level', () => {
    const slice = sliceOf(uneven(6), uneven(6), (u, v) => u + 2 * v)
    for (const level of [0.3, 7.7, 18, 44.9]) {
      const points = traceContour(slice, level).flatMap((l) => l.points)
      expect(points.length).toBeGreaterThan(1)
      for (const p of points) expect(p.u + 2 * p.v).toBeCloseTo(level, 9)
    }
  })

  it('closes the circles of a radial field, round to a few thousandths', () => {
    const axis = even(-1, 1, 61)
    const slice = sliceOf(axis, axis, (u, v) => Math.hypot(u, v))
    for (const radius of [0.3, 0.55, 0.9]) {
      const lines = traceContour(slice, radius)
      expect(lines.map((l) => l.isClosed)).toEqual([true])
      const points = lines[0]?.points ?? []
      expect(points[0]).toEqual(points.at(-1))
      for (const p of points) expect(Math.abs(Math.hypot(p.u, p.v) - radius)).toBeLessThan(2e-3)
      expect(polygonArea(points.slice(1))).toBeCloseTo(Math.PI * radius ** 2, 2)
    }
  })

  it('has no line for a level above or below all values', () => {
    const slice = sliceOf(uneven(4), uneven(4), (u, v) => u + v)
    expect(traceContour(slice, -0.1)).toEqual([])
    expect(traceContour(slice, 12.1)).toEqual([])
  })

  it('draws the high side at the left', () => {
    const [line] = traceContour(
      sliceOf([0, 1], [0, 1], (u) => u),
      0.5,
    )
    // High values are at the right of the square, so the line runs down.
    expect(line?.points.map((p) => p.v)).toEqual([1, 0])
  })

  it('parts a saddle as the bilinear surface is', () => {
    // High corners 1 at opposite corners, low ones 0: the surface is 0.5 in the middle.
    const saddle = sliceOf([0, 1], [0, 1], (u, v) => (u === v ? 1 : 0))
    const cornersCut = (level: number) =>
      traceContour(saddle, level).map((l) => {
        const [a, b] = ends(l)
        return (
          Math.round(((a?.u ?? 0) + (b?.u ?? 0)) / 2) ===
          Math.round(((a?.v ?? 0) + (b?.v ?? 0)) / 2)
        )
      })
    // Above it each high corner is alone; below it each low corner.
    expect(cornersCut(0.6)).toEqual([true, true])
    expect(cornersCut(0.4)).toEqual([false, false])
  })

  it('draws lines that are closed or end on the border, and never cross the level twice', () => {
    const size = 7
    const values = fc.array(fc.integer({ min: 0, max: 5 }), {
      minLength: size * size,
      maxLength: size * size,
    })
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 5 }), (value, level) => {
        const axis = uneven(size)
        const most = axis.at(-1) ?? 0
        const slice: FieldSlice = {
          uMm: Float64Array.from(axis),
          vMm: Float64Array.from(axis),
          value: Float64Array.from(value),
        }
        const isOnBorder = (p: ModelPoint | undefined) =>
          p !== undefined && [p.u, p.v].some((c) => Math.abs(c) < 1e-9 || Math.abs(c - most) < 1e-9)
        for (const line of traceContour(slice, level)) {
          expect(line.isClosed || ends(line).every(isOnBorder)).toBe(true)
        }
      }),
    )
  })
})

describe('traceRegionAbove', () => {
  const axis = even(-1, 1, 41)

  it('is the whole window when all of it is high, and nothing when none is', () => {
    const slice = sliceOf([0, 2, 5], [0, 1, 4], () => 1)
    expect(traceRegionAbove(slice, 0.5).map(signedArea)).toEqual([20])
    expect(traceRegionAbove(slice, 1.5)).toEqual([])
    expect(traceRegionAbove(slice, 0.5, { i0: 1, i1: 2, j0: 0, j1: 1 }).map(signedArea)).toEqual([
      3,
    ])
  })

  it('runs anticlockwise around what is high and clockwise around a hole in it', () => {
    const slice = sliceOf(axis, axis, (u, v) => Math.hypot(u, v))
    const areas = traceRegionAbove(slice, 0.5).map(signedArea)
    expect(areas).toHaveLength(2)
    expect(Math.max(...areas)).toBeCloseTo(4, 9)
    expect(Math.min(...areas)).toBeCloseTo(-Math.PI / 4, 2)
  })

  it('is bordered by the contour itself', () => {
    const slice = sliceOf(axis, axis, (u, v) => u * v + 0.3 * u)
    const key = (p: ModelPoint) => `${p.u.toFixed(9)} ${p.v.toFixed(9)}`
    const border = new Set(traceRegionAbove(slice, 0.2).flat().map(key))
    const line = traceContour(slice, 0.2).flatMap((l) => l.points)
    expect(line.length).toBeGreaterThan(20)
    for (const p of line) expect(border).toContain(key(p))
  })

  it('leaves just as much to the regions above and below together as there is', () => {
    const size = 5
    const LEVEL = Math.E
    const values = fc.array(fc.integer({ min: 0, max: 6 }), {
      minLength: size * size,
      maxLength: size * size,
    })
    fc.assert(
      fc.property(values, (whole) => {
        const lines = Float64Array.from(uneven(size))
        // No corner and no saddle has this level, so nothing is on both sides.
        const slice = (sign: number): FieldSlice => ({
          uMm: lines,
          vMm: lines,
          value: Float64Array.from(whole, (v) => sign * v),
        })
        const area = (sign: number, level: number) =>
          traceRegionAbove(slice(sign), level).reduce((sum, l) => sum + signedArea(l), 0)
        expect(area(1, LEVEL) + area(-1, -LEVEL)).toBeCloseTo(100, 9)
      }),
    )
  })
})
