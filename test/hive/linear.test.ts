import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { Design } from '../../src/design/schema.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import type { Part, PartGroup } from '../../src/hive/part.ts'

const withFrames = (frames: number, form: Design['frame']['form']): Design => ({
  ...DEFAULT_DESIGN,
  frame: { ...DEFAULT_DESIGN.frame, form },
  cavity: { ...DEFAULT_DESIGN.cavity, frames, followerAAfterFrame: 3 },
  // Without openings, so that a wall's studs follow from its length alone.
  openings: { ...DEFAULT_DESIGN.openings, entrances: [] },
})

const partsWith = (frames: number, form: Design['frame']['form'] = 'split'): readonly Part[] => {
  const result = deriveHive(withFrames(frames, form))
  if (result.kind === 'refused') throw new Error(result.refusals[0]?.message)
  return result.hive.parts
}

const countIn = (parts: readonly Part[], ...groups: readonly PartGroup[]): number =>
  parts.filter((p) => groups.includes(p.group)).length

describe('the number of parts', () => {
  it('grows by the pieces of one frame for each frame', () => {
    // Top bar, two side bars, bottom bar, foundation: 5; a split frame has them twice.
    for (const frames of [4, 19, 20, 99, 199]) {
      expect(countIn(partsWith(frames + 1), 'frames') - countIn(partsWith(frames), 'frames')).toBe(
        10,
      )
    }
    expect(countIn(partsWith(20, 'single'), 'frames')).toBe(20 * 5)
    expect(countIn(partsWith(200), 'frames')).toBe(200 * 10)
  })

  it('stays the same in boards, covers, end walls, rings and stand', () => {
    const still = ['boards', 'covers', 'left-wall', 'right-wall', 'rim', 'stand'] as const
    expect(countIn(partsWith(200), ...still)).toBe(countIn(partsWith(20), ...still))
  })

  it('grows in a long wall by one stud and one piece of insulation for each stretch of spacing', () => {
    // Row: frames × 35 + follower 32 + 4 × 4 + play 15; wall: 2 × (12 + 60) longer; less a stud of 28.
    const bays = (frames: number) => Math.ceil((frames * 35 + 63 + 144 - 28) / 600)
    const grown = countIn(partsWith(200), 'back-wall') - countIn(partsWith(20), 'back-wall')
    expect(grown).toBe(2 * (bays(200) - bays(20)))
  })

  it('in all grows by the pieces of the frames and of the panels only', () => {
    const panels = ['front-wall', 'back-wall', 'floor', 'lid', 'roof', 'hardware'] as const
    const [few, many] = [partsWith(20), partsWith(200)]
    const inPanels = countIn(many, ...panels) - countIn(few, ...panels)
    expect(many.length - few.length).toBe(180 * 10 + inPanels)
    // Bays of panels, hinges: one for every 450 mm or more of 180 × 35 = 6300 mm, in six places.
    expect(inPanels).toBeLessThan(6 * 2 * 14)
  })
})
