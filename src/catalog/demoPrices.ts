import type { StockSection } from './stock.ts'

/*
 * Every price here is invented for demonstration (demo: invented), in no currency, and near to no
 * shop's. The rules only keep the usual order: wide, long, planed and lasting costs more.
 */

/** What a board costs, invented: its volume, dearer when planed, by wood and by length. */
export function boardPrice(section: StockSection, wood: string, lengthMm: number): number {
  const { thicknessMm, widthMm } = section
  const volumeM3 = thicknessMm * widthMm * lengthMm * 1e-9
  const perM3 = isPlaned(section) ? PLANED_PER_M3 : SAWN_PER_M3
  // Long straight boards are rarer: 1 at 2.4 m, 1.06 at 4.8 m.
  const long = 0.94 + 0.000025 * lengthMm
  return toFive(volumeM3 * perM3 * (WOOD_FACTORS[wood] ?? 1) * long)
}

/** What a sheet costs, invented: by its area, and by its volume; small sheets a little dearer. */
export function sheetPrice(
  material: string,
  thicknessMm: number,
  size: { readonly lengthMm: number; readonly widthMm: number },
): number {
  const areaM2 = size.lengthMm * size.widthMm * 1e-6
  const { perM2, perM2Mm } = SHEET_PRICES[material] ?? OTHER_SHEET
  // Half a sheet costs more than half: the shop has the other half left.
  const small = 1 + 0.1 * Math.max(0, 1 - areaM2 / WHOLE_SHEET_M2)
  return toFive(areaM2 * (perM2 + perM2Mm * thicknessMm) * small)
}

/** Rounded to five hundredths, and never nothing. */
const toFive = (price: number): number => Math.max(1, Math.round(price * 20)) / 20

// Demo prices to agree with roughly: 38 x 63 x 2.4 m 5.00; 25 x 50 x 2.4 m 3.00; planed 19 x 184 x
// 2.4 m 14.00; plywood 9 mm 36.00, 18 mm 58.00; XPS 50 mm 9.00; PIR 50 mm 34.00; aluminium 42.00.
const SAWN_PER_M3 = 900
const PLANED_PER_M3 = 1600
const WHOLE_SHEET_M2 = 2.9

/** Boards up to an inch by their dressed size, and what is called planed. */
const isPlaned = ({ system, nominal, thicknessMm }: StockSection): boolean =>
  system === 'us' ? thicknessMm < 30 : /^(ex|planed) /.test(nominal)

const WOOD_FACTORS: Readonly<Record<string, number>> = {
  spruce: 1,
  pine: 1.05,
  'white-pine': 1.4,
  'western-red-cedar': 2.4,
  'douglas-fir': 1.6,
  larch: 1.5,
  'southern-pine': 1.1,
  cypress: 2,
  oak: 3.5,
}

interface SheetPrice {
  /** For each square metre, however thin. */
  readonly perM2: number
  /** For each square metre and millimetre of thickness. */
  readonly perM2Mm: number
}

const OTHER_SHEET: SheetPrice = { perM2: 4, perM2Mm: 0.3 }

const SHEET_PRICES: Readonly<Record<string, SheetPrice>> = {
  'plywood-softwood': { perM2: 4.7, perM2Mm: 0.82 },
  'plywood-birch': { perM2: 8, perM2Mm: 1.5 },
  osb: { perM2: 2, perM2Mm: 0.55 },
  fibreboard: { perM2: 2, perM2Mm: 0.45 },
  hardboard: { perM2: 2, perM2Mm: 1 },
  mdf: { perM2: 2, perM2Mm: 0.7 },
  eps: { perM2: 0, perM2Mm: 0.12 },
  'eps-graphite': { perM2: 0, perM2Mm: 0.15 },
  xps: { perM2: 0, perM2Mm: 0.22 },
  pur: { perM2: 0, perM2Mm: 0.22 },
  'pir-foil': { perM2: 0, perM2Mm: 0.23 },
  'wood-fibre': { perM2: 1, perM2Mm: 0.2 },
  cork: { perM2: 1, perM2Mm: 0.45 },
  'aluminium-sheet': { perM2: 0, perM2Mm: 29 },
  'galvanised-steel': { perM2: 0, perM2Mm: 24 },
  'bitumen-felt': { perM2: 2, perM2Mm: 1.5 },
  'roofing-membrane': { perM2: 2, perM2Mm: 8 },
  'stainless-steel': { perM2: 0, perM2Mm: 60 },
  'steel-mesh': { perM2: 14, perM2Mm: 0 },
  'cotton-canvas': { perM2: 9, perM2Mm: 0 },
}
