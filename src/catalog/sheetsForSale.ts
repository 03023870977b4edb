import { sheetPrice } from './demoPrices.ts'
import type { Material } from './material.ts'
import { materialById } from './materials.ts'

/** Sheets of one size as they are sold. */
export interface SheetForSale {
  /** Along the grain, where there is grain. */
  readonly lengthMm: number
  readonly widthMm: number
  /** Invented, in no currency. */
  readonly price: number
}

interface SheetSize {
  readonly lengthMm: number
  readonly widthMm: number
}

interface SheetSizes {
  readonly metric: readonly SheetSize[]
  readonly us: readonly SheetSize[]
  readonly source: string
}

/**
 * The sizes in which a sheet, board, metal, membrane or cloth is sold. Every thickness can be had: one
 * between those sold costs by its volume, like any other. None for wood, loose fill, batts and wax.
 */
export function sheetsForSale(
  material: string,
  thicknessMm: number,
  system: 'metric' | 'us',
): readonly SheetForSale[] {
  const sizes = sheetSizesOf(materialById(material))?.[system] ?? []
  return sizes.map((size) => ({ ...size, price: sheetPrice(material, thicknessMm, size) }))
}

/** The sizes of a material's sheets and where they are from; undefined when it is not sold so. */
export function sheetSizesOf({ id, family, form }: Material): SheetSizes | undefined {
  if (form === 'solid' || form === 'batt' || form === 'loose' || family === 'wax') return undefined
  return SIZES_BY_ID[id] ?? SIZES_BY_FAMILY[family]
}

const size = (lengthMm: number, widthMm: number): SheetSize => ({ lengthMm, widthMm })

// 8 ft, 4 ft and 2 ft: not the 2440 and 1220 mm that metric sheets have.
const [FT8, FT4, FT2] = [2438.4, 1219.2, 609.6]
const US_SHEETS = [size(FT8, FT4), size(FT4, FT4)]
const US_FOAM = [size(FT8, FT4), size(FT8, FT2)]

const WOOD_BASED: SheetSizes = {
  metric: [size(2440, 1220), size(2500, 1250), size(1220, 1220)],
  us: US_SHEETS,
  source: 'makers’ lists for 1220 x 2440 and 1250 x 2500; half sheets from memory; 4 x 8 ft exact',
}

const METAL: SheetSizes = {
  metric: [size(2000, 1000), size(1000, 500)],
  us: [size(FT8, FT4), size(914.4, 609.6)],
  source: 'from memory: flat sheets of 1000 x 2000; US 24 x 36 in to 4 x 10 ft',
}

const SIZES_BY_FAMILY: Readonly<Record<string, SheetSizes>> = {
  sheet: WOOD_BASED,
  insulation: {
    metric: [size(1200, 600)],
    us: US_FOAM,
    source: 'from memory: EPS 1200 x 600 and 2400 x 1200',
  },
  covering: {
    metric: [size(2000, 1000), size(3000, 1000)],
    us: [size(FT8, 914.4)],
    source: 'from memory: sold off rolls 1 m (36 in) wide',
  },
  metal: METAL,
  textile: {
    metric: [size(1000, 1500), size(2000, 1500)],
    us: [size(914.4, 1524), size(1828.8, 1524)],
    source: 'from memory: cloth 1.5 m (60 in) wide, by the metre or yard',
  },
}

const SIZES_BY_ID: Readonly<Record<string, SheetSizes>> = {
  xps: {
    metric: [size(1250, 600)],
    us: US_FOAM,
    source: 'paperzz.com/doc/8220106: 600 x 1250; US sizes from makers’ lists',
  },
  eps: {
    metric: [size(1200, 600), size(2400, 1200)],
    us: US_FOAM,
    source: 'from memory: 1200 x 600 and 2400 x 1200',
  },
  'pir-foil': {
    metric: [size(2400, 1200), size(1200, 600)],
    us: US_FOAM,
    source: 'energyefficiency.ie/?p=22152: about 2400 x 1200; half sizes from memory',
  },
  pur: {
    metric: [size(2400, 1200), size(1200, 600)],
    us: US_FOAM,
    source: 'from memory: as foil-faced boards',
  },
  'wood-fibre': {
    metric: [size(1250, 600)],
    us: [size(FT4, FT2)],
    source: 'from memory: 600 x 1220 to 1350, often tongued',
  },
  cork: {
    metric: [size(1000, 500)],
    us: [size(914.4, 609.6)],
    source: 'from memory: expanded cork boards of 1000 x 500',
  },
  'aluminium-sheet': METAL,
  'galvanised-steel': METAL,
  'steel-mesh': {
    metric: [size(1000, 500), size(1000, 1000)],
    us: [size(914.4, 609.6)],
    source: 'from memory: cut from rolls 1 m (36 in) wide',
  },
}
