import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { buildPlaneLookup } from '../../src/scene/planeLookup.ts'

/** What the shader does with the table. */
const readPlace = (rows: Float32Array, planes: readonly number[], m: number): number => {
  const [from, to] = [planes[0] ?? 0, planes.at(-1) ?? 0]
  const buckets = rows.length / 4
  const reach = Math.min(to, Math.max(from, m)) - from
  const i = Math.min(buckets - 1, Math.floor((reach / (to - from)) * buckets))
  const [pivot = 0, place = 0, before = 0, after = 0] = rows.subarray(4 * i, 4 * i + 4)
  return place + (reach - pivot) * (reach < pivot ? before : after)
}
const table = (planes: readonly number[], buckets?: number) =>
  buildPlaneLookup(Float64Array.from(planes), buckets)

describe('buildPlaneLookup', () => {
  it('finds planes and what is between them', () => {
    const planes = [-0.1, 0, 0.004, 0.024, 0.5]
    const rows = table(planes)
    planes.forEach((m, i) => {
      expect(readPlace(rows, planes, m)).toBeCloseTo(i, 4)
    })
    // A quarter of the way from -0.1 to 0, and the middles of the next two gaps.
    expect(readPlace(rows, planes, -0.075)).toBeCloseTo(0.25, 4)
    expect(readPlace(rows, planes, 0.002)).toBeCloseTo(1.5, 4)
    expect(readPlace(rows, planes, 0.014)).toBeCloseTo(2.5, 4)
  })

  it('holds the ends beyond them', () => {
    const planes = [0.2, 0.3, 0.7]
    expect(readPlace(table(planes), planes, 0)).toBeCloseTo(0, 6)
    expect(readPlace(table(planes), planes, 1)).toBeCloseTo(2, 6)
  })

  it('is exact between any planes that are further apart than a bucket', () => {
    const gaps = fc.array(fc.double({ min: 0.011, max: 0.4, noNaN: true }), {
      minLength: 1,
      maxLength: 12,
    })
    fc.assert(
      fc.property(gaps, fc.double({ min: -1, max: 1, noNaN: true }), (steps, first) => {
        const planes = [first]
        for (const step of steps) planes.push((planes.at(-1) ?? 0) + step)
        // 12 gaps of 0.4 over 500 buckets: none wider than 0.0096.
        const rows = table(planes, 500)
        for (let i = 0; i + 1 < planes.length; i++) {
          const [a = 0, b = 0] = planes.slice(i)
          for (const share of [0, 0.37, 0.8]) {
            expect(readPlace(rows, planes, a + share * (b - a))).toBeCloseTo(i + share, 3)
          }
        }
      }),
      { numRuns: 100 },
    )
  })

  it('stays between its neighbours where a bucket holds several planes', () => {
    // Ten buckets of 0.1; the second holds three planes.
    const planes = [0, 0.11, 0.12, 0.13, 1]
    const rows = table(planes, 10)
    expect(readPlace(rows, planes, 0.11)).toBeCloseTo(1, 5)
    // At the ends of that bucket: 0.1 is 10/11 of the first gap, 0.2 is 0.07/0.87 of the last one.
    expect(readPlace(rows, planes, 0.1)).toBeCloseTo(10 / 11, 5)
    expect(readPlace(rows, planes, 0.1999999)).toBeCloseTo(3 + 0.07 / 0.87, 4)
    let last = -1
    for (let m = 0; m <= 1; m += 0.001) {
      const place = readPlace(rows, planes, m)
      expect(place).toBeGreaterThanOrEqual(last)
      last = place
    }
  })

  it('is all zero for planes that span nothing', () => {
    expect(table([0.3], 4).every((v) => v === 0)).toBe(true)
    expect(table([], 4).every((v) => v === 0)).toBe(true)
  })
})
