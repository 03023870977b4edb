import type { ShopReport } from '../reports/shop/computeShop.ts'
import { formatNumber } from '../units/number.ts'
import type { UnitPreferences } from '../units/preferences.ts'
import { csvCount, csvLength } from './csvNumbers.ts'
import { csvText } from './csvText.ts'
import { operationText } from './operationText.ts'

const KG_PER_LB = 0.45359237

/** The cut list as CSV, with a header that names the units. */
export const cutListCsv = (shop: Pick<ShopReport, 'cutList'>, units: UnitPreferences): string => {
  const length = csvLength(units.length)
  const isKg = units.mass === 'kg'
  const header = [
    'Part',
    'Pieces',
    'Name',
    `Length (${units.length})`,
    `Width (${units.length})`,
    `Thickness (${units.length})`,
    'Grain',
    'Hand',
    'Material',
    `Mass each (${units.mass})`,
    `Work (sizes in ${units.length})`,
    'Stock',
    'Bought',
  ]
  const rows = shop.cutList.map((row) => [
    row.label,
    csvCount(row.count),
    row.name,
    length(row.lengthMm),
    length(row.widthMm),
    length(row.thicknessMm),
    row.grain,
    row.hand,
    row.materialName,
    { number: formatNumber(isKg ? row.massKgEach : row.massKgEach / KG_PER_LB, 3) },
    row.operations.map((o) => operationText(o, units.length)).join('; '),
    row.stock ?? '',
    row.bought ? 'yes' : 'no',
  ])
  return csvText(header, rows)
}
