import { describe, expect, it } from 'vitest'
import { EXAMPLES } from '../../../src/design/examples.ts'
import type { FieldChange, Verdict } from '../../../src/reports/checks/runChecks.ts'
import { findCheck, reportOn, SAMPLE, withFields } from './sampleHive.ts'

type Row = readonly [id: string, values: Readonly<Record<string, FieldChange['value']>>, Verdict]

/** Both sides of each limit of each check that a design can break. */
const CASES: readonly Row[] = [
  ['bee-space-beside', { 'cavity.endBarSpaceMm': 6.5 }, 'ok'],
  ['bee-space-beside', { 'cavity.endBarSpaceMm': 6 }, 'look'],
  ['bee-space-beside', { 'cavity.endBarSpaceMm': 5.5 }, 'fix'],
  ['bee-space-beside', { 'cavity.endBarSpaceMm': 9 }, 'ok'],
  ['bee-space-beside', { 'cavity.endBarSpaceMm': 10 }, 'look'],
  ['bee-space-beside', { 'cavity.endBarSpaceMm': 10.5 }, 'fix'],
  ['bee-space-above', { 'cavity.aboveSpaceMm': 6 }, 'ok'],
  ['bee-space-above', { 'cavity.aboveSpaceMm': 5.5 }, 'look'],
  ['bee-space-above', { 'cavity.aboveSpaceMm': 5 }, 'fix'],
  ['bee-space-above', { 'cavity.aboveSpaceMm': 8 }, 'ok'],
  ['bee-space-above', { 'cavity.aboveSpaceMm': 10 }, 'look'],
  ['bee-space-above', { 'cavity.aboveSpaceMm': 10.5 }, 'fix'],
  ['bee-space-below', { 'cavity.belowSpaceMm': 10 }, 'ok'],
  ['bee-space-below', { 'cavity.belowSpaceMm': 9.5 }, 'look'],
  ['bee-space-below', { 'cavity.belowSpaceMm': 5.5 }, 'fix'],
  ['bee-space-below', { 'cavity.belowSpaceMm': 22 }, 'ok'],
  ['bee-space-below', { 'cavity.belowSpaceMm': 35 }, 'look'],
  ['bee-space-below', { 'cavity.belowSpaceMm': 36 }, 'fix'],
  // A tray of 4 mm takes room under the frames.
  ['bee-space-below', { 'cavity.belowSpaceMm': 13, 'floor.tray': true }, 'look'],
  ['last-comb-space', { 'cavity.rowEndSpaceMm': 2.5 }, 'ok'],
  ['last-comb-space', { 'cavity.rowEndSpaceMm': 2 }, 'look'],
  ['last-comb-space', { 'cavity.rowEndSpaceMm': 4.5 }, 'ok'],
  ['last-comb-space', { 'cavity.rowEndSpaceMm': 5 }, 'look'],
  ['frame-spacing', { 'frame.spacingMm': 38 }, 'ok'],
  // Bertrand's own Layens box has this pitch, over his limit of 38.
  ['frame-spacing', { 'frame.spacingMm': 38.35 }, 'look'],
  ['frame-spacing', { 'frame.spacingMm': 40.5 }, 'fix'],
  ['frame-spacing', { 'frame.spacingMm': 33, 'frame.shoulderWidthMm': 33 }, 'look'],
  ['frame-spacing', { 'frame.spacingMm': 31, 'frame.shoulderWidthMm': 31 }, 'fix'],
  ['frame-rest-depth', { 'cavity.aboveSpaceMm': 8 }, 'ok'],
  ['frame-rest-depth', { 'cavity.aboveSpaceMm': 8.5 }, 'look'],
  ['frame-rest-depth', { 'cavity.aboveSpaceMm': 4 }, 'fix'],
  ['frame-rest-seat', { 'walls.liningMm': 9.5, 'frame.topBarLengthMm': 473 }, 'ok'],
  ['frame-rest-seat', { 'walls.liningMm': 9, 'frame.topBarLengthMm': 473 }, 'look'],
  ['frame-rest-seat', { 'walls.liningMm': 7.5, 'frame.topBarLengthMm': 473 }, 'fix'],
  ['lug-bearing', { 'frame.topBarLengthMm': 479 }, 'ok'],
  ['lug-bearing', { 'frame.topBarLengthMm': 478 }, 'look'],
  ['lug-bearing', { 'frame.topBarLengthMm': 473 }, 'fix'],
  ['lug-end-clearance', { 'walls.liningMm': 12.5 }, 'ok'],
  ['lug-end-clearance', { 'walls.liningMm': 13 }, 'look'],
  ['lug-end-clearance', { 'cavity.lugClearanceMm': 0.5, 'walls.liningMm': 9 }, 'look'],
  ['lug-end-clearance', { 'cavity.lugClearanceMm': 4 }, 'look'],
  ['row-play', { 'cavity.playMm': 10 }, 'ok'],
  ['row-play', { 'cavity.playMm': 9 }, 'look'],
  ['row-play', { 'cavity.playMm': 4 }, 'fix'],
  ['row-play', { 'cavity.playMm': 0 }, 'fix'],
  ['row-play', { 'cavity.playMm': 35 }, 'ok'],
  ['row-play', { 'cavity.playMm': 36 }, 'look'],
  ['follower-side-gap', { 'cavity.followerSideGapMm': 9 }, 'ok'],
  ['follower-side-gap', { 'cavity.followerSideGapMm': 9.5 }, 'look'],
  ['follower-side-gap', { 'cavity.followerSideGapMm': 5.5 }, 'look'],
  ['follower-bottom-gap', { 'cavity.followerBottomGapMm': 12.5 }, 'ok'],
  ['follower-bottom-gap', { 'cavity.followerBottomGapMm': 13 }, 'look'],
  ['follower-bottom-gap', { 'cavity.followerBottomGapMm': 9 }, 'look'],
  ['follower-thickness', { 'cavity.followerForm': 'plain', 'cavity.followerThicknessMm': 9 }, 'ok'],
  [
    'follower-thickness',
    { 'cavity.followerForm': 'plain', 'cavity.followerThicknessMm': 8 },
    'look',
  ],
  ['rim-gap', { 'lid.rimClearanceMm': 3 }, 'ok'],
  ['rim-gap', { 'lid.rimClearanceMm': 3.5 }, 'fix'],
  ['safe-linings', { 'walls.liningMaterial': 'plywood-birch' }, 'ok'],
  ['safe-linings', { 'walls.liningMaterial': 'osb', 'cavity.coverMaterial': 'mdf' }, 'fix'],
  ['resistance-walls', { 'walls.targetM2KPerW': 1.3 }, 'ok'],
  ['resistance-walls', { 'walls.targetM2KPerW': 1.4 }, 'look'],
  ['resistance-walls', { 'walls.targetM2KPerW': 2.5 }, 'fix'],
  ['resistance-lid', { 'lid.targetM2KPerW': 6 }, 'fix'],
  ['resistance-floor', { 'floor.targetM2KPerW': 1.6 }, 'fix'],
  ['warm-ceiling', { 'lid.coreMm': 60 }, 'ok'],
  ['warm-ceiling', { 'lid.coreMm': 20 }, 'look'],
  ['roof-overhang', { 'lid.overhangMm': 30 }, 'ok'],
  ['roof-overhang', { 'lid.overhangMm': 29 }, 'look'],
  ['roof-overhang', { 'lid.overhangMm': 81 }, 'look'],
  ['roof-slope', { 'lid.slopeDeg': 3 }, 'ok'],
  ['roof-slope', { 'lid.slopeDeg': 2.5 }, 'look'],
  ['roof-slope', { 'lid.coverMaterial': 'bitumen-felt', 'lid.coverMm': 3 }, 'look'],
  ['roof-slope', { 'lid.form': 'flat' }, 'look'],
  // One medium frame has 5.6 dm² of comb: 88 dm² take 16 frames; and holds 1.87 kg: 20 kg take 11.
  ['comb-area', { 'cavity.emptyPlaces': 8 }, 'ok'],
  ['comb-area', { 'cavity.emptyPlaces': 9 }, 'look'],
  ['comb-area', { 'cavity.emptyPlaces': 9, 'colony.strength': 'small' }, 'ok'],
  ['stores-room', { 'colony.storesKg': 44 }, 'ok'],
  ['stores-room', { 'colony.storesKg': 46 }, 'fix'],
  ['stores-room', { 'colony.storesKg': 30, 'cavity.emptyPlaces': 12 }, 'fix'],
  ['extractor-depth', { 'frame.depthMm': 232 }, 'ok'],
  ['extractor-depth', { 'frame.depthMm': 286 }, 'look'],
  ['extractor-depth', { 'frame.depthMm': 232, 'frame.form': 'split' }, 'ok'],
  ['extractor-depth', { 'frame.depthMm': 233, 'frame.form': 'split' }, 'fix'],
  ['extractor-top-bar', { 'frame.topBarLengthMm': 483 }, 'ok'],
  ['extractor-top-bar', { 'frame.topBarLengthMm': 484 }, 'look'],
  ['top-bar-sag', { 'frame.topBarThicknessMm': 12 }, 'ok'],
  ['top-bar-sag', { 'frame.topBarThicknessMm': 10 }, 'look'],
  [
    'top-bar-sag',
    { 'frame.form': 'split', 'frame.depthMm': 232, 'frame.topBarThicknessMm': 10 },
    'fix',
  ],
  ['working-height', { 'stand.workingHeightMm': 900 }, 'ok'],
  ['working-height', { 'stand.workingHeightMm': 950 }, 'look'],
  ['working-height', { 'keeper.elbowHeightMm': 1140 }, 'look'],
  ['working-height', { 'stand.form': 'none', 'keeper.elbowHeightMm': 1050 }, 'look'],
  ['floor-drop', { 'floor.dropAngleDeg': 40 }, 'ok'],
  ['floor-drop', { 'floor.dropAngleDeg': 90 }, 'fix'],
  ['floor-drop', { 'stand.form': 'none' }, 'fix'],
  ['longest-part', { 'shop.longestBoardMm': 2400 }, 'ok'],
  ['longest-part', { 'shop.longestBoardMm': 1100 }, 'fix'],
  ['widest-rip', { 'shop.ripLimitMm': 900 }, 'ok'],
  ['widest-rip', { 'shop.ripLimitMm': 600 }, 'look'],
  ['narrow-strips', { 'shop.tools': 'circular-saw' }, 'look'],
  ['rips-without-saw', { 'shop.tools': 'hand-tools' }, 'look'],
  ['cuttable', { 'shop.longestBoardMm': 2400 }, 'ok'],
  ['cuttable', { 'shop.longestBoardMm': 900 }, 'fix'],
  ['heaviest-lift', { 'keeper.comfortableLiftKg': 3 }, 'ok'],
  ['heaviest-lift', { 'keeper.comfortableLiftKg': 2 }, 'look'],
  ['heaviest-lift', { 'keeper.comfortableLiftKg': 1 }, 'fix'],
  ['frame-mass', { 'frame.depthMm': 159 }, 'ok'],
  ['frame-mass', { 'frame.depthMm': 232, 'frame.form': 'split' }, 'look'],
  [
    'frame-mass',
    { 'frame.depthMm': 300, 'frame.form': 'split', 'stand.workingHeightMm': 1000 },
    'fix',
  ],
  ['lid-pull', { 'lid.deckMm': 4 }, 'ok'],
  ['lid-pull', { 'lid.deckMm': 15 }, 'look'],
  ['lid-pull', { 'lid.coverMaterial': 'galvanised-steel', 'lid.coverMm': 2.5 }, 'fix'],
  ['entrance-height', { 'openings.entrances.0.heightMm': 8 }, 'ok'],
  ['entrance-height', { 'openings.entrances.0.heightMm': 9 }, 'look'],
  ['entrance-height', { 'openings.entrances.0.heightMm': 11 }, 'fix'],
  ['entrance-height', { 'openings.entrances.0.heightMm': 5 }, 'fix'],
  [
    'entrance-height',
    { 'openings.entrances.0.form': 'holes', 'openings.entrances.0.heightMm': 10 },
    'ok',
  ],
  ['entrance-area', { 'openings.entrances.0.widthMm': 130 }, 'ok'],
  ['entrance-area', { 'openings.entrances.0.widthMm': 120 }, 'look'],
  [
    'entrance-area',
    { 'openings.entrances.0.widthMm': 320, 'openings.entrances.0.centreMm': 300 },
    'look',
  ],
]

/** What no change of a few fields can cure. */
const WITHOUT_FIX = new Set([
  'frame-mass',
  'widest-rip',
  'narrow-strips',
  'rips-without-saw',
  'heaviest-lift',
])

describe('runChecks', () => {
  it('finds nothing wrong with the sample hive, on which the cases below rest', () => {
    expect(reportOn(SAMPLE).checks.filter(({ verdict }) => verdict !== 'ok')).toEqual([])
  })

  it.each(CASES)('%s with %o is %s', (id, values, verdict) => {
    const design = withFields(
      SAMPLE,
      Object.entries(values).map(([field, value]) => ({ field, value })),
    )
    const check = findCheck(reportOn(design).checks, id)
    expect(check.verdict).toBe(verdict)
    if (verdict === 'ok') expect(check.fix).toBeUndefined()
    else if (!WITHOUT_FIX.has(id)) {
      // The fix is accepted as it is and cures the check.
      const cured = withFields(design, check.fix?.changes ?? [])
      expect(findCheck(reportOn(cured).checks, id).verdict).toBe('ok')
    }
  })

  it.each(EXAMPLES)(
    'gives $name checks with unique ids, numbers and parts that exist',
    ({ design }) => {
      const { checks, shop } = reportOn(design)
      const ids = new Set(shop.cutList.flatMap(({ partIds }) => partIds))
      expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length)
      expect(checks.filter(({ measured }) => !Number.isFinite(measured))).toEqual([])
      expect(checks.flatMap(({ partIds }) => partIds).filter((id) => !ids.has(id))).toEqual([])
      expect(checks.filter(({ why, source }) => why === '' || source === '')).toEqual([])
    },
  )

  it.each(EXAMPLES)('offers for $name only fixes that can be built and cure', ({ design }) => {
    for (const { id, fix } of reportOn(design).checks) {
      if (fix === undefined) continue
      const cured = withFields(design, fix.changes)
      const after = reportOn(cured).checks.find((check) => check.id === id)
      expect(`${id} ${after?.verdict ?? 'ok'}`).toBe(`${id} ok`)
    }
  })
})
