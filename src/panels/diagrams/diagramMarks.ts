import type { DiagramMark } from './mark.ts'
import { SHOP_MARKS } from './shopMarks.ts'

/** The mark for a number's path; list positions (`entrances.0`) do not matter. */
export const diagramMark = (path: string): DiagramMark | undefined =>
  MARKS[path.replace(/\.\d+(?=\.)/g, '')]

const layers = (group: 'walls' | 'lid' | 'floor'): Readonly<Record<string, DiagramMark>> => {
  const drawing = `${group === 'walls' ? 'wall' : group}Layers` as const
  return {
    [`${group}.targetM2KPerW`]: { drawing, path: 'M44 80V8m-7 9 7-11 7 11' },
    [`${group}.liningMm`]: { drawing, areas: [[18, 60, 84, 8]], dimension: [110, 60, 110, 68] },
    [`${group}.coreMm`]: {
      drawing,
      areas: [
        [32, 26, 22, 34],
        [66, 26, 22, 34],
      ],
      dimension: [110, 26, 110, 60],
    },
    [`${group}.claddingMm`]: { drawing, areas: [[18, 16, 84, 10]], dimension: [110, 16, 110, 26] },
    [`${group}.railWidthMm`]: { drawing, areas: [[54, 26, 12, 34]], dimension: [54, 43, 66, 43] },
    [`${group}.railSpacingMm`]: { drawing, dimension: [26, 76, 60, 76] },
    [`${group}.foamClearanceMm`]: {
      drawing,
      areas: [[50, 26, 4, 34]],
      dimension: [50, 43, 54, 43],
    },
  }
}

const MARKS: Readonly<Record<string, DiagramMark>> = {
  'frame.topBarLengthMm': { drawing: 'frameFront', dimension: [8, 5, 112, 5] },
  'frame.topBarThicknessMm': {
    drawing: 'frameFront',
    areas: [[22, 12, 76, 9]],
    dimension: [60, 12, 60, 21],
  },
  'frame.lugThicknessMm': {
    drawing: 'frameFront',
    areas: [
      [8, 12, 14, 5],
      [98, 12, 14, 5],
    ],
    dimension: [15, 12, 15, 17],
  },
  'frame.bodyLengthMm': { drawing: 'frameFront', dimension: [22, 79, 98, 79] },
  'frame.depthMm': { drawing: 'frameFront', dimension: [106, 12, 106, 72] },
  'frame.sideBarThicknessMm': {
    drawing: 'frameFront',
    areas: [
      [22, 21, 7, 45],
      [91, 21, 7, 45],
    ],
    dimension: [22, 44, 29, 44],
  },
  'frame.bottomBarThicknessMm': {
    drawing: 'frameFront',
    areas: [[22, 66, 76, 6]],
    dimension: [60, 66, 60, 72],
  },
  'frame.middleBarThicknessMm': {
    drawing: 'frameSplit',
    areas: [[22, 42, 76, 5]],
    dimension: [60, 42, 60, 47],
  },
  'frame.topBarWidthMm': {
    drawing: 'frameEnds',
    areas: [[31, 12, 22, 8]],
    dimension: [31, 6, 53, 6],
  },
  'frame.sideBarWidthMm': {
    drawing: 'frameEnds',
    areas: [[32, 46, 20, 24]],
    dimension: [32, 58, 52, 58],
  },
  'frame.shoulderWidthMm': {
    drawing: 'frameEnds',
    areas: [[24, 20, 36, 20]],
    dimension: [24, 30, 60, 30],
  },
  'frame.bottomBarWidthMm': {
    drawing: 'frameEnds',
    areas: [[35, 70, 14, 6]],
    dimension: [35, 80, 49, 80],
  },
  'frame.spacingMm': { drawing: 'frameEnds', dimension: [42, 6, 78, 6] },
  'cavity.frames': { drawing: 'rowPlan', areas: [[16, 22, 52, 40]], dimension: [16, 12, 68, 12] },
  'cavity.emptyPlaces': {
    drawing: 'rowPlan',
    areas: [[82, 22, 18, 40]],
    dimension: [82, 12, 100, 12],
  },
  'cavity.rowEndSpaceMm': {
    drawing: 'rowPlan',
    areas: [[10, 18, 6, 48]],
    dimension: [10, 75, 16, 75],
  },
  'cavity.playMm': {
    drawing: 'rowPlan',
    areas: [[100, 18, 10, 48]],
    dimension: [100, 75, 110, 75],
  },
  'cavity.followerAAfterFrame': {
    drawing: 'rowPlan',
    areas: [[70, 20, 8, 44]],
    dimension: [16, 75, 70, 75],
  },
  'cavity.followerBAfterFrame': {
    drawing: 'rowPlan',
    areas: [[70, 20, 8, 44]],
    dimension: [16, 75, 70, 75],
  },
  'cavity.followerThicknessMm': {
    drawing: 'rowPlan',
    areas: [[70, 20, 8, 44]],
    dimension: [70, 75, 78, 75],
  },
  'cavity.followerSideGapMm': {
    drawing: 'rowPlan',
    areas: [
      [70, 15, 8, 5],
      [70, 64, 8, 5],
    ],
    dimension: [74, 64, 74, 69],
  },
  'cavity.dividerAfterFrame': {
    drawing: 'dividedRow',
    areas: [[58, 15, 4, 54]],
    dimension: [14, 75, 58, 75],
  },
  'cavity.dividerThicknessMm': {
    drawing: 'dividedRow',
    areas: [[58, 15, 4, 54]],
    dimension: [58, 75, 62, 75],
  },
  'cavity.coverSegments': {
    drawing: 'coverPlan',
    areas: [[30, 18, 20, 48]],
    dimension: [10, 75, 110, 75],
  },
  'cavity.endBarSpaceMm': {
    drawing: 'restDetail',
    areas: [[40, 44, 12, 34]],
    dimension: [40, 66, 52, 66],
  },
  'cavity.aboveSpaceMm': {
    drawing: 'restDetail',
    areas: [[30, 20, 84, 9]],
    dimension: [88, 20, 88, 29],
  },
  'cavity.lugClearanceMm': {
    drawing: 'restDetail',
    areas: [[24, 29, 6, 8]],
    dimension: [24, 33, 30, 33],
  },
  'cavity.coverThicknessMm': {
    drawing: 'restDetail',
    areas: [[14, 12, 100, 8]],
    dimension: [88, 12, 88, 20],
  },
  'cavity.coverLedgeMm': {
    drawing: 'restDetail',
    areas: [[14, 18, 10, 4]],
    dimension: [14, 8, 24, 8],
  },
  'cavity.belowSpaceMm': {
    drawing: 'floorDetail',
    areas: [[30, 42, 78, 16]],
    dimension: [64, 42, 64, 58],
  },
  'cavity.followerBottomGapMm': {
    drawing: 'floorDetail',
    areas: [[30, 42, 78, 16]],
    dimension: [64, 42, 64, 58],
  },
  ...layers('walls'),
  ...layers('lid'),
  ...layers('floor'),
  'walls.boardWidthMm': {
    drawing: 'wallFace',
    areas: [[10, 28, 92, 16]],
    dimension: [110, 28, 110, 44],
  },
  'lid.slopeDeg': { drawing: 'lidSection', path: 'M104 36H14M92 36A78 78 0 0 0 90 24' },
  'lid.deckMm': { drawing: 'lidSection', path: 'M8 36.5 112 20.5' },
  'lid.coverMm': { drawing: 'lidSection', path: 'M8 32.5 112 16.5' },
  'lid.overhangMm': {
    drawing: 'lidSection',
    dimension: [8, 76, 20, 76],
    path: 'M8 38v40M20 62v16',
  },
  'lid.rimThicknessMm': {
    drawing: 'lidSection',
    areas: [[20, 36, 6, 26]],
    dimension: [20, 70, 26, 70],
  },
  'lid.rimDropMm': { drawing: 'lidSection', areas: [[20, 52, 6, 10]], dimension: [14, 52, 14, 62] },
  'lid.rimClearanceMm': {
    drawing: 'lidSection',
    areas: [[26, 52, 5, 10]],
    dimension: [26, 57, 31, 57],
  },
  'lid.openingAngleDeg': { drawing: 'lidOpen', path: 'M62 44A32 32 0 0 0 25 12' },
  'floor.dropAngleDeg': { drawing: 'floorOpen', path: 'M98 58A72 72 0 0 1 89 80' },
  'openings.entrances.centreMm': {
    drawing: 'entrance',
    dimension: [8, 68, 56, 68],
    path: 'M56 46v26',
  },
  'openings.entrances.bottomMm': {
    drawing: 'entrance',
    dimension: [88, 60, 88, 76],
    path: 'M76 60h16',
  },
  'openings.entrances.widthMm': {
    drawing: 'entrance',
    areas: [[36, 52, 40, 8]],
    dimension: [36, 44, 76, 44],
  },
  'openings.entrances.heightMm': {
    drawing: 'entrance',
    areas: [[36, 52, 40, 8]],
    dimension: [84, 52, 84, 60],
  },
  'openings.entrances.winterWidthMm': {
    drawing: 'entrance',
    areas: [[46, 52, 20, 8]],
    dimension: [46, 44, 66, 44],
  },
  'openings.vents.centreMm': { drawing: 'vent', dimension: [8, 48, 70, 48], path: 'M70 30v22' },
  'openings.vents.belowRestMm': { drawing: 'vent', dimension: [96, 18, 96, 32], path: 'M84 32h16' },
  'openings.vents.widthMm': {
    drawing: 'vent',
    areas: [[56, 32, 28, 8]],
    dimension: [56, 48, 84, 48],
  },
  'openings.vents.heightMm': {
    drawing: 'vent',
    areas: [[56, 32, 28, 8]],
    dimension: [92, 32, 92, 40],
  },
  'openings.landingDepthMm': {
    drawing: 'landing',
    dimension: [40, 76, 92, 76],
    path: 'M40 62v18M92 60v20',
  },
  'stand.workingHeightMm': {
    drawing: 'standFront',
    dimension: [108, 22, 108, 78],
    path: 'M96 22h16',
  },
  'stand.legWidthMm': {
    drawing: 'standFront',
    areas: [[24, 50, 8, 28]],
    dimension: [24, 64, 32, 64],
  },
  'keeper.elbowHeightMm': {
    drawing: 'standPerson',
    dimension: [110, 36, 110, 78],
    path: 'M98 36h16',
  },
  'site.annualMeanC': { drawing: 'year', path: 'M12 40H112' },
  'site.seasonalSwingC': {
    drawing: 'year',
    dimension: [62, 18, 62, 62],
    path: 'M12 62H66M58 18h12',
  },
  'site.coldNightC': { drawing: 'year', path: 'M16 62V74m-5-6 5 8 5-8' },
  'site.meanHumidityPercent': {
    drawing: 'humidity',
    areas: [[47, 44, 26, 20]],
    dimension: [88, 44, 88, 74],
  },
  'colony.clusterKg': { drawing: 'cluster', path: 'M60 30a20 16 0 1 0 .1 0' },
  'colony.storesKg': { drawing: 'stores', areas: [[23, 21, 74, 17]] },
  'colony.cavityAirC': { drawing: 'warmAir', path: 'M60 62V36' },
  'keeper.comfortableLiftKg': { drawing: 'load', path: 'M60 40V10m-8 10 8-12 8 12' },
  'keeper.people': { drawing: 'crew', path: 'M20 20a6 6 0 1 0 .1 0M100 20a6 6 0 1 0 .1 0' },
  ...SHOP_MARKS,
}
