import { chooseDivider } from './chooseDivider.ts'
import { DEFAULT_DESIGN, DEFAULT_VENT } from './defaults.ts'
import { chooseFrameStandard, setFrameCount } from './frameEdits.ts'
import type { Design } from './schema.ts'

/** A design to start from. All are invented, and their title block says so. */
export interface Example {
  readonly id: string
  readonly name: string
  /** What is special about it; also the note on its sheets. */
  readonly sentence: string
  readonly design: Design
}

/** Two small colonies, far apart at their doors, and low enough for children. */
const twoColonySchool = (): Design => {
  const long = setFrameCount(DEFAULT_DESIGN, 28)
  const cavity: Design['cavity'] = {
    ...long.cavity,
    followers: 'two',
    followerAAfterFrame: 9,
    followerBAfterFrame: 19,
    coverSegments: 8,
  }
  const parted = chooseDivider({ ...long, cavity }, 'fitted')
  return {
    ...parted,
    floor: { ...parted.floor, dropAngleDeg: 20 },
    stand: { ...parted.stand, workingHeightMm: 760 },
    colony: { ...parted.colony, strength: 'small', clusterKg: 1.4, storesKg: 16 },
    keeper: { ...parted.keeper, comfortableLiftKg: 7, elbowHeightMm: 950, people: 2 },
  }
}

/** Thin walls do in a mild winter; legs no wider than such a wall. */
const seasideSingle = (): Design => {
  const { frame, walls, lid, floor, stand, site, colony, keeper } = DEFAULT_DESIGN
  const single: Design = { ...DEFAULT_DESIGN, frame: { ...frame, form: 'single' } }
  const long = setFrameCount(single, 24)
  return {
    ...long,
    cavity: { ...long.cavity, followerThicknessMm: 25 },
    walls: { ...walls, coreMm: 30, targetM2KPerW: 0.9 },
    lid: { ...lid, coreMm: 60, targetM2KPerW: 1.6, slopeDeg: 3 },
    floor: { ...floor, coreMm: 20, targetM2KPerW: 0.7 },
    stand: { ...stand, workingHeightMm: 700, legWidthMm: 45 },
    site: { ...site, annualMeanC: 11, seasonalSwingC: 10, meanHumidityPercent: 82, coldNightC: -3 },
    colony: { ...colony, storesKg: 14 },
    keeper: { ...keeper, elbowHeightMm: 860 },
  }
}

/** Shade, heavy slow insulation, and a vent in each end for a draught below the covers. */
const dryValley = (): Design => {
  const { frame, cavity, openings, lid, walls, floor, colony, keeper } = DEFAULT_DESIGN
  const middle = (frame.bodyLengthMm + 2 * cavity.endBarSpaceMm) / 2
  const vent = { ...DEFAULT_VENT, centreMm: middle, widthMm: 120, belowRestMm: 20 }
  return {
    ...DEFAULT_DESIGN,
    walls: { ...walls, insulation: 'wood-fibre', coreMm: 70 },
    lid: {
      ...lid,
      insulation: 'wood-fibre',
      coreMm: 140,
      insulationShape: 'tapered',
      overhangMm: 80,
    },
    openings: {
      ...openings,
      vents: [
        { ...vent, wall: 'left' },
        { ...vent, wall: 'right' },
      ],
    },
    site: {
      exposure: 'normal',
      annualMeanC: 16,
      seasonalSwingC: 24,
      meanHumidityPercent: 45,
      coldNightC: -6,
    },
    colony: { ...colony, storesKg: 18 },
    floor: { ...floor, dropAngleDeg: 25 },
    keeper: { ...keeper, people: 2 },
  }
}

/**
 * Continental frames: the long lugs reach through the lining, which 60 mm of core has room for. The
 * coldest nights, so the floor has thicker foam than usual: of all panels it gains most for the money,
 * 5 % of what the whole hive loses, and the corners at its edge, the coldest inside, get warmer.
 */
const metricZander = (): Design => {
  const metric = setFrameCount(chooseFrameStandard(DEFAULT_DESIGN, 'zander'), 18)
  return {
    ...metric,
    frame: { ...metric.frame, middleBarThicknessMm: 10 },
    floor: { ...metric.floor, coreMm: 60 },
    site: {
      exposure: 'normal',
      annualMeanC: 9,
      seasonalSwingC: 18,
      meanHumidityPercent: 78,
      coldNightC: -14,
    },
    shop: { ...metric.shop, kerfMm: 2.8, longestBoardMm: 2500 },
  }
}

const example = (id: string, name: string, sentence: string, design: Design): Example => ({
  id,
  name,
  sentence,
  design: { ...design, title: { ...design.title, name, note: sentence } },
})

/** The examples of the Quarry Lane teaching apiary, a made-up club; the first is the default design. */
export const EXAMPLES: readonly Example[] = [
  {
    id: 'quarry-lane',
    name: DEFAULT_DESIGN.title.name,
    sentence: 'Twenty tall split frames and thick walls for a cool, wet hillside.',
    design: DEFAULT_DESIGN,
  },
  example(
    'two-colony-school',
    'Two-colony school hive',
    'Twenty-eight frames parted for two small colonies, low enough for a class.',
    twoColonySchool(),
  ),
  example(
    'seaside',
    'Seaside single-depth hive',
    'Twenty-four single frames and light walls for a mild coast, worked from a chair.',
    seasideSingle(),
  ),
  example(
    'dry-valley',
    'Dry valley hive',
    'A wide shade roof, wood-fibre insulation and a vent in each end for hot summers.',
    dryValley(),
  ),
  example(
    'metric-zander',
    'Metric Zander hive',
    'Eighteen split Zander frames for a place with cold, dry winters.',
    metricZander(),
  ),
]
