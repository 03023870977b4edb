import type { Material } from './material.ts'

const sheet = { family: 'sheet', form: 'sheet' } as const

// Usual label thicknesses of the PS 1 and PS 2 performance categories (APA), in inches:
// 0.225 0.354 0.451 0.483 0.578 0.609 0.703 0.734. The sheet is thinner than its category name.
const plywoodLabelsMm = [5.715, 8.9916, 11.4554, 12.2682, 14.6812, 15.4686, 17.8562, 18.6436]
// OSB also comes in the 7/16 category: 0.418 in.
const osbLabelsMm = [8.9916, 10.6172, 11.4554, 12.2682, 14.6812, 15.4686, 17.8562, 18.6436]

/** Wood-based sheets, heat flow through the face. */
export const SHEETS: readonly Material[] = [
  {
    ...sheet,
    id: 'plywood-softwood',
    name: 'Softwood plywood',
    conductivityWPerMK: 0.13,
    densityKgPerM3: 510,
    vapourResistanceFactor: 200,
    thicknessesMm: [6, 9, 12, 15, 18, 21, 24],
    thicknessesUsMm: plywoodLabelsMm,
    specificHeatJPerKgK: 1600,
    insideHive: 'bare',
    beeNote: 'Safe bare inside if the glue is exterior grade; seal every cut edge against damp.',
    surface: 'plywood',
    source: {
      conductivity: 'from memory: ISO 10456:2007 Table 3, plywood at 500 kg/m³',
      density: 'roofonline.com: a 4 x 8 ft sheet of 15/32 in weighs about 40 lb',
      vapour: 'from memory: ISO 10456:2007 Table 3, plywood at 500 kg/m³, dry cup',
    },
  },
  {
    ...sheet,
    id: 'plywood-birch',
    name: 'Birch plywood',
    conductivityWPerMK: 0.17,
    densityKgPerM3: 680,
    vapourResistanceFactor: 220,
    thicknessesMm: [4, 6.5, 9, 12, 15, 18, 21, 24],
    // Sold in metric thickness in the US too; here to the nearest thousandth of an inch
    // (0.236, 0.354, 0.472, 0.591, 0.709).
    thicknessesUsMm: [5.9944, 8.9916, 11.9888, 15.0114, 18.0086],
    specificHeatJPerKgK: 1600,
    insideHive: 'bare',
    beeNote: 'Safe bare inside if the glue is exterior grade; birch itself rots fast when wet.',
    surface: 'plywood',
    source: {
      conductivity: 'from memory: ISO 10456:2007 Table 3, plywood at 700 kg/m³',
      density: 'ehow.com/info_7854541: 650 to 700 kg/m³',
      vapour: 'from memory: ISO 10456:2007 Table 3, plywood at 700 kg/m³, dry cup',
    },
  },
  {
    ...sheet,
    id: 'osb',
    name: 'Oriented strand board (OSB)',
    conductivityWPerMK: 0.13,
    densityKgPerM3: 650,
    vapourResistanceFactor: 50,
    thicknessesMm: [9, 11, 15, 18, 22],
    thicknessesUsMm: osbLabelsMm,
    specificHeatJPerKgK: 1700,
    insideHive: 'covered',
    beeNote: 'Keep it behind a lining: loose strands and swollen edges are hard to keep clean.',
    surface: 'fibre',
    source: {
      conductivity: 'from memory: ISO 10456:2007 Table 3, OSB at 650 kg/m³',
      density: 'from memory: ISO 10456:2007 Table 3, OSB',
      vapour: 'from memory: ISO 10456:2007 Table 3, OSB, dry cup (single tests reach 100 to 300)',
    },
  },
  {
    ...sheet,
    id: 'fibreboard',
    name: 'Soft fibreboard sheathing',
    conductivityWPerMK: 0.07,
    densityKgPerM3: 400,
    vapourResistanceFactor: 10,
    thicknessesMm: [12, 18, 22],
    thicknessesUsMm: [12.7, 19.84375],
    specificHeatJPerKgK: 1300,
    insideHive: 'covered',
    beeNote: 'Bees chew it to crumbs, so keep it behind a lining and out of the rain.',
    surface: 'fibre',
    source: {
      conductivity: 'ASHRAE Fundamentals 2005 ch. 30 Table 22, fibreboard sheathing',
      density: 'ASHRAE Fundamentals 2005 ch. 30 Table 22, fibreboard sheathing',
      vapour: 'from memory: ISO 10456:2007 Table 3, fibreboard at 400 kg/m³, dry cup',
    },
  },
  {
    ...sheet,
    id: 'hardboard',
    name: 'Hardboard',
    conductivityWPerMK: 0.105,
    densityKgPerM3: 800,
    vapourResistanceFactor: 30,
    thicknessesMm: [3.2, 4, 5, 6],
    thicknessesUsMm: [3.175, 4.7625, 6.35],
    specificHeatJPerKgK: 1300,
    insideHive: 'covered',
    beeNote: 'It swells in the damp air over a cluster, so keep it behind a lining.',
    surface: 'fibre',
    source: {
      conductivity: 'ASHRAE Fundamentals 2005 ch. 25, medium-density hardboard',
      density: 'ASHRAE Fundamentals 2005 ch. 25, medium-density hardboard',
      vapour: 'from memory: ISO 10456:2007 Table 3, fibreboard at 800 kg/m³, dry cup',
    },
  },
  {
    ...sheet,
    id: 'mdf',
    name: 'Medium-density fibreboard (MDF)',
    conductivityWPerMK: 0.17,
    densityKgPerM3: 750,
    vapourResistanceFactor: 30,
    thicknessesMm: [6, 9, 12, 15, 18, 22, 25],
    thicknessesUsMm: [6.35, 12.7, 15.875, 19.05],
    specificHeatJPerKgK: 1700,
    insideHive: 'never',
    beeNote: 'Not for hives: it falls apart when wet, and its fine dust is bad for the keeper.',
    surface: 'fibre',
    source: {
      conductivity: 'from memory: ISO 10456:2007 Table 3, between 600 (0.14) and 800 kg/m³ (0.18)',
      density: 'from memory: usual value, 700 to 800 kg/m³',
      vapour: 'from memory: ISO 10456:2007 Table 3, fibreboard at 800 kg/m³, dry cup',
    },
  },
]
