import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { materialById } from '../../../../src/catalog/materials.ts'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { cutList } from '../../../../src/reports/shop/cutList.ts'
import { buildCuttingJobs } from '../../../../src/reports/shop/cutting/buildCuttingJobs.ts'
import type { CuttingJobs } from '../../../../src/reports/shop/cutting/cuttingPlan.ts'
import type { CutListRow } from '../../../../src/reports/shop/shopReport.ts'
import { arbitraryMixedBuilt, runs } from '../../../hive/arbitraryBuilt.ts'

const isCut = ({ material, bought }: CutListRow): boolean => {
  const { form, family } = materialById(material)
  return !bought && form !== 'batt' && form !== 'loose' && family !== 'wax'
}

/** Labels of all jobs and problems, one after another. */
const labelsOf = ({ lumber, sheets, problems }: CuttingJobs): readonly string[] => [
  ...lumber.flatMap(({ blanks }) => blanks.map(({ label }) => label)),
  ...sheets.flatMap(({ labels }) => labels),
  ...problems.flatMap(({ labels }) => labels),
]

/** How many parts each row gets from the jobs. */
const partsOf = ({ lumber, sheets }: CuttingJobs): ReadonlyMap<string, number> =>
  new Map([
    ...lumber.flatMap(({ blanks }) => blanks.map(({ label, parts }) => [label, parts] as const)),
    ...sheets.flatMap(({ labels, job }) =>
      labels.map((label, i) => [label, job.parts[i]?.count ?? 0] as const),
    ),
  ])

const withHives = (design: Design, hivesAtOnce: number): Design => ({
  ...design,
  shop: { ...design.shop, hivesAtOnce },
})

describe('buildCuttingJobs', () => {
  it('has every part that is cut in exactly one job or one problem', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ design, hive }) => {
        const rows = cutList(hive.parts)
        const jobs = buildCuttingJobs(design, rows)
        expect([...labelsOf(jobs)].sort()).toEqual(
          rows
            .filter(isCut)
            .map(({ label }) => label)
            .sort(),
        )
        const parts = partsOf(jobs)
        for (const { label, count } of rows.filter((row) => parts.has(row.label))) {
          expect(parts.get(label)).toBe(count * design.shop.hivesAtOnce)
        }
      }),
      { numRuns: runs(40) },
    )
  })

  it('gives each blank room for its parts, in a board that is long enough', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ design, hive }) => {
        for (const { job, blanks, ...board } of buildCuttingJobs(design, cutList(hive.parts))
          .lumber) {
          expect(job.parts.map(({ id }) => id)).toEqual(blanks.map(({ label }) => label))
          blanks.forEach((blank, i) => {
            const { across, layers, parts } = blank
            const count = job.parts[i]?.count ?? 0
            expect(count * across * layers).toBeGreaterThanOrEqual(parts)
            expect((count - 1) * across * layers).toBeLessThan(parts)
            const wide = across * blank.widthMm + (across - 1) * job.kerfMm
            const thick = layers * blank.thicknessMm + (layers - 1) * (job.kerfMm + 3)
            expect(wide).toBeLessThanOrEqual(board.widthMm + 0.2001)
            expect(thick).toBeLessThanOrEqual(board.thicknessMm + 0.2001)
            const longest = Math.max(...job.stocks.map(({ lengthMm }) => lengthMm))
            expect(blank.lengthMm).toBeLessThanOrEqual(longest - job.trimMm)
          })
        }
      }),
      { numRuns: runs(40) },
    )
  })

  it('multiplies every count by the hives that are built at once', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ design, hive }) => {
        const rows = cutList(hive.parts)
        const plain = { ...design, stock: { lumber: [], sheets: [], goods: [] }, made: [] }
        const one = partsOf(buildCuttingJobs(withHives(plain, 1), rows))
        const three = partsOf(buildCuttingJobs(withHives(plain, 3), rows))
        // More parts may be worth another section, so the rows can come in another order.
        expect(new Map([...three].map(([label, count]) => [label, count / 3]))).toEqual(one)
      }),
      { numRuns: runs(20) },
    )
  })

  it('leaves out what is cut already, and no more', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), fc.nat(), ({ design, hive }, pick) => {
        const rows = cutList(hive.parts)
        const before = partsOf(buildCuttingJobs({ ...design, made: [] }, rows))
        const cut = rows.filter(({ label }) => before.has(label))
        const row = cut[pick % cut.length]
        const [partId] = row?.partIds ?? []
        if (row === undefined || partId === undefined) return
        const made = [{ partId, lengthMm: 1, widthMm: 1, thicknessMm: 1 }]
        const after = partsOf(buildCuttingJobs({ ...design, made }, rows))
        const left = (before.get(row.label) ?? 0) - 1
        expect(after.get(row.label) ?? 0).toBe(left)
      }),
      { numRuns: runs(20) },
    )
  })

  it('needs work that grows with the rows alone: the same rows of a longer hive cost the same', () => {
    // Counted, not timed: every part is looked at in the row that it is in.
    let looks = 0
    const rows = [1, 1000].map((count) => ({
      label: 'A',
      name: 'Rail',
      material: 'spruce',
      materialName: 'Spruce',
      lengthMm: 500,
      widthMm: 60,
      thicknessMm: 28,
      count,
      grain: 'length' as const,
      hand: 'none' as const,
      massKgEach: 1,
      operations: [],
      groups: [],
      get partIds() {
        looks += 1
        return []
      },
      bought: false,
      stock: undefined,
    }))
    for (const row of rows) buildCuttingJobs(withHives(DEFAULT_DESIGN, 1), [row])
    expect(looks).toBe(0)
  })
})
