import { describe, expect, it } from 'vitest'
import { clampDistances, fastenerDistances } from '../../src/catalog/fastenerRules.ts'
import { NAILS, SCREW_GAUGES, SCREWS } from '../../src/catalog/fastenerSizes.ts'

const MM_PER_INCH = 25.4

describe('fastenerDistances', () => {
  it('gives the usual distances of a 2.8 mm nail that is not predrilled', () => {
    // 15 d, 10 d, 10 d, 5 d with d = 2.8: 42, 28, 28, 14 (EN 1995-1-1 form, LVL Handbook p. 149).
    const along = fastenerDistances(2.8, { predrilled: false })
    expect(along.loadedEndMm).toBeCloseTo(42, 9)
    expect(along.endMm).toBeCloseTo(28, 9)
    expect(along.alongMm).toBeCloseTo(28, 9)
    expect(along.edgeMm).toBeCloseTo(14, 9)
  })

  it('gives 7 d to a loaded edge when the load is square to the grain', () => {
    // (5 + 2 sin 90) d = 7 x 2.8 = 19.6; along the grain only 5 d are then wanted: 14.
    const square = fastenerDistances(2.8, { predrilled: false, loadToGrainDeg: 90 })
    expect(square.loadedEdgeMm).toBeCloseTo(19.6, 9)
    expect(square.alongMm).toBeCloseTo(14, 9)
  })

  it('lets a predrilled 2.8 mm nail into the middle of an 18 mm edge, and no other', () => {
    // 9 mm to either side: 3 d = 8.4 predrilled, 5 d = 14 without.
    expect(fastenerDistances(2.8, { predrilled: true }).edgeMm).toBeLessThan(9)
    expect(fastenerDistances(2.8, { predrilled: false }).edgeMm).toBeGreaterThan(9)
  })

  it('is proportional to the diameter, and never larger predrilled', () => {
    for (const { diameterMm: d } of [...SCREWS, ...NAILS]) {
      const [plain, drilled] = [false, true].map((predrilled) =>
        fastenerDistances(d, { predrilled }),
      )
      for (const key of ['alongMm', 'acrossMm', 'loadedEndMm', 'endMm', 'edgeMm'] as const) {
        expect(drilled?.[key] ?? 0).toBeLessThanOrEqual(plain?.[key] ?? 0)
        expect((plain?.[key] ?? 0) / d).toBeCloseTo(
          fastenerDistances(1, { predrilled: false })[key],
          9,
        )
      }
    }
  })
})

describe('clampDistances', () => {
  it('asks for less than a joint that carries, but never for less than 2 d', () => {
    expect(clampDistances(4)).toMatchObject({ endMm: 12, edgeMm: 8, alongMm: 20 })
  })
})

describe('pilot holes', () => {
  it('has the published drills of a gauge 8 screw', () => {
    // 5/64 in soft, 3/32 in hard, 11/64 in clearance (l-36.com; glenlarchive.com plate 6B).
    const eight = SCREW_GAUGES.find(({ gauge }) => gauge === '8')
    expect(eight?.softPilotIn).toBe(5 / 64)
    expect(eight?.hardPilotIn).toBe(3 / 32)
    expect(eight?.clearanceIn).toBe(11 / 64)
    // 0.164 in is 4.2 mm: the shank passes its clearance hole.
    expect((eight?.shankIn ?? 0) * MM_PER_INCH).toBeCloseTo(4.17, 2)
  })

  it('drills pilots below the root and lets the shank through in every published row', () => {
    expect(SCREW_GAUGES).toHaveLength(4)
    for (const row of SCREW_GAUGES) {
      expect(row.softPilotIn).toBeLessThan(row.rootIn)
      expect(row.softPilotIn).toBeLessThanOrEqual(row.hardPilotIn)
      // 3/16 in is a hair under the shank of gauge 10: in soft wood 7/8 of the shank will do (from memory).
      expect(row.clearanceIn).toBeGreaterThan((row.shankIn * 7) / 8)
    }
  })

  it('takes 2.5 and 3.0 mm for a 4.0 mm screw and 3.0 and 3.5 mm for a 5.0 mm one', () => {
    // Metric drills from memory: 4.0 screw 2.5 soft, 3.0 hard, 4.5 clearance; 5.0 screw 3.0, 3.5, 5.5.
    const four = SCREWS.find(({ diameterMm }) => diameterMm === 4)
    const five = SCREWS.find(({ diameterMm }) => diameterMm === 5)
    expect(four).toMatchObject({ softPilotMm: 2.5, hardPilotMm: 3, clearanceMm: 4.5 })
    expect(five).toMatchObject({ softPilotMm: 3, hardPilotMm: 3.5, clearanceMm: 5.5 })
  })

  it('never drills more than 75 % of a nail in soft wood, nor 90 % in hard', () => {
    // NDS, restated at civilengineeringx.com/bdac/nails-and-spikes.
    for (const { diameterMm, softPilotMm, hardPilotMm } of NAILS) {
      expect(softPilotMm).toBeLessThanOrEqual(0.75 * diameterMm)
      expect(hardPilotMm).toBeLessThanOrEqual(0.9 * diameterMm)
    }
  })

  it('keeps lengths in order and names a source for every row', () => {
    for (const { lengthsMm, source } of [...SCREWS, ...NAILS]) {
      expect([...lengthsMm].sort((a, b) => a - b)).toEqual(lengthsMm)
      expect(source.length).toBeGreaterThan(10)
    }
  })
})
