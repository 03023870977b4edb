import type { Material } from './material.ts'

const fibre = { family: 'insulation', insideHive: 'covered' } as const

// Loose fill takes the depth of its pocket: these are the depths of common rails.
const looseFill = {
  ...fibre,
  form: 'loose',
  thicknessesMm: [25, 38, 45, 50, 63, 75, 89, 100],
  thicknessesUsMm: [19.05, 38.1, 63.5, 88.9],
  surface: 'loose',
} as const

/** Mineral, plant and animal insulations. All let vapour through, so all need a dry pocket. */
export const FIBRES: readonly Material[] = [
  {
    ...fibre,
    id: 'mineral-wool',
    name: 'Mineral wool slab',
    form: 'batt',
    conductivityWPerMK: 0.036,
    densityKgPerM3: 64,
    vapourResistanceFactor: 1,
    thicknessesMm: [30, 40, 50, 60, 75, 80, 100],
    thicknessesUsMm: [38.1, 50.8, 76.2, 88.9],
    specificHeatJPerKgK: 1030,
    beeNote:
      'Close it in fully, since loose fibres harm bees, and wear gloves and a mask to cut it.',
    surface: 'wool',
    source: {
      conductivity: 'ASHRAE Fundamentals 2005 ch. 25, bonded glass fibre board at 64 kg/m³',
      density: 'ASHRAE Fundamentals 2005 ch. 25, bonded glass fibre board',
      vapour: 'from memory: ISO 10456:2007 Table 3, mineral wool, 1',
    },
  },
  {
    ...fibre,
    id: 'wood-fibre',
    name: 'Wood-fibre insulating board',
    form: 'board',
    conductivityWPerMK: 0.042,
    densityKgPerM3: 160,
    vapourResistanceFactor: 5,
    thicknessesMm: [20, 30, 40, 50, 60, 80, 100, 120],
    thicknessesUsMm: [25.4, 38.1, 50.8, 76.2, 101.6],
    specificHeatJPerKgK: 2000,
    beeNote: 'Harmless, but bees gnaw it, so keep it behind a lining and dry.',
    surface: 'fibre',
    source: {
      conductivity: 'from memory: EN 13171 product range 0.038 to 0.050',
      density: 'from memory: usual value, 110 to 270 kg/m³',
      vapour: 'from memory: ISO 10456:2007 Table 3, fibreboard at 250 kg/m³, dry cup',
    },
  },
  {
    ...fibre,
    id: 'cork',
    name: 'Expanded cork board',
    form: 'board',
    conductivityWPerMK: 0.042,
    densityKgPerM3: 115,
    vapourResistanceFactor: 10,
    thicknessesMm: [10, 20, 25, 30, 40, 50, 60, 80, 100],
    thicknessesUsMm: [12.7, 25.4, 38.1, 50.8],
    specificHeatJPerKgK: 1560,
    beeNote: 'Natural and slow to rot, but bees gnaw it, so keep it behind a lining.',
    surface: 'fibre',
    source: {
      conductivity: 'from memory: ISO 10456:2007 and EN 13170, 0.040 to 0.045',
      density: 'from memory: EN 13170 product range 90 to 140 kg/m³',
      vapour: 'from memory: ISO 10456:2007 Table 3, cork board, dry cup 10',
    },
  },
  {
    ...fibre,
    id: 'sheep-wool',
    name: "Sheep's wool batt",
    form: 'batt',
    conductivityWPerMK: 0.039,
    densityKgPerM3: 22,
    vapourResistanceFactor: 2,
    thicknessesMm: [40, 50, 60, 75, 80, 100],
    thicknessesUsMm: [50.8, 76.2, 88.9],
    specificHeatJPerKgK: 1700,
    beeNote:
      'Use wool without moth-proofing, which is an insecticide, and keep bees from its fibres.',
    surface: 'wool',
    source: {
      conductivity: 'from memory: product range 0.035 to 0.045',
      density: 'from memory: product range 15 to 30 kg/m³',
      vapour: 'from memory: usual value 1 to 2 (one published page says 4 to 5)',
    },
  },
  {
    ...looseFill,
    id: 'wood-shavings',
    name: 'Wood shavings, packed',
    conductivityWPerMK: 0.065,
    densityKgPerM3: 110,
    vapourResistanceFactor: 2,
    specificHeatJPerKgK: 1800,
    beeNote: 'Use clean shavings of untreated wood, press them down firmly and keep mice out.',
    source: {
      conductivity: 'from memory: usual range 0.05 to 0.08',
      density: 'from memory: usual range 70 to 150 kg/m³',
      vapour: 'from memory: usual value 2',
    },
  },
  {
    ...looseFill,
    id: 'straw',
    name: 'Straw, packed',
    conductivityWPerMK: 0.065,
    densityKgPerM3: 105,
    vapourResistanceFactor: 2,
    specificHeatJPerKgK: 2000,
    beeNote: 'Use dry, clean straw with no crop spray on it, and keep mice and damp out.',
    source: {
      conductivity: 'from memory: 0.052 across the stems to 0.08 along them',
      density: 'from memory: bale range 90 to 120 kg/m³',
      vapour: 'published supplier data: 2',
    },
  },
  {
    ...looseFill,
    id: 'cellulose',
    name: 'Cellulose flakes, packed',
    conductivityWPerMK: 0.04,
    densityKgPerM3: 50,
    vapourResistanceFactor: 2,
    specificHeatJPerKgK: 1600,
    beeNote: 'The flakes hold borate salts, so seal the pocket well and wear a mask when filling.',
    source: {
      conductivity: 'from memory: ISO 10456:2007 Table 4, loose cellulose 0.039 to 0.042',
      density: 'from memory: ISO 10456:2007, loose cellulose 30 to 60 kg/m³',
      vapour: 'from memory: ISO 10456:2007 Table 4, loose cellulose, 2',
    },
  },
]
