import type { Material } from './material.ts'

/** Metal, cloth and wax that are neither wall nor roof. */
export const SUNDRIES: readonly Material[] = [
  {
    id: 'stainless-steel',
    name: 'Stainless steel',
    family: 'metal',
    form: 'sheet',
    conductivityWPerMK: 17,
    densityKgPerM3: 7900,
    vapourResistanceFactor: 1e6,
    thicknessesMm: [0.5, 0.7, 1, 1.5],
    // 0.0188, 0.025 and 0.0375 in (from memory).
    thicknessesUsMm: [0.47752, 0.635, 0.9525],
    specificHeatJPerKgK: 460,
    insideHive: 'bare',
    beeNote: 'The right metal for screws, runners and guards inside: honey does not attack it.',
    surface: 'metal',
    source: {
      conductivity: 'prEN 12524:1998 and ISO 10456:2007, stainless steel',
      density: 'prEN 12524:1998 and ISO 10456:2007, stainless steel',
      vapour: 'prEN 12524:1998: no vapour passes metal; counted as 1e6',
    },
  },
  {
    id: 'steel-mesh',
    name: 'Steel mesh, 8 wires to the inch',
    family: 'metal',
    form: 'sheet',
    // Mesh as one even sheet: 0.4318 mm (0.017 in) wire at 3.175 mm, two wires (0.8636 mm) thick.
    // Wires of one direction fill (pi/4 x 0.4318^2) / (3.175 x 0.8636) = 5.34 % of the section.
    // Steel at 50 W/(m K) along that share; both directions of wire for the mass.
    conductivityWPerMK: 2.67,
    densityKgPerM3: 833,
    vapourResistanceFactor: 1,
    thicknessesMm: [0.8, 0.9],
    thicknessesUsMm: [0.8636],
    specificHeatJPerKgK: 450,
    insideHive: 'bare',
    beeNote:
      'Openings under 3.2 mm keep bees in their place and let mites fall; fold sharp ends over.',
    surface: 'metal',
    source: {
      conductivity: 'from prEN 12524:1998 steel, by the share of wire in the section',
      density: 'from prEN 12524:1998 steel, by the share of wire in the volume',
      vapour: 'from memory: open mesh counted as still air, 1',
    },
  },
  {
    id: 'cotton-canvas',
    name: 'Cotton canvas',
    family: 'textile',
    form: 'sheet',
    conductivityWPerMK: 0.06,
    densityKgPerM3: 500,
    vapourResistanceFactor: 5,
    thicknessesMm: [0.5, 0.8, 1],
    // 0.020, 0.030 and 0.040 in.
    thicknessesUsMm: [0.508, 0.762, 1.016],
    specificHeatJPerKgK: 1300,
    insideHive: 'bare',
    beeNote: 'Use plain cloth with no proofing; bees glue it down and chew holes, so renew it.',
    surface: 'cloth',
    source: {
      conductivity: 'from memory: woven cotton, low confidence',
      density: 'from memory: about 400 g/m² at 0.8 mm',
      vapour: 'from memory: open woven cloth, low confidence',
    },
  },
  {
    id: 'beeswax-foundation',
    name: 'Beeswax foundation',
    family: 'wax',
    form: 'sheet',
    conductivityWPerMK: 0.25,
    densityKgPerM3: 960,
    vapourResistanceFactor: 10000,
    thicknessesMm: [0.7, 0.8, 1],
    thicknessesUsMm: [0.762, 1.016],
    specificHeatJPerKgK: 3000,
    insideHive: 'bare',
    beeNote: 'Buy pure wax from a source you trust: mixed wax sags, and old wax may hold residues.',
    surface: 'wax',
    source: {
      conductivity: 'from memory: solid beeswax 0.24 to 0.26, low confidence',
      density: 'from memory: solid beeswax 950 to 970 kg/m³',
      vapour: 'chelifer.de tests of capped comb disagree (330, over 10000); the tight one is used',
    },
  },
]
