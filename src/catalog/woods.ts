import type { Material } from './material.ts'

const planedBoard = {
  family: 'wood',
  form: 'solid',
  // Planed boards and battens; shops differ (shop custom, from memory).
  thicknessesMm: [12, 18, 20, 21, 25, 28, 38, 45],
  // 1/2 in hobby board, 1x, 5/4 and 2x as dressed to PS 20.
  thicknessesUsMm: [12.7, 19.05, 25.4, 38.1],
  specificHeatJPerKgK: 1600,
  insideHive: 'bare',
} as const

const softwoodVapour = 'from memory: ISO 10456:2007 Table 3, softwood, dry cup 50'
const handbookTable = 'Wood Handbook FPL-GTR-190 (2010) Table 4-7, 12 % moisture'
const handbookDensity =
  'from specific gravity at 12 % moisture, Wood Handbook ch. 4 (gravity from memory)'

const softwood = { ...planedBoard, vapourResistanceFactor: 50, surface: 'softwood' } as const

/** Solid timbers, across the grain. One board may differ from its row by a fifth either way. */
export const WOODS: readonly Material[] = [
  {
    ...softwood,
    id: 'spruce',
    name: 'Spruce',
    conductivityWPerMK: 0.12,
    densityKgPerM3: 450,
    beeNote: 'Safe bare inside; paint the outside only, because it rots if it stays wet.',
    source: {
      conductivity: 'from memory: ISO 10456:2007 Table 3, softwood at 450 kg/m³',
      density: 'from memory: usual value for European spruce',
      vapour: softwoodVapour,
    },
  },
  {
    ...softwood,
    id: 'pine',
    name: 'Scots pine',
    conductivityWPerMK: 0.13,
    densityKgPerM3: 510,
    beeNote: 'Safe bare inside; ask that it was not dipped in preservative against insects.',
    source: {
      conductivity: 'prEN 12524:1998 and ISO 10456:2007 Table 3, softwood at 500 kg/m³',
      density: 'from memory: usual value for Scots pine',
      vapour: softwoodVapour,
    },
  },
  {
    ...softwood,
    id: 'white-pine',
    name: 'Eastern white pine',
    conductivityWPerMK: 0.11,
    densityKgPerM3: 392,
    beeNote: 'Safe bare inside; light, easy to cut, and it moves little when damp.',
    source: { conductivity: handbookTable, density: handbookDensity, vapour: softwoodVapour },
  },
  {
    ...softwood,
    id: 'western-red-cedar',
    name: 'Western red cedar',
    conductivityWPerMK: 0.1,
    densityKgPerM3: 358,
    beeNote: 'Safe bare inside and lasts outdoors unpainted; its dust troubles lungs, so mask up.',
    source: { conductivity: handbookTable, density: handbookDensity, vapour: softwoodVapour },
  },
  {
    ...softwood,
    id: 'douglas-fir',
    name: 'Douglas fir',
    conductivityWPerMK: 0.14,
    densityKgPerM3: 538,
    beeNote: 'Safe bare inside; strong and stiff, but heavier than spruce.',
    source: {
      conductivity: handbookTable,
      density: 'Oregon State University wood properties table, gravity 0.48 at 12 % moisture',
      vapour: softwoodVapour,
    },
  },
  {
    ...softwood,
    id: 'larch',
    name: 'Larch',
    conductivityWPerMK: 0.15,
    densityKgPerM3: 582,
    beeNote: 'Safe bare inside and slow to rot outside; drill before you nail, as it splits.',
    source: {
      conductivity: handbookTable,
      density: 'Oregon State University wood properties table, gravity 0.52 at 12 % moisture',
      vapour: softwoodVapour,
    },
  },
  {
    ...softwood,
    id: 'southern-pine',
    name: 'Southern yellow pine',
    conductivityWPerMK: 0.153,
    densityKgPerM3: 615,
    beeNote:
      'Safe bare inside when untreated; much of it is sold treated, which bees must not meet.',
    source: {
      conductivity: 'ASHRAE Fundamentals 2005 ch. 25, southern pine',
      density: 'ASHRAE Fundamentals 2005 ch. 25, southern pine',
      vapour: softwoodVapour,
    },
  },
  {
    ...softwood,
    id: 'cypress',
    name: 'Southern cypress',
    conductivityWPerMK: 0.131,
    densityKgPerM3: 508,
    beeNote: 'Safe bare inside and lasts well outdoors without treatment.',
    source: {
      conductivity: 'ASHRAE Fundamentals 2005 ch. 25, southern cypress',
      density: 'ASHRAE Fundamentals 2005 ch. 25, southern cypress',
      vapour: softwoodVapour,
    },
  },
  {
    ...planedBoard,
    id: 'oak',
    name: 'Oak',
    conductivityWPerMK: 0.18,
    densityKgPerM3: 704,
    vapourResistanceFactor: 200,
    beeNote: 'Safe bare inside but heavy; use stainless screws, because oak eats plain steel.',
    surface: 'hardwood',
    source: {
      conductivity: `${handbookTable}, northern red oak`,
      density: 'ASHRAE Fundamentals 2005 ch. 25, oak',
      vapour: 'prEN 12524:1998, hardwood, 200',
    },
  },
]
