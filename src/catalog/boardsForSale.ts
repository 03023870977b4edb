import { boardPrice } from './demoPrices.ts'
import type { StockSection } from './stock.ts'

/** Boards of one length as a yard sells them. */
export interface BoardForSale {
  readonly lengthMm: number
  /** Invented, in no currency. */
  readonly price: number
}

/**
 * The lengths of a section of some wood that can be had up to `longestMm`, shortest first. Below the
 * shortest length sold, boards are cut down to `longestMm`, so there is always one.
 */
export function boardsForSale(
  section: StockSection,
  wood: string,
  longestMm: number,
): readonly BoardForSale[] {
  // Half a millimetre of grace: 8 ft (2438.4 mm) may be typed as 2438.
  const sold = BOARD_LENGTHS_MM[section.system].filter((lengthMm) => lengthMm <= longestMm + 0.5)
  const lengths = sold.length > 0 ? sold : [longestMm]
  return lengths.map((lengthMm) => ({ lengthMm, price: boardPrice(section, wood, lengthMm) }))
}

const feet = (count: number): number => Math.round(count * 3048) / 10

/**
 * Lengths in which boards are sold. Metric from 1.8 m in steps of 0.3 m, shops mostly in 0.6 m (from
 * memory: EN 1313-1 and retail custom); US in whole feet, usually every second (sizes.com, softwood
 * lengths).
 */
export const BOARD_LENGTHS_MM = {
  metric: [1800, 2400, 3000, 3600, 4200, 4800],
  us: [6, 8, 10, 12, 14, 16].map(feet),
} as const satisfies Record<StockSection['system'], readonly number[]>
