import { sheetsForSale } from '../../../catalog/sheetsForSale.ts'
import type { Design } from '../../../design/schema.ts'
import { isStockItem, stockItemId } from '../../../design/stockItem.ts'
import type { SheetStock } from '../../../solvers/cutting/sheets/sheetJob.ts'
import { stockSystemOf } from '../stockSystem.ts'

/**
 * The sheets that can be had of a material in a thickness: the catalogue's sizes with the design's own
 * prices, without what it says is not to be had, and with what is on hand, for nothing.
 */
export const sheetsFor = (
  { shop, stock }: Pick<Design, 'shop' | 'stock'>,
  material: string,
  thicknessMm: number,
): readonly SheetStock[] => {
  const own = stock.sheets
    .map((row, i) => ({ id: `stock.sheets.${i}`, row }))
    .filter(({ row }) => isStockItem(row, { ...row, material, thicknessMm }))
  const bought = own.filter(({ row }) => !row.onHand)
  const system = stockSystemOf(shop.longestBoardMm)
  const sold = sheetsForSale(material, thicknessMm, system).flatMap((sheet): SheetStock[] => {
    const { lengthMm, widthMm, price } = sheet
    const item = { kind: 'sheet', material, thicknessMm, widthMm, lengthMm } as const
    if (bought.some(({ row }) => isStockItem(row, item))) return []
    return [{ id: stockItemId(item), lengthMm, widthMm, price }]
  })
  const listed = own.flatMap(({ id, row }): SheetStock[] => {
    const { lengthMm, widthMm, price, supply, count, onHand } = row
    if (supply === 'none' || (onHand && !shop.useOnHand)) return []
    const isCounted = onHand || supply === 'counted'
    if (isCounted && count === 0) return []
    return [{ id, lengthMm, widthMm, price: onHand ? 0 : price, ...(isCounted && { count }) }]
  })
  return [...sold, ...listed]
}
