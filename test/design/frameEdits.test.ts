import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FRAME_STANDARDS, frameStandardById } from '../../src/catalog/frameStandards.ts'
import { chooseDivider } from '../../src/design/chooseDivider.ts'
import { DEFAULT_DESIGN, DEFAULT_ENTRANCE } from '../../src/design/defaults.ts'
import { chooseFrameStandard, setFrameCount } from '../../src/design/frameEdits.ts'
import { colonyStretches, rowLengthMm } from '../../src/design/rowRoom.ts'
import { type Design, designSchema } from '../../src/design/schema.ts'
import { arbitraryDesign } from './arbitraryDesign.ts'

/** The default design with some fields of the cavity replaced. */
const withCavity = (fields: Partial<Design['cavity']>): Design => ({
  ...DEFAULT_DESIGN,
  cavity: { ...DEFAULT_DESIGN.cavity, ...fields },
})

const boardPlaces = ({ cavity }: Design): readonly number[] => [
  ...(cavity.followers === 'none' ? [] : [cavity.followerAAfterFrame]),
  ...(cavity.followers === 'two' ? [cavity.followerBAfterFrame] : []),
  ...(cavity.divider === 'fitted' ? [cavity.dividerAfterFrame] : []),
]

describe('chooseFrameStandard', () => {
  it.each(FRAME_STANDARDS.filter((row) => row.id !== 'custom'))('copies $name', ({ id }) => {
    const standard = id as Design['frame']['standard']
    const { frame } = chooseFrameStandard(DEFAULT_DESIGN, standard)
    const { dimensions, spacingMm } = frameStandardById(id)
    expect(frame).toEqual({ ...DEFAULT_DESIGN.frame, ...dimensions, standard, spacingMm })
  })

  it('keeps the present sizes for a frame of one’s own', () => {
    const zander = chooseFrameStandard(DEFAULT_DESIGN, 'zander')
    const { frame } = chooseFrameStandard(zander, 'custom')
    expect(frame).toEqual({ ...zander.frame, standard: 'custom' })
  })
})

describe('setFrameCount', () => {
  it('keeps followers and divider in their share of the row', () => {
    const { cavity } = setFrameCount(DEFAULT_DESIGN, 40)
    expect(cavity).toMatchObject({
      frames: 40,
      followerAAfterFrame: 24,
      followerBAfterFrame: 40,
      dividerAfterFrame: 20,
    })
  })

  it('leaves at least four frames hanging', () => {
    expect(setFrameCount(withCavity({ emptyPlaces: 10 }), 12).cavity.emptyPlaces).toBe(8)
    expect(setFrameCount(withCavity({ emptyPlaces: 3 }), 40).cavity.emptyPlaces).toBe(3)
  })

  it('leaves the entrance where it is while it fits', () => {
    expect(setFrameCount(DEFAULT_DESIGN, 200).openings).toEqual(DEFAULT_DESIGN.openings)
    expect(setFrameCount(DEFAULT_DESIGN, 8).openings).toEqual(DEFAULT_DESIGN.openings)
  })

  it('shrinks an entrance that no longer fits, and its winter width with it', () => {
    const small = setFrameCount(DEFAULT_DESIGN, 4)
    const [entrance = DEFAULT_ENTRANCE] = small.openings.entrances
    // The row goes from 20 × 35 + 63 = 763 mm to 4 × 35 + 63 = 203 mm: 180 × 203 / 763 = 47.
    expect(entrance).toEqual({ ...DEFAULT_ENTRANCE, centreMm: 40, widthMm: 47, winterWidthMm: 47 })
  })

  it('moves the second colony’s entrance with the far end', () => {
    const parted = chooseDivider(DEFAULT_DESIGN, 'fitted')
    const longer = setFrameCount(parted, 40)
    const grown = rowLengthMm(longer) - rowLengthMm(parted)
    expect(grown).toBe(20 * 35)
    expect(longer.openings.entrances.map((e) => e.centreMm)).toEqual(
      parted.openings.entrances.map((e, i) => e.centreMm + (i === 1 ? grown : 0)),
    )
  })

  it('lays no more cover boards than have a hand’s width', () => {
    expect(setFrameCount(withCavity({ coverSegments: 20 }), 10).cavity.coverSegments).toBe(5)
    const parted = withCavity({ divider: 'fitted', coverSegments: 20 })
    expect(setFrameCount(parted, 4).cavity.coverSegments).toBe(2)
  })

  it('keeps the count in its range and changes nothing for the same or no count', () => {
    expect(setFrameCount(DEFAULT_DESIGN, 1).cavity.frames).toBe(4)
    expect(setFrameCount(DEFAULT_DESIGN, 1e9).cavity.frames).toBe(200)
    expect(setFrameCount(DEFAULT_DESIGN, 20.3)).toBe(DEFAULT_DESIGN)
    expect(setFrameCount(DEFAULT_DESIGN, Number.NaN)).toBe(DEFAULT_DESIGN)
  })

  it('keeps any design valid, its boards apart and its openings inside their rooms', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer({ min: 4, max: 200 }), (design, count) => {
        const after = setFrameCount(design, count)
        expect(designSchema.safeParse(after).success).toBe(true)
        const places = boardPlaces(after)
        expect(new Set(places).size).toBe(places.length)
        expect(Math.max(0, ...places)).toBeLessThanOrEqual(count)
        expect(after.cavity.divider === 'fitted' && after.cavity.dividerAfterFrame === count).toBe(
          false,
        )
        for (const { wall, centreMm, widthMm } of after.openings.entrances) {
          const [first, second = first] = colonyStretches(after, wall)
          expect(centreMm - widthMm / 2).toBeGreaterThanOrEqual(first.fromMm)
          // Centres end at 10 m, more than any row that is squeezed.
          expect(centreMm + widthMm / 2).toBeLessThanOrEqual(second.toMm)
        }
      }),
      { numRuns: 200 },
    )
  })
})
