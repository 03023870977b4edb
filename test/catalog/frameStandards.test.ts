import { describe, expect, it } from 'vitest'
import { FRAME_STANDARDS, frameStandardById } from '../../src/catalog/frameStandards.ts'

function combOf(id: string): { readonly widthMm: number; readonly heightMm: number } {
  const { dimensions } = frameStandardById(id)
  return {
    widthMm: dimensions.bodyLengthMm - 2 * dimensions.sideBarThicknessMm,
    heightMm: dimensions.depthMm - dimensions.topBarThicknessMm - dimensions.bottomBarThicknessMm,
  }
}

describe('FRAME_STANDARDS', () => {
  it('offers the ten patterns, custom last', () => {
    expect(FRAME_STANDARDS.map((row) => row.id)).toEqual([
      'langstroth-deep',
      'langstroth-medium',
      'langstroth-shallow',
      'dadant',
      'layens',
      'british-national',
      'british-14x12',
      'zander',
      'german-normal',
      'custom',
    ])
  })

  it.each(FRAME_STANDARDS)('$id can be built and hung side by side', (row) => {
    const { dimensions: d, spacingMm } = row
    for (const value of [...Object.values(d), spacingMm]) {
      expect(Number.isFinite(value)).toBe(true)
      expect(value).toBeGreaterThan(0)
    }
    expect(d.shoulderWidthMm).toBeLessThanOrEqual(spacingMm)
    expect(d.topBarWidthMm).toBeLessThanOrEqual(spacingMm)
    expect(d.sideBarWidthMm).toBeLessThanOrEqual(d.shoulderWidthMm)
    expect(d.bottomBarWidthMm).toBeLessThanOrEqual(d.sideBarWidthMm)
    expect(d.lugThicknessMm).toBeLessThanOrEqual(d.topBarThicknessMm)
    expect(d.depthMm).toBeGreaterThan(d.topBarThicknessMm + d.bottomBarThicknessMm + 60)
    // An ear of at least 12 mm at each end, so that 9.5 mm of seat can carry it.
    expect(d.topBarLengthMm - d.bodyLengthMm).toBeGreaterThanOrEqual(24)
  })

  it.each(FRAME_STANDARDS)('$id cites a source and carries a note', (row) => {
    expect(row.source.length).toBeGreaterThan(10)
    expect(row.note.length).toBeGreaterThan(10)
    expect(row.name.length).toBeGreaterThan(3)
  })

  it.each(FRAME_STANDARDS)('$id leaves bees a way up between the top bars', (row) => {
    // A worker needs 6.5 mm to pass: Bertrand, La conduite du rucher, p. 120.
    expect(row.spacingMm - row.dimensions.topBarWidthMm).toBeGreaterThanOrEqual(6.5)
  })

  it.each(FRAME_STANDARDS)('$id keeps to brood spacing and to the length of a cage', (row) => {
    // Brood spacing 32 to 40: Bertrand p. 248 and German practice; 40 from memory.
    expect(row.spacingMm).toBeGreaterThanOrEqual(32)
    expect(row.spacingMm).toBeLessThanOrEqual(40)
    // Cages are made for top bars up to 483 mm (19 in); 330 is the shortest in use.
    expect(row.dimensions.topBarLengthMm).toBeGreaterThanOrEqual(330)
    expect(row.dimensions.topBarLengthMm).toBeLessThanOrEqual(483)
  })

  it('tells which frames are too deep for a small extractor', () => {
    // 232 mm fits every common cage: worked out from cage sizes, no published rule.
    const deep = FRAME_STANDARDS.filter((row) => row.dimensions.depthMm > 232)
    expect(deep.map((row) => row.id)).toEqual(['dadant', 'layens', 'british-14x12'])
    for (const row of deep) expect(row.note).toMatch(/extractor/)
  })

  it('has the published Langstroth sizes', () => {
    // Frame table of a hive-building handbook (dummies.com): 19 in top bar, 9 1/8, 6 1/4, 5 3/8 in.
    const depths = { deep: 9.125, medium: 6.25, shallow: 5.375 }
    for (const [size, inches] of Object.entries(depths)) {
      const { dimensions } = frameStandardById(`langstroth-${size}`)
      expect(Math.abs(dimensions.depthMm - inches * 25.4)).toBeLessThanOrEqual(0.5)
      expect(Math.abs(dimensions.topBarLengthMm - 19 * 25.4)).toBeLessThanOrEqual(0.5)
      expect(Math.abs(dimensions.bodyLengthMm - 17.625 * 25.4)).toBeLessThanOrEqual(0.5)
    }
  })

  it('holds 135 square inches of comb in a Langstroth deep', () => {
    // htfbw.com: ten deeps hold 2700 sq in on both faces, so 135 sq in (8.71 dm²) on one.
    const comb = combOf('langstroth-deep')
    expect(Math.abs((comb.widthMm * comb.heightMm) / 645.16 - 135)).toBeLessThan(1)
    expect(Math.abs((comb.widthMm * comb.heightMm) / 1e4 - 8.71)).toBeLessThan(0.05)
  })

  it('has the published British National sizes', () => {
    // Wikibooks, Beekeeping/British National: top bar 17 in, frame 14 by 8 1/2 in, ears 1 1/2 in.
    const { dimensions } = frameStandardById('british-national')
    expect(dimensions).toMatchObject({ topBarLengthMm: 432, bodyLengthMm: 356, depthMm: 216 })
    expect((dimensions.topBarLengthMm - dimensions.bodyLengthMm) / 2).toBe(38)
    // beehivejournal.blogspot.com (2010): the 14 x 12 differs in depth alone, 12 in.
    expect(frameStandardById('british-14x12').dimensions).toEqual({ ...dimensions, depthMm: 305 })
  })

  it('has the published Layens sizes', () => {
    // Bertrand, La conduite du rucher, p. 289-292: 368 top bar, 310 + 2 x 10 wide, 415 over all,
    // comb 310 by 370, 20 frames in 767 mm.
    const { dimensions, spacingMm } = frameStandardById('layens')
    expect(dimensions).toMatchObject({
      topBarLengthMm: 368,
      bodyLengthMm: 310 + 2 * 10,
      depthMm: 415,
      lugThicknessMm: 10,
    })
    expect(combOf('layens')).toEqual({ widthMm: 310, heightMm: 370 })
    expect(spacingMm).toBeCloseTo(767 / 20, 9)
  })

  it('has the published Dadant-Blatt sizes', () => {
    // Bertrand p. 252-256: 435 outside, comb 420 wide and 265 to 270 high, spacing 37.
    const row = frameStandardById('dadant')
    expect(row.dimensions.bodyLengthMm).toBe(435)
    expect(row.spacingMm).toBe(37)
    expect(combOf('dadant').widthMm).toBe(420)
    expect(combOf('dadant').heightMm).toBeGreaterThanOrEqual(265)
    expect(combOf('dadant').heightMm).toBeLessThanOrEqual(270)
  })

  it('has the published Zander and German Normal sizes', () => {
    // honigimker.de: 220 deep, 475 long (477 from memory); 394 by 223.
    expect(frameStandardById('zander').dimensions).toMatchObject({
      topBarLengthMm: 477,
      depthMm: 220,
    })
    expect(frameStandardById('german-normal').dimensions).toMatchObject({
      topBarLengthMm: 394,
      depthMm: 223,
    })
  })
})

describe('frameStandardById', () => {
  it('starts a custom frame from the Langstroth deep and asks to measure', () => {
    const custom = frameStandardById('custom')
    expect(custom.dimensions).toEqual(frameStandardById('langstroth-deep').dimensions)
    expect(custom.note).toMatch(/[Mm]easure/)
  })

  it('throws an error that names the unknown id', () => {
    expect(() => frameStandardById('warre')).toThrow('"warre"')
  })
})
