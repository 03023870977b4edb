import type { ShopReport } from '../reports/shop/computeShop.ts'
import type { LengthUnit } from '../units/length.ts'
import { formatNumber, formatTrimmed } from '../units/number.ts'
import type { UnitPreferences } from '../units/preferences.ts'
import { operationText } from './operationText.ts'

const MM_PER_IN = 25.4
const KG_PER_LB = 0.45359237

/**
 * The cut list as CSV by RFC 4180: comma, CRLF, quotes where needed, a header with the units. Inches are
 * decimal, because spreadsheets take `1/2` for a date. Text that a spreadsheet would run as a formula
 * gets an apostrophe before it. No byte-order mark.
 */
export const cutListCsv = (shop: Pick<ShopReport, 'cutList'>, units: UnitPreferences): string => {
  const length = lengthWriter(units.length)
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
    guard(row.label),
    String(row.count),
    guard(row.name),
    length(row.lengthMm),
    length(row.widthMm),
    length(row.thicknessMm),
    row.grain,
    row.hand,
    guard(row.materialName),
    formatNumber(isKg ? row.massKgEach : row.massKgEach / KG_PER_LB, 3),
    guard(row.operations.map((o) => operationText(o, units.length)).join('; ')),
    guard(row.stock ?? ''),
    row.bought ? 'yes' : 'no',
  ])
  return [header, ...rows].map((cells) => `${cells.map(quote).join(',')}\r\n`).join('')
}

const lengthWriter =
  (unit: LengthUnit) =>
  (mm: number): string =>
    unit === 'mm' ? formatTrimmed(mm, 1) : formatTrimmed(mm / MM_PER_IN, 4)

/** A leading sign, even behind white space, would make a formula of a text. */
const guard = (text: string): string => (/^\s*[=+\-@]|^[\t\r\n]/.test(text) ? `'${text}` : text)

const quote = (cell: string): string =>
  /[",\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell
