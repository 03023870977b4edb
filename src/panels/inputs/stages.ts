import type { Design } from '../../design/schema.ts'
import type { Stage } from '../../store/viewStore.ts'

/** Fields that stand under one heading; a folded section is opened by the person. */
export interface StageSection {
  readonly title: string
  readonly fields: readonly string[]
  readonly folded?: boolean
}

export interface StageEntry {
  readonly stage: Stage
  readonly name: string
  /** One sentence on what is decided here. */
  readonly purpose: string
  readonly sections: readonly StageSection[]
}

const group = (name: string, ...keys: readonly string[]): readonly string[] =>
  keys.map((key) => `${name}.${key}`)

const panelSections = (name: 'walls' | 'lid' | 'floor', skin: string): readonly StageSection[] => [
  { title: 'Warmth', fields: group(name, 'targetM2KPerW', 'insulation', 'coreMm') },
  { title: 'Lining', fields: group(name, 'liningMaterial', 'liningMm') },
  { title: skin, fields: group(name, 'claddingMaterial', 'claddingMm') },
  {
    title: 'Rails inside',
    fields: group(name, 'railMaterial', 'railWidthMm', 'railSpacingMm', 'foamClearanceMm'),
    folded: true,
  },
]

/** The stages of the job in the order that a builder meets them, with every field of the document. */
export const STAGES: readonly StageEntry[] = [
  {
    stage: 'frame',
    name: 'Frame',
    purpose: 'The comb the bees will live on. Everything else follows from it.',
    sections: [
      { title: 'Which frame', fields: group('frame', 'standard', 'form', 'joint', 'foundation') },
      { title: 'Spacing', fields: group('frame', 'spacingMm') },
      { title: 'Outside sizes', fields: group('frame', 'bodyLengthMm', 'depthMm'), folded: true },
      {
        title: 'Top bar',
        fields: group(
          'frame',
          'topBarLengthMm',
          'topBarWidthMm',
          'topBarThicknessMm',
          'lugThicknessMm',
        ),
        folded: true,
      },
      {
        title: 'Side bars',
        fields: group('frame', 'sideBarThicknessMm', 'sideBarWidthMm', 'shoulderWidthMm'),
        folded: true,
      },
      {
        title: 'Bottom and middle bars',
        fields: group('frame', 'bottomBarThicknessMm', 'bottomBarWidthMm', 'middleBarThicknessMm'),
        folded: true,
      },
    ],
  },
  {
    stage: 'cavity',
    name: 'Cavity',
    purpose: 'The room inside: how many combs, and the gaps that bees leave open.',
    sections: [
      { title: 'Room', fields: group('cavity', 'frames', 'emptyPlaces') },
      {
        title: 'Bee space',
        fields: group('cavity', 'endBarSpaceMm', 'aboveSpaceMm', 'belowSpaceMm'),
      },
      {
        title: 'Follower boards',
        fields: group(
          'cavity',
          'followers',
          'followerForm',
          'followerAAfterFrame',
          'followerBAfterFrame',
        ),
      },
      { title: 'Two colonies', fields: group('cavity', 'divider', 'dividerAfterFrame') },
      { title: 'Top', fields: group('cavity', 'closure', 'coverSegments') },
      {
        title: 'Covers in detail',
        fields: group('cavity', 'coverMaterial', 'coverThicknessMm', 'coverLedgeMm'),
        folded: true,
      },
      {
        title: 'Boards in detail',
        fields: group(
          'cavity',
          'boardMaterial',
          'followerThicknessMm',
          'followerSideGapMm',
          'followerBottomGapMm',
          'dividerThicknessMm',
        ),
        folded: true,
      },
      {
        title: 'Play and clearance',
        fields: group('cavity', 'rowEndSpaceMm', 'playMm', 'lugClearanceMm'),
        folded: true,
      },
    ],
  },
  {
    stage: 'walls',
    name: 'Walls',
    purpose: 'Lining, rails with insulation between them, and cladding. The inside stays as it is.',
    sections: [
      ...panelSections('walls', 'Cladding'),
      {
        title: 'Boards and corners',
        fields: group('walls', 'claddingForm', 'boardWidthMm', 'corner'),
        folded: true,
      },
    ],
  },
  {
    stage: 'lid',
    name: 'Lid',
    purpose: 'The roof, its insulation and its hinge. It should be the warmest panel of all.',
    sections: [
      ...panelSections('lid', 'Top skin'),
      {
        title: 'Shape',
        fields: group('lid', 'form', 'fall', 'slopeDeg', 'insulationShape', 'overhangMm'),
      },
      { title: 'Hinge and stay', fields: group('lid', 'hingeSide', 'openingAngleDeg', 'stay') },
      {
        title: 'Rim and cover sheet',
        fields: group(
          'lid',
          'rimThicknessMm',
          'rimDropMm',
          'rimClearanceMm',
          'deckMm',
          'coverMaterial',
          'coverMm',
        ),
        folded: true,
      },
    ],
  },
  {
    stage: 'floor',
    name: 'Floor',
    purpose: 'It hangs on a hinge and swings down, so that debris is cleared in one movement.',
    sections: [
      ...panelSections('floor', 'Underside'),
      { title: 'Hinge and tray', fields: group('floor', 'hingeSide', 'dropAngleDeg', 'tray') },
    ],
  },
  {
    stage: 'openings',
    name: 'Openings',
    purpose: 'Where the bees go in and out, and where damp air may leave.',
    sections: [
      { title: 'Landing boards', fields: ['openings.landingBoards', 'openings.landingDepthMm'] },
    ],
  },
  {
    stage: 'stand',
    name: 'Stand',
    purpose: 'What carries the hive, at a height that suits your back.',
    sections: [{ title: 'Stand', fields: group('stand', 'form', 'workingHeightMm', 'legWidthMm') }],
  },
  {
    stage: 'site',
    name: 'Site',
    purpose: 'The weather that the hive must stand.',
    sections: [
      {
        title: 'Weather',
        fields: group(
          'site',
          'annualMeanC',
          'seasonalSwingC',
          'coldNightC',
          'meanHumidityPercent',
          'exposure',
        ),
      },
    ],
  },
  {
    stage: 'colony',
    name: 'Colony & keeper',
    purpose: 'Who lives in it, and who lifts.',
    sections: [
      { title: 'Bees', fields: group('colony', 'strength', 'clusterKg', 'storesKg', 'cavityAirC') },
      { title: 'Keeper', fields: group('keeper', 'comfortableLiftKg', 'elbowHeightMm', 'people') },
    ],
  },
  {
    stage: 'shop',
    name: 'Shop',
    purpose: 'Your saw, your boards, and the words on the sheet.',
    sections: [
      { title: 'Tools', fields: group('shop', 'tools', 'ripLimitMm', 'guideOffsetMm') },
      { title: 'Saw and trimming', fields: group('shop', 'kerfMm', 'endTrimMm', 'keepOffcutMm') },
      {
        title: 'Sheets and carrying',
        fields: group(
          'shop',
          'sheetStages',
          'sheetTrimMm',
          'cutToCarry',
          'carryLengthMm',
          'carryWidthMm',
        ),
      },
      {
        title: 'Buying',
        fields: group('shop', 'longestBoardMm', 'hivesAtOnce', 'useOnHand', 'currency'),
      },
      { title: 'Joining and finish', fields: group('shop', 'fastening', 'finish') },
      { title: 'Words on the sheet', fields: group('title', 'name', 'owner', 'note') },
    ],
  },
]

/** Whether a field means anything in this design; one that does not is not shown. */
export const isFieldInUse = (path: string, design: Design): boolean =>
  IN_USE_WHEN[path]?.(design) ?? true

const hasFollower = ({ cavity }: Design): boolean => cavity.followers !== 'none'
const hasDivider = ({ cavity }: Design): boolean => cavity.divider === 'fitted'
const isSloped = ({ lid }: Design): boolean => lid.form === 'sloped'
const isSplit = ({ frame }: Design): boolean => frame.form === 'split'

const IN_USE_WHEN: Readonly<Record<string, (design: Design) => boolean>> = {
  'frame.joint': isSplit,
  'frame.middleBarThicknessMm': isSplit,
  'cavity.followerForm': hasFollower,
  'cavity.followerThicknessMm': hasFollower,
  'cavity.followerSideGapMm': hasFollower,
  'cavity.followerBottomGapMm': hasFollower,
  'cavity.followerAAfterFrame': hasFollower,
  'cavity.followerBAfterFrame': ({ cavity }) => cavity.followers === 'two',
  'cavity.dividerAfterFrame': hasDivider,
  'cavity.dividerThicknessMm': hasDivider,
  'cavity.boardMaterial': (design) => hasFollower(design) || hasDivider(design),
  'walls.boardWidthMm': ({ walls }) => walls.claddingForm === 'boards',
  'lid.fall': isSloped,
  'lid.slopeDeg': isSloped,
  'lid.insulationShape': isSloped,
  'lid.deckMm': isSloped,
  'openings.landingDepthMm': ({ openings }) => openings.landingBoards,
  'stand.legWidthMm': ({ stand }) => stand.form !== 'none',
  'stand.workingHeightMm': ({ stand }) => stand.form !== 'none',
  'shop.ripLimitMm': ({ shop }) => shop.tools === 'table-saw',
  'shop.guideOffsetMm': ({ shop }) => shop.tools === 'circular-saw',
  'shop.carryLengthMm': ({ shop }) => shop.cutToCarry,
  'shop.carryWidthMm': ({ shop }) => shop.cutToCarry,
}
