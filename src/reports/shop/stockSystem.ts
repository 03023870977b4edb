const MM_PER_FOOT = 304.8

/**
 * Whose section names the cut list speaks. The document has no unit of its own, but a yard's longest
 * board tells: lumber is sold in whole feet (sizes.com, softwood lengths), metric boards are not.
 */
export const stockSystemOf = (longestBoardMm: number): 'metric' | 'us' => {
  const feet = longestBoardMm / MM_PER_FOOT
  return Math.abs(feet - Math.round(feet)) * MM_PER_FOOT < 1 ? 'us' : 'metric'
}
