import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { LEAST_PENETRATION_D, POINT_COVER_MM } from '../../../../src/catalog/fastenerRules.ts'
import { materialById } from '../../../../src/catalog/materials.ts'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import { setFrameCount } from '../../../../src/design/frameEdits.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import type { Hive } from '../../../../src/hive/hive.ts'
import { cutList } from '../../../../src/reports/shop/cutList.ts'
import { computeFasteners } from '../../../../src/reports/shop/fasteners/computeFasteners.ts'
import type { Fastening } from '../../../../src/reports/shop/fasteners/fastenerReport.ts'
import { arbitraryMixedBuilt, runs } from '../../../hive/arbitraryBuilt.ts'

const build = (design: Design): Hive => {
  const result = deriveHive(design)
  if (result.kind !== 'built') throw new Error('refused')
  return result.hive
}
const fastenersOf = (design: Design, hive = build(design)) =>
  computeFasteners(design, hive, cutList(hive.parts))
const find = (rows: readonly Fastening[], joint: string): readonly Fastening[] =>
  rows.filter((row) => row.joint === joint)

const withNails: Design = {
  ...DEFAULT_DESIGN,
  shop: { ...DEFAULT_DESIGN.shop, fastening: 'nails' },
}

describe('computeFasteners, the default hive', () => {
  const hive = build(DEFAULT_DESIGN)
  const report = fastenersOf(DEFAULT_DESIGN, hive)

  it('screws the 12 mm lining into the 60 mm deep rails with the point well inside', () => {
    const rows = find(report.fastenings, 'Long wall lining to long wall stud')
    expect(rows.length).toBeGreaterThan(0)
    for (const { fastener, penetrationMm, coverMm, layers, glue } of rows) {
      expect(layers.map((l) => l.thicknessMm)).toEqual([12, 60])
      expect(penetrationMm).toBeCloseTo(fastener.lengthMm - 12, 6)
      expect(coverMm).toBeCloseTo(72 - fastener.lengthMm, 6)
      expect(fastener.finish).toContain('stainless')
      expect(glue).toBe(true)
    }
  })

  it('gives each cladding board one screw in each upright behind it', () => {
    // Eight long boards cross three studs each; eight end boards two studs and two corner studs.
    const rows = [
      ...find(report.fastenings, 'Long wall cladding to long wall stud'),
      ...find(report.fastenings, 'End wall cladding to end wall stud'),
      ...find(report.fastenings, 'End wall cladding to long wall stud'),
    ]
    expect(rows.reduce((sum, row) => sum + row.count, 0)).toBe(8 * 3 + 8 * 2 + 8 * 2)
  })

  it('keeps the screws of the lower rail out of the entrance', () => {
    // The rail's middle line, 14 mm up, is within 10.5 mm of the slot from 15 to 23 mm: only the rail
    // beside the entrance, 907 - 180 mm less the distances, can take screws.
    const rows = find(report.fastenings, 'Long wall lining to long wall rail')
    const pierced = hive.parts.find((p) => p.id === 'front-wall/rail-low')
    const row = rows.find((r) => r.partIds.includes(pierced?.id ?? ''))
    expect(row?.warning).toBeUndefined()
    // 60 + 72 mm to the left of the slot: 24.5 from the end and 10.5 from the slot leave 97 mm.
    expect(row?.count).toBe(2 + 5)
  })

  it('counts eight nails a frame half and two pegs a frame', () => {
    // Two down and one sideways at each side bar, two through each side bar below: 2 x (2 + 1 + 2) = 10.
    const nails = report.totals.find(({ fastener }) => fastener.kind === 'nail')
    expect(nails?.count).toBe(20 * 2 * 10)
    const pegs = report.totals.find(({ fastener }) => fastener.kind === 'peg')
    expect(pegs?.count).toBe(40)
  })

  it('adds a tenth of spares, rounded up', () => {
    for (const { count, spare } of report.totals) expect(spare).toBe(Math.ceil(count / 10))
  })

  it('needs few kinds of screws besides those of the roof', () => {
    const plain = report.totals.filter(
      ({ fastener }) => fastener.kind === 'screw' && !fastener.finish.includes('washer'),
    )
    expect(plain.length).toBeLessThanOrEqual(9)
  })

  it('asks for every drill that a pilot or clearance hole needs, least first', () => {
    const needed = new Set(
      report.fastenings.flatMap((f) => [f.pilotMm, f.clearanceHoleMm]).filter((mm) => mm > 0),
    )
    expect(report.drillBitsMm).toEqual([...needed].sort((a, b) => a - b))
  })

  it('says that the lid rim is too thin for its hinges, and what to do', () => {
    const [row] = find(report.fastenings, 'Lid hinge to lid rim')
    expect(row?.warning).toMatch(/thicker/)
    const thick = { ...DEFAULT_DESIGN, lid: { ...DEFAULT_DESIGN.lid, rimThicknessMm: 30 } }
    const [better] = find(fastenersOf(thick).fastenings, 'Lid hinge to lid rim')
    expect(better?.warning).toBeUndefined()
  })

  it('gives foam solvent-free glue and says that solvents are forbidden', () => {
    const foam = report.adhesives.find(({ id }) => id === 'foam-glue')
    expect(foam?.why).toMatch(/solvent/i)
    expect(foam?.quantity).toBeGreaterThan(0)
  })

  it('plans the finish by area, coats and days before bees; none when there is none', () => {
    const { finish } = report
    expect(finish?.litres).toBeGreaterThanOrEqual(((finish?.areaM2 ?? 0) * 2) / 12 - 0.01)
    expect(finish?.curingDays).toBeGreaterThan(7)
    const bare: Design = { ...DEFAULT_DESIGN, shop: { ...DEFAULT_DESIGN.shop, finish: 'none' } }
    expect(fastenersOf(bare).finish).toBeUndefined()
  })
})

describe('computeFasteners, nails', () => {
  const rows = fastenersOf(withNails).fastenings.filter((f) => f.step < 22)

  it('nails the walls but never hinges, lid, floor or stand', () => {
    expect(rows.some((f) => f.fastener.kind === 'nail')).toBe(true)
    for (const { fastener, joint } of rows) {
      if (fastener.kind === 'nail') expect(joint).not.toMatch(/hinge|^lid|^floor|bearer|leg|brace/i)
    }
  })

  it('drives nails three times as long as the held part, or ten diameters deep', () => {
    for (const { fastener, layers, penetrationMm, warning, glue } of rows) {
      if (fastener.kind !== 'nail' || warning !== undefined || glue) continue
      const held = layers[0]?.thicknessMm ?? 0
      expect(
        fastener.lengthMm >= 3 * held || penetrationMm >= 10 * fastener.diameterMm - 0.05,
      ).toBe(true)
    }
  })
})

/** Loose by design: they hang, lie or slide. */
const isLoose = (id: string): boolean =>
  /^covers\/|^divider\/|^floor\/tray|^openings\/reducer|foundation$|insulation/.test(id)

/** 0 says that no edge, end or neighbour is near. */
const expectLeast = (mm: number, least: number, joint: string) => {
  if (mm !== 0) expect(mm, joint).toBeGreaterThanOrEqual(least - 0.06)
}

/** Twice the diameter to an edge where glue carries, three times where screws do; 4 d apart. */
const expectKept = ({ joint, fastener, penetrationMm, layers, glue, ...f }: Fastening) => {
  const d = fastener.diameterMm
  const holds = penetrationMm >= LEAST_PENETRATION_D.screw * d - 0.06
  const clamps = glue && fastener.lengthMm >= 2 * (layers[0]?.thicknessMm ?? 0) - 0.1
  expect(holds || clamps, joint).toBe(true)
  expectLeast(f.edgeMm, 2 * d, joint)
  expectLeast(f.endMm, 3 * d, joint)
  // The holes of a leaf are where its maker put them.
  if (!/(hinge|latch) to/.test(joint)) expectLeast(f.spacingMm, 4 * d, joint)
}

describe('computeFasteners, any hive', () => {
  it('never drives a point out of the last layer, and leaves 3 mm behind it', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), fc.boolean(), ({ design, hive }, nails) => {
        const shop = { ...design.shop, fastening: nails ? 'nails' : 'screws' } as const
        for (const f of fastenersOf({ ...design, shop }, hive).fastenings) {
          const thickness = f.layers.reduce((sum, l) => sum + l.thicknessMm, 0)
          if (f.fastener.kind === 'peg') continue
          expect(f.fastener.lengthMm, f.joint).toBeLessThanOrEqual(thickness + 0.11)
          if (f.warning === undefined) {
            expect(f.coverMm, f.joint).toBeGreaterThanOrEqual(POINT_COVER_MM - 0.06)
          }
          expect(f.count, f.joint).toBeGreaterThan(0)
        }
      }),
      { numRuns: runs(20) },
    )
  })

  it('keeps penetration and distances, or warns', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ design, hive }) => {
        const rows = fastenersOf(design, hive).fastenings.filter(
          (f) => f.warning === undefined && f.fastener.kind === 'screw' && !/^Halves/.test(f.joint),
        )
        for (const f of rows) expectKept(f)
      }),
      { numRuns: runs(20) },
    )
  })

  it('leaves no sawn part without a fastening or a glue joint', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ design, hive }) => {
        const report = fastenersOf(design, hive)
        const held = new Set(
          [...report.fastenings, ...report.adhesives, ...report.loose].flatMap((f) => f.partIds),
        )
        for (const part of hive.parts) {
          if (materialById(part.material).family === 'insulation' || isLoose(part.id)) continue
          expect(held.has(part.id), part.id).toBe(true)
        }
      }),
      { numRuns: runs(20) },
    )
  })

  it('names only parts and letters that there are', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ design, hive }) => {
        const rows = cutList(hive.parts)
        const ids = new Set(hive.parts.map((p) => p.id))
        const labels = new Set(rows.map((row) => row.label))
        const report = computeFasteners(design, hive, rows)
        for (const f of [...report.fastenings, ...report.loose]) {
          for (const id of f.partIds) expect(ids.has(id), id).toBe(true)
          for (const label of f.labels) expect(labels.has(label), f.joint).toBe(true)
        }
      }),
      { numRuns: runs(8) },
    )
  })

  it('adds frame nails in proportion to the frames and changes no frame joint', () => {
    const nailsOf = (frames: number) =>
      fastenersOf(setFrameCount(DEFAULT_DESIGN, frames)).totals.find(
        ({ fastener }) => fastener.kind === 'nail',
      )?.count ?? 0
    expect(nailsOf(24)).toBe(2 * nailsOf(12))
  })
})
