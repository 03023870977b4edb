import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import type { Hive, PanelSummary, RoofSpace } from '../../../src/hive/hive.ts'

// Easy numbers, not a real hive: pine conducts 0.13 W/(m K), EPS 0.036, softwood plywood 0.13.

/** The reference hive wall: 12 pine, 40 EPS with a fifth of pine rails, 12 pine; half a square metre. */
export const EXAMPLE_WALL: PanelSummary = {
  id: 'front-wall',
  name: 'Front wall',
  innerArea: 500_000,
  coreArea: 600_000,
  timberArea: 120_000,
  lining: { material: 'pine', thickness: 12 },
  core: { insulation: 'eps', timber: 'pine', thickness: 40 },
  cladding: { material: 'pine', thickness: 12 },
}

export const EXAMPLE_LID: PanelSummary = { ...EXAMPLE_WALL, id: 'lid', name: 'Lid' }
export const EXAMPLE_FLOOR: PanelSummary = { ...EXAMPLE_WALL, id: 'floor', name: 'Floor' }

/** 20 to 60 mm above the lid, a tenth of it firring, under 9 mm of plywood. */
export const EXAMPLE_ROOF: RoofSpace = {
  filling: 'air',
  lowHeight: 20,
  highHeight: 60,
  timberShare: 0.1,
  deck: { material: 'plywood-softwood', thickness: 9 },
}

/** Two long walls, two end walls of half their size with twice the share of rails, lid and floor. */
export const EXAMPLE_HIVE: Pick<Hive, 'panels' | 'roof'> = {
  panels: [
    EXAMPLE_WALL,
    { ...EXAMPLE_WALL, id: 'back-wall', name: 'Back wall' },
    {
      ...EXAMPLE_WALL,
      id: 'left-wall',
      name: 'Left wall',
      innerArea: 250_000,
      timberArea: 240_000,
    },
    {
      ...EXAMPLE_WALL,
      id: 'right-wall',
      name: 'Right wall',
      innerArea: 250_000,
      timberArea: 240_000,
    },
    EXAMPLE_LID,
    EXAMPLE_FLOOR,
  ],
  roof: EXAMPLE_ROOF,
}

export const EXAMPLE_DESIGN: typeof DEFAULT_DESIGN = {
  ...DEFAULT_DESIGN,
  walls: { ...DEFAULT_DESIGN.walls, targetM2KPerW: 1 },
  lid: { ...DEFAULT_DESIGN.lid, targetM2KPerW: 3, coverMaterial: 'aluminium-sheet', coverMm: 0.8 },
  floor: { ...DEFAULT_DESIGN.floor, targetM2KPerW: 1.1 },
  site: { ...DEFAULT_DESIGN.site, annualMeanC: 10, seasonalSwingC: 14, coldNightC: -10 },
  colony: { ...DEFAULT_DESIGN.colony, cavityAirC: 12 },
}
