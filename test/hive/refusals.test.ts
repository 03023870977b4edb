import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { fieldAt } from '../../src/design/fieldAt.ts'
import type { Design } from '../../src/design/schema.ts'
import { applyChanges, type FieldValue, setField } from '../../src/design/setField.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import type { Refusal } from '../../src/hive/refusal.ts'
import { arbitraryDesign, arbitrarySchemaDesign } from '../design/arbitraryDesign.ts'
import { runs } from './arbitraryBuilt.ts'
import { mendDesign } from './mendDesign.ts'

const refusalsOf = (design: Design): readonly Refusal[] => {
  const result = deriveHive(design)
  return result.kind === 'refused' ? result.refusals : []
}

/** The reason of a refusal: its field and its words without the numbers. */
const reasonOf = ({ field, message }: Refusal): string =>
  `${field}: ${message.replace(/-?\d+(\.\d+)?/g, '#')}`

/** What is wrong with a refusal itself. */
const flawsOf = (design: Design, refusal: Refusal): readonly string[] => {
  const { field: path, message, suggestion } = refusal
  const field = fieldAt(path)
  if (field === undefined) return [`${path} is not a field`]
  if (message.length < 20) return [`${path} has no proper message`]
  if (suggestion === undefined) return []
  if (field.kind !== 'number') return [`${path} is no number, yet ${suggestion} is suggested`]
  const { design: edited, limited } = setField(design, path, suggestion)
  if (limited !== undefined) return [`${path} can't be ${suggestion}: ${limited}`]
  const again = refusalsOf(edited).some((r) => reasonOf(r) === reasonOf(refusal))
  return again ? [`${reasonOf(refusal)} comes back after ${suggestion}`] : []
}

describe('a refusal', () => {
  it('names a field and says why, and a suggested number is allowed and takes it away', () => {
    const designs = fc.oneof(
      { arbitrary: arbitraryDesign(), weight: 1 },
      { arbitrary: arbitrarySchemaDesign(), weight: 2 },
    )
    fc.assert(
      fc.property(designs, (design) => {
        const flaws = refusalsOf(design).flatMap((refusal) => flawsOf(design, refusal))
        expect(flaws).toEqual([])
      }),
      { numRuns: runs(500), seed: 701 },
    )
  })

  it('comes with a reason whenever there is no hive', () => {
    fc.assert(
      fc.property(arbitrarySchemaDesign(), (design) => {
        const result = deriveHive(design)
        if (result.kind === 'refused') expect(result.refusals.length).toBeGreaterThan(0)
      }),
      { numRuns: runs(300), seed: 702 },
    )
  })

  it('leads to a hive when every one is obeyed, from any design at all', () => {
    fc.assert(
      fc.property(arbitrarySchemaDesign(), (design) => {
        expect(mendDesign(design)).toBeDefined()
      }),
      { numRuns: runs(300), seed: 703 },
    )
  })

  it('is rare for a design that a person might draw', () => {
    const sample = fc.sample(arbitraryDesign(), { numRuns: 300, seed: 704 })
    const refused = sample.filter((design) => refusalsOf(design).length > 0)
    expect(refused.length).toBeLessThan(sample.length / 2)
  })

  it('is never given for the examples', () => {
    for (const { design } of EXAMPLES) expect(refusalsOf(design)).toEqual([])
  })
})

describe.each<readonly [string, Readonly<Record<string, FieldValue>>, string, number]>([
  // The default top bar is 19 thick.
  ['a lug thicker than its top bar', { 'frame.lugThicknessMm': 20 }, 'frame.lugThicknessMm', 19],
  [
    'a top bar that does not reach the ledges',
    { 'frame.topBarLengthMm': 466 },
    // 448 + 2 × 8 = 464 wide inside; 2 mm on each ledge: 468.
    'frame.topBarLengthMm',
    468,
  ],
  [
    'a wall too thin for both ledges',
    { 'walls.coreMm': 25, 'stand.form': 'none' },
    // Seat 12 (the lining; the lugs need 9.5 + 2), ledge 15, strip 12, less the lining 12: 27.
    'walls.coreMm',
    27,
  ],
  [
    'a follower after the last frame',
    { 'cavity.followerAAfterFrame': 30 },
    'cavity.followerAAfterFrame',
    20,
  ],
  ['more empty places than frames', { 'cavity.emptyPlaces': 20 }, 'cavity.emptyPlaces', 19],
  [
    'a tray under a low follower',
    { 'floor.tray': true, 'cavity.followerBottomGapMm': 2 },
    'cavity.followerBottomGapMm',
    11,
  ],
  [
    'too many cover boards',
    { 'cavity.coverSegments': 40 },
    // Row 20 × 35 + 32 + 4 × 4 + 15 = 763; with two ledges of 15: 793; at 60 each: 13.
    'cavity.coverSegments',
    13,
  ],
  [
    'legs wider than the bearer',
    { 'stand.legWidthMm': 90 },
    // Insulation 60 + cladding 19 - 2 mm clear of the floor.
    'stand.legWidthMm',
    77,
  ],
  [
    'a rim that jams on the wall when the lid opens',
    { 'lid.rimDropMm': 60 },
    // From the hinge line to the far rim's inner face: 464 + 2 × 91 + 2 × 2.5 + 19 = 670. The root of
    // 2 × 670 × 2.5 - 2.5² = 3343.75 is 57.82; less half the 1 mm gap over the hinge rail: 57.3.
    'lid.rimDropMm',
    57.3,
  ],
  [
    'rails that leave no room between them',
    { 'walls.railWidthMm': 90, 'walls.railSpacingMm': 120 },
    // End wall 464 long: with 77, span 387, 4 bays of 96.75, pockets 19.75; with 76, span 388, pitch
    // 97, pockets 21. Long wall 763 + 2 × 72 = 907: with 76, span 831, 7 bays of 118.7, pockets 42.7.
    'walls.railWidthMm',
    76,
  ],
  [
    'a hole larger than its row',
    {
      'openings.entrances.0.form': 'holes',
      'openings.entrances.0.widthMm': 20,
      'openings.entrances.0.heightMm': 32,
    },
    'openings.entrances.0.widthMm',
    32,
  ],
  [
    'an entrance beyond the corner',
    { 'openings.entrances.0.centreMm': 900 },
    // 763 - 180 / 2 - 12 mm of timber.
    'openings.entrances.0.centreMm',
    661,
  ],
  [
    'an entrance as high as the rim on the front',
    { 'openings.entrances.0.bottomMm': 480 },
    // Frame top 13 + 464 = 477, rest 467.5, wall top 477 + 7 + 12 = 496. Rest - 12 = 455.5 is lower
    // than the rim's edge, 496 - 30 = 466; less the height of 8: 447.5, rounded down.
    'openings.entrances.0.bottomMm',
    447,
  ],
])('%s', (_, changes, field, suggestion) => {
  it('is refused with the number that would do', () => {
    const edits = Object.entries(changes).map(([path, value]) => ({ field: path, value }))
    expect(refusalsOf(applyChanges(DEFAULT_DESIGN, edits))).toMatchObject([{ field, suggestion }])
  })
})
