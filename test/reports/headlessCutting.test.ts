import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import { buildHeadlessReport } from '../../src/reports/headless.ts'
import { headlessSchema } from '../../src/reports/headlessSchema.ts'
import { solveCuttingPlan } from '../../src/reports/shop/cutting/solveCuttingPlan.ts'
import { runWholeReports } from '../../src/reports/wholeReport.ts'

const built = deriveHive(DEFAULT_DESIGN)
if (built.kind === 'refused') throw new Error('The default design must be built.')
const { hive } = built

const reportWith = (plan: Parameters<typeof runWholeReports>[3]) => {
  const report = runWholeReports(DEFAULT_DESIGN, hive, undefined, plan)
  return buildHeadlessReport({ design: DEFAULT_DESIGN, hive, report, warnings: [] })
}

const unplanned = runWholeReports(DEFAULT_DESIGN, hive).shop.cutting
const planned = reportWith(solveCuttingPlan(unplanned, 4))
const { cutting, cutList } = planned.shop

describe('the cutting plan in the report', () => {
  it('follows the schema, planned or not', () => {
    for (const report of [reportWith(undefined), planned]) {
      const plain = JSON.parse(JSON.stringify(report))
      const checked = headlessSchema.safeParse(plain)
      expect(checked.error?.issues ?? []).toEqual([])
      expect(checked.data).toEqual(plain)
    }
    expect(reportWith(undefined).shop.cutting.lumber[0]).not.toHaveProperty('boards')
  })

  it('cuts every part of the cut list, by its label', () => {
    expect(cutting).toMatchObject({ hives: 1, isFinal: true, problems: [] })
    const strips = new Map(
      cutting.lumber.flatMap(({ blanks }) =>
        blanks.map(({ label, across, layers }) => [label, across * layers] as const),
      ),
    )
    const cut = new Map<string, number>()
    for (const { pieces, count } of [
      ...cutting.lumber.flatMap(({ boards }) => boards ?? []),
      ...cutting.sheets.flatMap(({ sheets }) => sheets ?? []),
    ]) {
      for (const { label } of pieces) {
        cut.set(label, (cut.get(label) ?? 0) + count * (strips.get(label) ?? 1))
      }
    }
    for (const { label, count } of cutList.filter((row) => !row.bought)) {
      // The last length of board can hold more strips than are still wanted.
      expect(cut.get(label), label).toBeGreaterThanOrEqual(count)
    }
    expect([...cut.keys()].sort()).toEqual(
      cutList
        .filter((row) => !row.bought)
        .map(({ label }) => label)
        .sort(),
    )
  })

  it('adds up the prices of the boards, and lays no piece over another', () => {
    for (const { boards = [], stocks, price, kerfMm } of cutting.lumber) {
      const paid = boards.map(({ stockId, count }) => {
        return count * (stocks.find(({ id }) => id === stockId)?.price ?? Number.NaN)
      })
      expect(paid.reduce((sum, p) => sum + p, 0)).toBeCloseTo(price ?? Number.NaN, 6)
      for (const { pieces, lengthMm } of boards) {
        const ends = pieces.map((piece) => piece.fromMm + piece.lengthMm)
        expect(Math.max(...ends)).toBeLessThanOrEqual(lengthMm)
        pieces.slice(1).forEach(({ fromMm }, i) => {
          expect(fromMm - (ends[i] ?? 0)).toBeGreaterThanOrEqual(kerfMm - 1e-6)
        })
      }
    }
  })

  it('lists the cuts of a sheet so that each piece is there when it is cut', () => {
    for (const { sheets = [], trimMm } of cutting.sheets) {
      for (const { cuts, lengthMm, widthMm } of sheets) {
        const [first] = cuts
        if (first === undefined) continue
        expect(first.ofMm.lengthMm).toBeCloseTo(lengthMm - 2 * trimMm, 6)
        expect(first.ofMm.widthMm).toBeCloseTo(widthMm - 2 * trimMm, 6)
        // A later piece lies within one that was cut before it.
        cuts.slice(1).forEach(({ ofMm }, i) => {
          const before = cuts.slice(0, i + 1).map((cut) => cut.ofMm)
          const isInside = before.some(
            (piece) =>
              ofMm.xMm >= piece.xMm - 1e-6 &&
              ofMm.yMm >= piece.yMm - 1e-6 &&
              ofMm.xMm + ofMm.lengthMm <= piece.xMm + piece.lengthMm + 1e-6 &&
              ofMm.yMm + ofMm.widthMm <= piece.yMm + piece.widthMm + 1e-6,
          )
          expect(isInside).toBe(true)
        })
      }
    }
  })
})
