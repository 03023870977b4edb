import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chooseDivider } from '../../src/design/chooseDivider.ts'
import { DEFAULT_DESIGN, DEFAULT_ENTRANCE, DEFAULT_VENT } from '../../src/design/defaults.ts'
import { setFrameCount } from '../../src/design/frameEdits.ts'
import { addEntrance, addVent, removeEntrance, removeVent } from '../../src/design/openingEdits.ts'
import { colonyStretches } from '../../src/design/rowRoom.ts'
import { type Design, designSchema } from '../../src/design/schema.ts'
import { arbitraryDesign } from './arbitraryDesign.ts'

const withEntrances = (entrances: Design['openings']['entrances']): Design => ({
  ...DEFAULT_DESIGN,
  openings: { ...DEFAULT_DESIGN.openings, entrances },
})

const repeat = (design: Design, edit: (design: Design) => Design, times: number): Design =>
  Array.from({ length: times }).reduce<Design>((before) => edit(before), design)

describe('addEntrance', () => {
  it('puts one like the last in the middle of the free front wall', () => {
    const [, added] = addEntrance(DEFAULT_DESIGN).openings.entrances
    // Free from 150 + 90 + 70 = 310 to 763 - 40 = 723: the middle is 516.5.
    expect(added).toEqual({ ...DEFAULT_ENTRANCE, centreMm: 517 })
  })

  it('goes to the back wall when the front has no room', () => {
    const two = repeat(DEFAULT_DESIGN, addEntrance, 2)
    expect(two.openings.entrances.map((e) => e.wall)).toEqual(['front', 'front', 'back'])
  })

  it('begins with the default entrance when there was none', () => {
    const [added] = addEntrance(withEntrances([])).openings.entrances
    expect(added).toMatchObject({ wall: 'front', widthMm: DEFAULT_ENTRANCE.widthMm })
  })

  it('makes a narrower one when no wall has room for a whole one', () => {
    const wide = { ...DEFAULT_ENTRANCE, widthMm: 600, winterWidthMm: 500 }
    const small = setFrameCount(withEntrances([wide]), 10)
    const [, added] = addEntrance(small).openings.entrances
    expect(added?.widthMm).toBeLessThan(600)
    expect(added?.winterWidthMm).toBeLessThanOrEqual(added?.widthMm ?? 0)
  })

  it('stops at six', () => {
    const full = repeat(DEFAULT_DESIGN, addEntrance, 5)
    expect(full.openings.entrances).toHaveLength(6)
    expect(addEntrance(full)).toBe(full)
  })

  it('keeps any design valid', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const added = addVent(addEntrance(design))
        expect(designSchema.safeParse(added).success).toBe(true)
      }),
    )
  })
})

describe('removeEntrance', () => {
  it('takes the one of that number, and may take the last', () => {
    const two = addEntrance(DEFAULT_DESIGN)
    expect(removeEntrance(two, 1)).toEqual(DEFAULT_DESIGN)
    expect(removeEntrance(DEFAULT_DESIGN, 0).openings.entrances).toEqual([])
  })

  it('leaves the design as it is for a number that is not there', () => {
    for (const index of [-1, 1, 0.5])
      expect(removeEntrance(DEFAULT_DESIGN, index)).toBe(DEFAULT_DESIGN)
  })
})

describe('addVent', () => {
  it('keeps clear of the entrance', () => {
    const [added] = addVent(DEFAULT_DESIGN).openings.vents
    expect(added).toEqual({ ...DEFAULT_VENT, centreMm: 517 })
  })

  it('leaves the wall under the lid’s hinges for the last', () => {
    const full = repeat(DEFAULT_DESIGN, addVent, 6)
    expect(full.openings.vents.map((vent) => vent.wall)).not.toContain('back')
    const lid = { ...DEFAULT_DESIGN.lid, hingeSide: 'front' as const }
    expect(addVent({ ...DEFAULT_DESIGN, lid }).openings.vents[0]?.wall).toBe('back')
  })

  it('stops at six, and removeVent takes one away', () => {
    const full = repeat(DEFAULT_DESIGN, addVent, 6)
    expect(addVent(full)).toBe(full)
    expect(removeVent(full, 0).openings.vents).toEqual(full.openings.vents.slice(1))
    expect(removeVent(full, 6)).toBe(full)
  })
})

describe('chooseDivider', () => {
  it('stands in the middle and gives the second colony an entrance at its outer end', () => {
    const { cavity, openings } = chooseDivider(DEFAULT_DESIGN, 'fitted')
    expect(cavity).toMatchObject({ divider: 'fitted', dividerAfterFrame: 10 })
    // The row is 763 + 12 + 2 × 4 divider + 15 play = 798 mm; 60 mm and half of 180 from its end.
    expect(openings.entrances).toEqual([DEFAULT_ENTRANCE, { ...DEFAULT_ENTRANCE, centreMm: 648 }])
  })

  it('counts entrances in the end walls', () => {
    const ends = withEntrances([
      { ...DEFAULT_ENTRANCE, wall: 'right' },
      { ...DEFAULT_ENTRANCE, wall: 'left' },
    ])
    expect(chooseDivider(ends, 'fitted').openings).toEqual(ends.openings)
  })

  it('replaces an entrance that meets the divider by one at each outer end', () => {
    const middle = withEntrances([{ ...DEFAULT_ENTRANCE, centreMm: 390 }])
    expect(chooseDivider(middle, 'fitted').openings.entrances.map((e) => e.centreMm)).toEqual([
      150, 648,
    ])
  })

  it('moves followers out of the divider’s way, one to each side', () => {
    const follow = (followers: 'one' | 'two', a: number, b: number) => {
      const cavity = {
        ...DEFAULT_DESIGN.cavity,
        followers,
        followerAAfterFrame: a,
        followerBAfterFrame: b,
      }
      const after = chooseDivider({ ...DEFAULT_DESIGN, cavity }, 'fitted').cavity
      return [after.followerAAfterFrame, after.followerBAfterFrame]
    }
    expect(follow('one', 10, 20)).toEqual([9, 20])
    expect(follow('one', 12, 20)).toEqual([12, 20])
    expect(follow('two', 12, 18)).toEqual([9, 18])
    expect(follow('two', 3, 6)).toEqual([3, 11])
  })

  it('is taken out without a trace on the entrances', () => {
    const parted = chooseDivider(DEFAULT_DESIGN, 'fitted')
    const whole = chooseDivider(parted, 'none')
    expect(whole.cavity.divider).toBe('none')
    expect(whole.openings).toBe(parted.openings)
    expect(chooseDivider(DEFAULT_DESIGN, 'none')).toBe(DEFAULT_DESIGN)
  })

  it('gives each colony of any design an entrance, and keeps it valid', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const after = chooseDivider(chooseDivider(design, 'none'), 'fitted')
        expect(designSchema.safeParse(after).success).toBe(true)
        const colonies = after.openings.entrances.map(({ wall, centreMm }) => {
          const [first] = colonyStretches(after, wall)
          return wall === 'left' || (wall !== 'right' && centreMm < first.toMm) ? 1 : 2
        })
        expect(new Set(colonies)).toEqual(new Set([1, 2]))
      }),
    )
  })
})
