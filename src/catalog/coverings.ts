import type { Material } from './material.ts'

const covering = { family: 'covering', form: 'sheet' } as const

/** What keeps rain off the lid. Metal counts as vapour-tight. */
export const COVERINGS: readonly Material[] = [
  {
    ...covering,
    id: 'aluminium-sheet',
    name: 'Aluminium sheet',
    conductivityWPerMK: 160,
    densityKgPerM3: 2800,
    vapourResistanceFactor: 1e6,
    thicknessesMm: [0.5, 0.7, 0.8, 1],
    // 0.019, 0.024, 0.032 and 0.040 in.
    thicknessesUsMm: [0.4826, 0.6096, 0.8128, 1.016],
    specificHeatJPerKgK: 880,
    insideHive: 'bare',
    beeNote: 'Harmless to bees, but file or fold its sharp edges and keep it off treated timber.',
    surface: 'metal',
    source: {
      conductivity: 'prEN 12524:1998 and ISO 10456:2007, aluminium alloy',
      density: 'prEN 12524:1998 and ISO 10456:2007, aluminium alloy',
      vapour: 'prEN 12524:1998: no vapour passes metal; counted as 1e6',
    },
  },
  {
    ...covering,
    id: 'galvanised-steel',
    name: 'Galvanised steel sheet',
    conductivityWPerMK: 50,
    densityKgPerM3: 7800,
    vapourResistanceFactor: 1e6,
    thicknessesMm: [0.4, 0.5, 0.55, 0.7],
    // US galvanised gauge 28, 26 and 24: 0.0187, 0.0217 and 0.0276 in (from memory).
    thicknessesUsMm: [0.47498, 0.55118, 0.70104],
    specificHeatJPerKgK: 450,
    insideHive: 'covered',
    beeNote:
      'Keep it outside, since honey and bee acids dissolve zinc; edges are sharp, wear gloves.',
    surface: 'metal',
    source: {
      conductivity: 'prEN 12524:1998 and ISO 10456:2007, steel',
      density: 'prEN 12524:1998 and ISO 10456:2007, steel',
      vapour: 'prEN 12524:1998: no vapour passes metal; counted as 1e6',
    },
  },
  {
    ...covering,
    id: 'bitumen-felt',
    name: 'Bitumen roofing felt',
    conductivityWPerMK: 0.23,
    densityKgPerM3: 1100,
    vapourResistanceFactor: 50000,
    thicknessesMm: [2, 3, 4],
    thicknessesUsMm: [1.5875, 3.175],
    specificHeatJPerKgK: 1000,
    insideHive: 'never',
    beeNote: 'For the top of the lid only: it smells and turns sticky in the heat of a hive.',
    surface: 'membrane',
    source: {
      conductivity: 'from memory: ISO 10456:2007 Table 3, bitumen felt or sheet',
      density: 'from memory: ISO 10456:2007 Table 3, bitumen felt or sheet',
      vapour: 'from memory: ISO 10456:2007 Table 3, bitumen felt or sheet',
    },
  },
  {
    ...covering,
    id: 'roofing-membrane',
    name: 'Rubber roofing membrane (EPDM)',
    conductivityWPerMK: 0.25,
    densityKgPerM3: 1150,
    vapourResistanceFactor: 6000,
    thicknessesMm: [1, 1.2, 1.5],
    // 0.045 and 0.060 in.
    thicknessesUsMm: [1.143, 1.524],
    specificHeatJPerKgK: 1000,
    insideHive: 'never',
    beeNote: 'For the top of the lid only; let the glue dry and air before bees move in.',
    surface: 'membrane',
    source: {
      conductivity: 'from memory: ISO 10456:2007 Table 3, EPDM',
      density: 'from memory: ISO 10456:2007 Table 3, EPDM',
      vapour: 'from memory: ISO 10456:2007 Table 3, EPDM',
    },
  },
]
