import type { Material } from './material.ts'

const foamBoard = {
  family: 'insulation',
  form: 'board',
  specificHeatJPerKgK: 1450,
  insideHive: 'covered',
} as const

const foamVapour = 'from memory: ISO 10456:2007 Table 3, dry cup 60 (products run 20 to 185)'

/** Plastic foam boards. Values are for aged foam as sold today, not for old blowing gases. */
export const FOAMS: readonly Material[] = [
  {
    ...foamBoard,
    id: 'eps',
    name: 'White bead foam (EPS)',
    conductivityWPerMK: 0.036,
    densityKgPerM3: 20,
    vapourResistanceFactor: 60,
    thicknessesMm: [20, 25, 30, 40, 50, 60, 70, 80, 100, 120, 150, 200],
    thicknessesUsMm: [19.05, 25.4, 38.1, 50.8, 76.2, 101.6],
    beeNote:
      'Bees and ants dig into it, so close it in fully, and ask for board without insecticide.',
    surface: 'foam-white',
    source: {
      conductivity: 'ASHRAE Fundamentals 2005 ch. 25, moulded beads at 20 kg/m³',
      density: 'ASHRAE Fundamentals 2005 ch. 25, moulded beads at 20 kg/m³',
      vapour: foamVapour,
    },
  },
  {
    ...foamBoard,
    id: 'eps-graphite',
    name: 'Grey bead foam (EPS with graphite)',
    conductivityWPerMK: 0.032,
    densityKgPerM3: 18,
    vapourResistanceFactor: 60,
    thicknessesMm: [20, 30, 40, 50, 60, 80, 100, 120, 150, 200],
    thicknessesUsMm: [25.4, 38.1, 50.8, 76.2, 101.6],
    beeNote: 'Close it in fully as bees chew it, and shade loose sheets, which curl in the sun.',
    surface: 'foam-blue-grey',
    source: {
      conductivity: 'from memory: EN 13163 product range 0.031 to 0.032',
      density: 'from memory: EN 13163 product range 15 to 20 kg/m³',
      vapour: foamVapour,
    },
  },
  {
    ...foamBoard,
    id: 'xps',
    name: 'Extruded foam (XPS)',
    conductivityWPerMK: 0.034,
    densityKgPerM3: 33,
    vapourResistanceFactor: 150,
    thicknessesMm: [20, 30, 40, 50, 60, 80, 100, 120],
    thicknessesUsMm: [19.05, 25.4, 38.1, 50.8, 63.5, 76.2, 101.6],
    beeNote:
      'Takes damp best of the foams, but bees chew it: close it in, and ask about insecticide.',
    surface: 'foam-blue-grey',
    source: {
      conductivity: 'from memory: EN 13164 product range today 0.033 to 0.036',
      density: 'from memory: usual value, 28 to 40 kg/m³',
      vapour: 'from memory: ISO 10456:2007 Table 3, 150 (products run 150 to 300)',
    },
  },
  {
    ...foamBoard,
    id: 'pur',
    name: 'Polyurethane foam without facing (PUR)',
    conductivityWPerMK: 0.028,
    densityKgPerM3: 32,
    vapourResistanceFactor: 60,
    thicknessesMm: [20, 30, 40, 50, 60, 80, 100],
    thicknessesUsMm: [25.4, 38.1, 50.8, 76.2, 101.6],
    specificHeatJPerKgK: 1400,
    beeNote: 'Close it in as bees chew it, and never cut it with a hot wire: the fumes are poison.',
    surface: 'foam-white',
    source: {
      conductivity: 'from memory: EN 13165 aged range 0.025 to 0.028',
      density: 'from memory: usual value, 30 to 40 kg/m³',
      vapour: foamVapour,
    },
  },
  {
    ...foamBoard,
    id: 'pir-foil',
    name: 'Foil-faced foam (PIR)',
    conductivityWPerMK: 0.023,
    densityKgPerM3: 32,
    vapourResistanceFactor: 1e6,
    thicknessesMm: [25, 30, 40, 50, 60, 70, 75, 80, 100],
    thicknessesUsMm: [12.7, 19.05, 25.4, 38.1, 50.8, 63.5, 76.2, 101.6],
    specificHeatJPerKgK: 1400,
    beeNote: 'Tape the cut edges and line over it, and never cut it with a hot wire.',
    surface: 'foam-foil',
    source: {
      conductivity: 'from memory: EN 13165 foil-faced range 0.022 to 0.023',
      density: 'ASHRAE Fundamentals 2005 ch. 25, polyisocyanurate at 32 kg/m³',
      vapour: 'from memory: aluminium facing, counted as vapour-tight',
    },
  },
]
