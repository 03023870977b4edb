/** A glue, sealant or tape by what it is made of, not by a maker. */
export interface AdhesiveRow {
  readonly id: string
  readonly name: string
  readonly unit: 'ml' | 'g' | 'm'
  /** What one m² of joint or one m of bead takes, in `unit`; 1 for tape. */
  readonly perUnit: number
  readonly per: 'm2' | 'm'
  /** Content of what shops sell, in `unit`. */
  readonly packSize: number
  readonly packUnit: 'tube' | 'tin' | 'roll'
  readonly why: string
  readonly source: string
}

/** Bead of 5 mm: 20 ml a metre; of 6 mm: 28 ml a metre. */
const beadMl = (diameterMm: number): number => Math.round((Math.PI * diameterMm ** 2) / 4)

export const ADHESIVES = {
  wood: {
    id: 'wood-glue',
    name: 'Water-resistant wood glue, class D4',
    unit: 'g',
    perUnit: 180,
    per: 'm2',
    packSize: 750,
    packUnit: 'tin',
    why: 'Stands damp, has no solvent, and is harmless when dry. Spread it on both faces.',
    source: 'from memory: EN 204 class D4; makers give 150 to 200 g/m²',
  },
  foam: {
    id: 'foam-glue',
    name: 'Polyurethane foam glue without solvent',
    unit: 'ml',
    perUnit: beadMl(5),
    per: 'm',
    packSize: 300,
    packUnit: 'tube',
    why: 'Solvents melt polystyrene. Use only glue marked for foam boards; scratch the smooth skin first and try it on scrap.',
    source: 'from memory: makers of foam boards; see the cautions on foam',
  },
  sealant: {
    id: 'sealant',
    name: 'Hybrid sealant (MS polymer), neutral',
    unit: 'ml',
    perUnit: beadMl(6),
    per: 'm',
    packSize: 290,
    packUnit: 'tube',
    why: 'Stays soft outdoors, sticks to metal and wood, and has no solvent and no vinegar smell.',
    source: 'common practice, from memory',
  },
  tape: {
    id: 'foil-tape',
    name: 'Aluminium tape',
    unit: 'm',
    perUnit: 1,
    per: 'm',
    packSize: 25,
    packUnit: 'roll',
    why: 'Closes the cut edges of foil-faced foam, so that no air moves round the boards.',
    source: 'common practice, from memory',
  },
} as const satisfies Readonly<Record<string, AdhesiveRow>>

/** Kinds that must stay away from polystyrene and from the bees, in words for the list. */
export const FORBIDDEN_ADHESIVES =
  'No contact glue, no construction glue with solvent, no vinegar-smelling silicone: they melt foam or drive bees out'
