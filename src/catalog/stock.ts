/** One timber section as a yard sells it: its trade name, and what it really measures. */
export interface StockSection {
  readonly id: string
  readonly system: 'metric' | 'us'
  readonly nominal: string
  /** The smaller side; never more than `widthMm`. */
  readonly thicknessMm: number
  readonly widthMm: number
  readonly source: string
}

/**
 * What a section is called in a cut list, with what it really measures in mm:
 * `from 2x4 (38.1 × 88.9 actual)`, `from CLS 38 × 63`.
 */
export function sectionText({
  nominal,
  thicknessMm,
  widthMm,
}: Pick<StockSection, 'nominal' | 'thicknessMm' | 'widthMm'>): string {
  const actual = `${thicknessMm} × ${widthMm}`
  const name = nominal.replace(/ x /g, ' × ')
  // A section whose name is its size needs no saying twice.
  return name.endsWith(actual) ? `from ${name}` : `from ${name} (${actual} actual)`
}

function usRow(
  nominal: string,
  thicknessMm: number,
  widthMm: number,
  source: string,
): StockSection {
  return { id: `us-${nominal}`, system: 'us', nominal, thicknessMm, widthMm, source }
}

function metricRow(
  nominal: string,
  thicknessMm: number,
  widthMm: number,
  source: string,
): StockSection {
  const id = nominal.toLowerCase().replaceAll(' x ', 'x').replaceAll(' ', '-')
  return { id: `metric-${id}`, system: 'metric', nominal, thicknessMm, widthMm, source }
}

const ps20 = 'PS 20 dry dressed, restated at mail.vterrain.org/Hawaii/Ben/lumber.htm'
const ps20Rule = 'from memory: PS 20 dry dressed, by the same rule as the wider sections'
const decking = 'gandalfddi.github.io/woodsize.htm: 5/4 decking is 1 in thick'
const cls = 'from memory: EN 1313-1 UK annex Table NA.3, Canadian lumber sizes'
const planed = 'from memory: planed all round, UK yards; yours may differ by 1 mm'
const batten = 'from memory: continental planed battens'
const sawn = 'from memory: EN 1313-1 sawn series; EN 336 T1 allows -1 to +3 mm'

/** Timber sections for sale. PS 20 sizes are least sizes when dry: measure your own boards. */
export const STOCK_SECTIONS: readonly StockSection[] = [
  usRow('1x2', 19.05, 38.1, ps20Rule),
  usRow('1x3', 19.05, 63.5, ps20Rule),
  usRow('1x4', 19.05, 88.9, ps20),
  usRow('1x6', 19.05, 139.7, ps20),
  usRow('1x8', 19.05, 184.15, ps20),
  usRow('1x10', 19.05, 234.95, ps20),
  usRow('1x12', 19.05, 285.75, ps20),
  usRow('5/4x6', 25.4, 139.7, decking),
  usRow('2x2', 38.1, 38.1, ps20Rule),
  usRow('2x3', 38.1, 63.5, ps20Rule),
  usRow('2x4', 38.1, 88.9, ps20),
  usRow('2x6', 38.1, 139.7, ps20),
  usRow('2x8', 38.1, 184.15, ps20),
  usRow('2x10', 38.1, 234.95, ps20),
  usRow('2x12', 38.1, 285.75, ps20),
  metricRow('ex 25 x 50', 20, 44, planed),
  metricRow('ex 25 x 100', 20, 94, planed),
  metricRow('ex 25 x 150', 20, 144, planed),
  metricRow('ex 25 x 200', 20, 194, planed),
  metricRow('ex 25 x 225', 20, 219, planed),
  metricRow('ex 50 x 50', 44, 44, planed),
  metricRow('ex 50 x 100', 44, 94, planed),
  metricRow('CLS 38 x 63', 38, 63, cls),
  metricRow('CLS 38 x 89', 38, 89, cls),
  metricRow('CLS 38 x 140', 38, 140, cls),
  metricRow('planed 45 x 45', 45, 45, batten),
  metricRow('planed 45 x 70', 45, 70, batten),
  metricRow('planed 45 x 95', 45, 95, batten),
  metricRow('planed 18 x 45', 18, 45, batten),
  metricRow('planed 18 x 95', 18, 95, batten),
  metricRow('planed 21 x 45', 21, 45, batten),
  metricRow('planed 21 x 95', 21, 95, batten),
  metricRow('planed 28 x 70', 28, 70, batten),
  metricRow('planed 28 x 95', 28, 95, batten),
  metricRow('sawn 25 x 50', 25, 50, sawn),
  metricRow('sawn 25 x 100', 25, 100, sawn),
  metricRow('sawn 25 x 150', 25, 150, sawn),
  metricRow('sawn 25 x 200', 25, 200, sawn),
  metricRow('sawn 25 x 225', 25, 225, sawn),
  metricRow('sawn 50 x 75', 50, 75, sawn),
  metricRow('sawn 50 x 100', 50, 100, sawn),
  metricRow('sawn 50 x 150', 50, 150, sawn),
  metricRow('sawn 50 x 200', 50, 200, sawn),
  metricRow('sawn 75 x 75', 75, 75, sawn),
  metricRow('sawn 100 x 100', 100, 100, sawn),
]
