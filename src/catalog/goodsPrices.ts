/*
 * Every price here is invented for demonstration (demo: invented), in no currency. Rules of size keep
 * the usual order: thick and long costs more. A design's own prices replace them.
 */

/** What a box of screws, nails, pegs or staples costs, invented. */
export const fastenerPrice = (
  kind: 'screw' | 'nail' | 'peg' | 'staple',
  size: { readonly diameterMm: number; readonly lengthMm: number },
  quantity: number,
): number => {
  // 4 x 50, a box of 200: 9.00.
  const volume = size.diameterMm ** 2 * size.lengthMm
  const { base, perVolume } = FASTENER_RULES[kind]
  // Small packs cost more for the piece.
  return toFive(quantity * (base + perVolume * volume) * (quantity <= 25 ? 1.6 : 1))
}

/** What a fitting, a tube or tin of glue, or a tin of finish costs, invented; 5 when none is known. */
export const goodsPrice = (id: string): number => GOODS[id] ?? (id.startsWith('hinge-') ? HINGE : 5)

/** What a sheet of wax foundation costs, invented: by its area. */
export const foundationPrice = (lengthMm: number, widthMm: number): number =>
  toFive(0.2 + lengthMm * widthMm * 1.1e-5)

/** What loose fill costs for a bag, and batts for a square metre of 100 mm, invented. */
export const bagPrice = (material: string): number => BAGS[material] ?? 12
export const battPrice = (material: string, thicknessMm: number): number =>
  toFive(((BATTS[material] ?? 8) * thicknessMm) / 100)

const toFive = (price: number): number => Math.max(1, Math.round(price * 20)) / 20

const FASTENER_RULES = {
  screw: { base: 0.01, perVolume: 4.4e-5 },
  nail: { base: 0.006, perVolume: 5e-5 },
  peg: { base: 0.06, perVolume: 0 },
  staple: { base: 0.008, perVolume: 0 },
} as const

/** A pair of stainless butt hinges of 75 mm: 8.00. */
const HINGE = 8

const GOODS: Readonly<Record<string, number>> = {
  'toggle-latch': 4.5,
  'lid-chain': 4,
  'lid-prop': 11,
  'lid-hook': 2.5,
  'hive-strap': 9,
  'vent-mesh': 14,
  'sealing-strip': 0.8,
  'foot-pad': 1.5,
  'leg-bracket': 1.2,
  'frame-strap': 0.3,
  'wood-glue': 9.5,
  'foam-glue': 8.5,
  sealant: 8,
  'foil-tape': 7,
  'linseed-oil': 11,
  'water-paint': 19,
  'wax-dip': 14,
}

const BAGS: Readonly<Record<string, number>> = {
  'wood-shavings': 8,
  straw: 5,
  cellulose: 13,
}

const BATTS: Readonly<Record<string, number>> = { 'mineral-wool': 6, 'sheep-wool': 16 }
