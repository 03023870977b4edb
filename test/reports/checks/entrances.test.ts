import { describe, expect, it } from 'vitest'
import type { Design } from '../../../src/design/schema.ts'
import { findCheck, reportOn, SAMPLE, withFields } from './sampleHive.ts'

const [entrance] = SAMPLE.openings.entrances
if (entrance === undefined) throw new Error('The sample hive has an entrance.')

const hiveWith = (
  divider: 'none' | 'fitted',
  places: readonly number[],
  size: { readonly widthMm: number } = { widthMm: 180 },
): Design => ({
  ...withFields(SAMPLE, [{ field: 'cavity.followers', value: 'none' }]),
  cavity: { ...SAMPLE.cavity, followers: 'none', divider, dividerAfterFrame: 12 },
  openings: {
    ...SAMPLE.openings,
    entrances: places.map((centreMm) => ({ ...entrance, ...size, centreMm })),
  },
})
const check = (design: Design, id: string) => findCheck(reportOn(design).checks, id)

describe('checkEntrances', () => {
  it('wants one or two entrances for each colony', () => {
    expect(check(hiveWith('none', []), 'entrance-number').verdict).toBe('fix')
    expect(check(hiveWith('none', [150]), 'entrance-number').verdict).toBe('ok')
    expect(check(hiveWith('none', [150, 450]), 'entrance-number').verdict).toBe('ok')
    const three = hiveWith('none', [300, 450, 600], { widthMm: 60 })
    expect(check(three, 'entrance-number').verdict).toBe('look')
    expect(check(hiveWith('fitted', [150, 700]), 'entrance-number').verdict).toBe('ok')
  })

  it('moves an entrance to the colony that has none when the other can spare it', () => {
    const design = hiveWith('fitted', [120, 330], { widthMm: 130 })
    const found = check(design, 'entrance-number')
    expect(found).toMatchObject({ measured: 0, verdict: 'fix' })
    const cured = withFields(design, found.fix?.changes ?? [])
    expect(check(cured, 'entrance-number').verdict).toBe('ok')
  })

  it('offers nothing when the only entrance is needed where it is', () => {
    expect(check(hiveWith('fitted', [150]), 'entrance-number').fix).toBeUndefined()
  })

  it('adds up the entrances of a colony and shares the wanted area between them', () => {
    const design = hiveWith('none', [200, 600], { widthMm: 200 })
    expect(check(design, 'entrance-area')).toMatchObject({ measured: 3200, verdict: 'look' })
    const fix = check(design, 'entrance-area').fix
    // 1400 mm² over two slots 8 mm high: 88 mm each.
    expect(fix?.changes).toContainEqual({ field: 'openings.entrances.1.widthMm', value: 88 })
    expect(check(withFields(design, fix?.changes ?? []), 'entrance-area').verdict).toBe('ok')
  })

  it('moves a widened entrance off the corner, and keeps the winter width within it', () => {
    const near = hiveWith('none', [60], { widthMm: 90 })
    const fix = check(near, 'entrance-area').fix
    // 175 mm wide needs its middle 99.5 mm from the corner.
    expect(fix?.changes).toContainEqual({ field: 'openings.entrances.0.centreMm', value: 100 })
    const wide = hiveWith('none', [300], { widthMm: 400 })
    expect(check(wide, 'entrance-area').fix?.changes).toContainEqual({
      field: 'openings.entrances.0.winterWidthMm',
      value: 175,
    })
  })
})
