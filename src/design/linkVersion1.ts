import type { JsonObject } from './json.ts'
import { type LinkLayout, type LinkTable, letterGroups } from './linkLayout.ts'

/** The default design of version 1, as links of version 1 leave it out. It is never changed. */
const DEFAULT_1 = {
  version: 1,
  title: {
    name: 'Quarry Lane long hive',
    owner: 'Quarry Lane teaching apiary (invented)',
    note: '',
  },
  frame: {
    standard: 'langstroth-deep',
    form: 'split',
    topBarLengthMm: 483,
    topBarWidthMm: 27,
    topBarThicknessMm: 19,
    lugThicknessMm: 9.5,
    bodyLengthMm: 448,
    depthMm: 232,
    sideBarThicknessMm: 9.5,
    sideBarWidthMm: 28,
    shoulderWidthMm: 35,
    bottomBarThicknessMm: 9.5,
    bottomBarWidthMm: 19,
    middleBarThicknessMm: 9.5,
    joint: 'pegs',
    spacingMm: 35,
    foundation: true,
  },
  cavity: {
    frames: 20,
    emptyPlaces: 0,
    endBarSpaceMm: 8,
    aboveSpaceMm: 7,
    belowSpaceMm: 13,
    rowEndSpaceMm: 4,
    playMm: 15,
    lugClearanceMm: 2,
    closure: 'covers',
    coverMaterial: 'plywood-softwood',
    coverThicknessMm: 12,
    coverSegments: 5,
    coverLedgeMm: 15,
    followers: 'one',
    followerAAfterFrame: 12,
    followerBAfterFrame: 20,
    followerForm: 'insulated',
    followerThicknessMm: 32,
    followerSideGapMm: 7,
    followerBottomGapMm: 11,
    divider: 'none',
    dividerAfterFrame: 10,
    dividerThicknessMm: 12,
    boardMaterial: 'plywood-softwood',
  },
  walls: {
    targetM2KPerW: 1.6,
    liningMaterial: 'plywood-softwood',
    liningMm: 12,
    insulation: 'xps',
    coreMm: 60,
    railMaterial: 'spruce',
    railWidthMm: 28,
    railSpacingMm: 600,
    foamClearanceMm: 1,
    claddingMaterial: 'spruce',
    claddingMm: 19,
    claddingForm: 'boards',
    boardWidthMm: 145,
    corner: 'long-through',
  },
  lid: {
    targetM2KPerW: 3,
    liningMaterial: 'plywood-softwood',
    liningMm: 6,
    insulation: 'xps',
    coreMm: 100,
    railMaterial: 'spruce',
    railWidthMm: 28,
    railSpacingMm: 800,
    foamClearanceMm: 1,
    claddingMaterial: 'plywood-softwood',
    claddingMm: 6,
    form: 'sloped',
    fall: 'back',
    slopeDeg: 4,
    insulationShape: 'equal',
    deckMm: 9,
    coverMaterial: 'aluminium-sheet',
    coverMm: 0.7,
    overhangMm: 40,
    rimThicknessMm: 19,
    rimDropMm: 30,
    rimClearanceMm: 2.5,
    hingeSide: 'back',
    openingAngleDeg: 100,
    stay: 'chain',
  },
  floor: {
    targetM2KPerW: 1.1,
    liningMaterial: 'plywood-softwood',
    liningMm: 9,
    insulation: 'xps',
    coreMm: 40,
    railMaterial: 'spruce',
    railWidthMm: 38,
    railSpacingMm: 600,
    foamClearanceMm: 1,
    claddingMaterial: 'plywood-softwood',
    claddingMm: 6,
    hingeSide: 'back',
    dropAngleDeg: 30,
    tray: false,
  },
  openings: {
    entrances: [
      {
        wall: 'front',
        centreMm: 150,
        bottomMm: 15,
        widthMm: 180,
        heightMm: 8,
        form: 'slot',
        winterWidthMm: 180,
      },
    ],
    vents: [],
    landingBoards: true,
    landingDepthMm: 70,
  },
  stand: {
    form: 'legs',
    workingHeightMm: 850,
    legWidthMm: 60,
  },
  site: {
    exposure: 'exposed',
    annualMeanC: 8,
    seasonalSwingC: 12,
    meanHumidityPercent: 84,
    coldNightC: -10,
  },
  colony: {
    strength: 'strong',
    clusterKg: 2,
    storesKg: 20,
    cavityAirC: 12,
  },
  shop: {
    kerfMm: 3.2,
    tableSaw: true,
    ripLimitMm: 800,
    longestBoardMm: 2400,
  },
  keeper: {
    comfortableLiftKg: 8,
    elbowHeightMm: 1050,
    people: 1,
  },
}

const VENT_1 = { wall: 'front', centreMm: 150, belowRestMm: 15, widthMm: 60, heightMm: 8 }

const { version: _, openings, ...GROUPS_1 } = DEFAULT_1
const { entrances, vents, ...LANDING_1 } = openings

const table = (defaults: object): LinkTable => {
  return { letter: '', keys: Object.keys(defaults), defaults }
}

/** The layout of links of version 1, which people still have. */
export const LINK_LAYOUT_1: LinkLayout = {
  groups: letterGroups(
    [...Object.entries<object>(GROUPS_1), ['openings', LANDING_1] as const].map(
      ([group, defaults]) => [group, Object.keys(defaults), defaults] as const,
    ),
  ),
  lists: [
    {
      letter: 'e',
      path: ['openings', 'entrances'],
      item: table(entrances[0] ?? {}),
      whole: entrances,
    },
    { letter: 'v', path: ['openings', 'vents'], item: table(VENT_1), whole: vents },
  ],
}

/** The text that version 1 saved for a design: what the checksum of its links is over. */
export function formatVersion1(design: JsonObject): string {
  const { openings, ...groups } = design
  const { entrances, vents, ...landing } = (openings ?? {}) as JsonObject
  const inOrder = {
    combwright: 1,
    version: 1,
    ...Object.fromEntries(
      Object.keys(DEFAULT_1)
        .filter((key) => key !== 'version')
        .map((key) => [key, key === 'openings' ? { entrances, vents, ...landing } : groups[key]]),
    ),
  }
  return `${JSON.stringify(inOrder, undefined, 2)}\n`
}
