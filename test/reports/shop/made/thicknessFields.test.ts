import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { lengthFields } from '../../../../src/reports/shop/made/absorbFields.ts'
import { followMeasuredThickness } from '../../../../src/reports/shop/made/followMeasuredThickness.ts'
import { THICKNESS_FIELDS } from '../../../../src/reports/shop/made/thicknessFields.ts'
import { reportOn, withFields } from '../../checks/sampleHive.ts'

/** Between them they have every part that a field gives its thickness. */
const RICH: readonly Design[] = [
  withFields(DEFAULT_DESIGN, [
    { field: 'cavity.divider', value: 'fitted' },
    { field: 'cavity.dividerThicknessMm', value: 11 },
    { field: 'openings.entrances.0.centreMm', value: 150 },
  ]),
  withFields(DEFAULT_DESIGN, [
    { field: 'cavity.followerForm', value: 'plain' },
    { field: 'cavity.followerThicknessMm', value: 13 },
  ]),
]

/** Cut from a bar, not the thickness of a bought board. */
const SAWN_TO_SIZE = new Set(['frame.lugThicknessMm'])

describe('THICKNESS_FIELDS', () => {
  it('holds every length field that is called a thickness', () => {
    const mapped = new Set(THICKNESS_FIELDS.map(({ field }) => field))
    const called = lengthFields(DEFAULT_DESIGN).filter(({ field }) =>
      /thickness/i.test(field.label),
    )
    expect(called.length).toBeGreaterThan(10)
    expect(
      called.map(({ path }) => path).filter((path) => !mapped.has(path) && !SAWN_TO_SIZE.has(path)),
    ).toEqual([])
  })

  it('names only fields of the document, each with the value that it holds', () => {
    const values = new Map(lengthFields(DEFAULT_DESIGN).map(({ path, valueMm }) => [path, valueMm]))
    for (const { field, valueMm } of THICKNESS_FIELDS) {
      expect([field, valueMm(DEFAULT_DESIGN)]).toEqual([field, values.get(field)])
    }
  })

  // The builders decide what is made of which material; this holds the mapping against them.
  it.each(THICKNESS_FIELDS.map((entry) => [entry.field, entry] as const))(
    '%s gives parts of its material their thickness',
    (_, entry) => {
      const design = RICH.find((each) => entry.material(each) !== undefined)
      const material = design && entry.material(design)
      if (design === undefined || material === undefined) throw new Error('No hive has it.')
      const value = entry.valueMm(design)
      const rowsWith = (each: Design) =>
        reportOn(each).shop.cutList.filter(
          (row) =>
            row.material === material &&
            Math.abs(row.thicknessMm - (entry.valueMm(each) - entry.extraMm)) < 0.005,
        )
      const thinner = withFields(design, [{ field: entry.field, value: value - 0.07 }])
      const idsBefore = rowsWith(design).flatMap(({ partIds }) => partIds)
      const idsAfter = new Set(rowsWith(thinner).flatMap(({ partIds }) => partIds))
      // Some parts that had the old thickness have the new one: they hang on this field.
      expect(idsBefore.some((id) => idsAfter.has(id))).toBe(true)
    },
  )
})

describe('followMeasuredThickness', () => {
  const thicknessOf = (design: Design, id: string) =>
    reportOn(design).shop.cutList.find(({ partIds }) => partIds.includes(id))?.thicknessMm

  it('gives every field of that board the measured thickness, and tells what moved', () => {
    const remedy = followMeasuredThickness(DEFAULT_DESIGN, 'plywood-softwood', 12, 11.6)
    // Wall linings and cover boards are of 12 mm plywood.
    expect(remedy?.changes).toEqual([
      { field: 'walls.liningMm', value: 11.6 },
      { field: 'cavity.coverThicknessMm', value: 11.6 },
    ])
    const after = withFields(DEFAULT_DESIGN, remedy?.changes ?? [])
    expect(thicknessOf(after, 'front-wall/lining')).toBe(11.6)
    expect(thicknessOf(after, 'covers/board-1')).toBe(11.6)
    // The long walls reach past both end walls: 2 × 0.4 mm less.
    expect(remedy?.moved).toContainEqual({
      label: 'E',
      name: 'Long wall lining',
      side: 'length',
      beforeMm: 907,
      afterMm: 906.2,
    })
    expect(remedy?.newlyFailed).toEqual([])
  })

  it('reckons with the two sheets of an insulated follower', () => {
    const remedy = followMeasuredThickness(DEFAULT_DESIGN, 'xps', 20, 21)
    expect(remedy?.changes).toEqual([{ field: 'cavity.followerThicknessMm', value: 33 }])
  })

  it('notes made parts of that board with it, and gives way to the length of others', () => {
    const size = { lengthMm: 464, widthMm: 467.5, thicknessMm: 12 }
    const lining: Design = {
      ...DEFAULT_DESIGN,
      made: [{ partId: 'left-wall/lining', ...size }],
    }
    expect(followMeasuredThickness(lining, 'plywood-softwood', 12, 11.6)?.changes).toContainEqual({
      field: 'made.0.thicknessMm',
      value: 11.6,
    })
    // A long wall's rail is cut already: thinner linings would want it shorter.
    const rail: Design = {
      ...DEFAULT_DESIGN,
      made: [{ partId: 'front-wall/rail-high', lengthMm: 907, widthMm: 60, thicknessMm: 28 }],
    }
    expect(followMeasuredThickness(rail, 'plywood-softwood', 12, 11.6)).toBeUndefined()
  })

  it.each([
    ['no field holds it', 'plywood-softwood', 13, 12.5],
    ['it is another material', 'spruce', 12, 11.5],
    ['the field does not reach so far', 'plywood-softwood', 12, 3],
  ])('gives nothing when %s', (_, material, nominal, measured) => {
    expect(followMeasuredThickness(DEFAULT_DESIGN, material, nominal, measured)).toBeUndefined()
  })
})
