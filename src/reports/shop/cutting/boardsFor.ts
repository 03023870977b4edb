import { boardsForSale } from '../../../catalog/boardsForSale.ts'
import { STOCK_SECTIONS, type StockSection } from '../../../catalog/stock.ts'
import { clearLengths } from '../../../design/clearLengths.ts'
import type { Design, LumberStockDesign } from '../../../design/schema.ts'
import { isStockItem, stockItemId } from '../../../design/stockItem.ts'
import type { LumberStock } from '../../../solvers/cutting/lumber/lumberJob.ts'
import { stockSystemOf } from '../stockSystem.ts'

/** A section that can be had in some wood, with the boards that there are of it. */
export interface BoardOption {
  /** The trade name: `CLS 38 x 63`; `own 22 x 120` when no yard sells it. */
  readonly nominal: string
  readonly thicknessMm: number
  readonly widthMm: number
  /** Never empty. Ids are as in `stockItem.ts`, or the path of the design's own row. */
  readonly stocks: readonly LumberStock[]
}

type Needs = Pick<Design, 'shop' | 'stock'>

/**
 * The boards that can be had of a wood: every section and length of the catalogue up to the longest
 * board, with the design's own prices, without what it says is not to be had, and with what is on
 * hand, for nothing. A board with bad places is the clear lengths between them.
 */
export const boardsFor = (design: Needs, wood: string): readonly BoardOption[] => {
  const forShop = known.get(design.stock) ?? { shop: design.shop, options: new Map() }
  const options = forShop.shop === design.shop ? forShop.options : new Map()
  const before = options.get(wood)
  if (before !== undefined) return before
  const found = findBoards(design, wood)
  known.set(design.stock, { shop: design.shop, options: options.set(wood, found) })
  return found
}

// Most edits leave workshop and stock alone, and what can be had with them.
const known = new WeakMap<
  Design['stock'],
  { readonly shop: Design['shop']; readonly options: Map<string, readonly BoardOption[]> }
>()

interface OwnRow {
  readonly id: string
  readonly row: LumberStockDesign
}

const findBoards = ({ shop, stock }: Needs, wood: string): readonly BoardOption[] => {
  const own = stock.lumber
    .map((row, i) => ({ id: `stock.lumber.${i}`, row }))
    .filter(({ row }) => row.material === wood)
  const system = stockSystemOf(shop.longestBoardMm)
  const sold = STOCK_SECTIONS.filter((section) => section.system === system)
  const sections = [...sold, ...ownSections(own, sold)]
  return sections.flatMap((section) => {
    const ofSection = own.filter(({ row }) => hasSection(row, section))
    const stocks = [
      ...(sold.includes(section) ? catalogueStocks(section, wood, shop, ofSection) : []),
      ...ofSection.flatMap(({ id, row }) => ownStocks(id, row, shop.useOnHand)),
    ]
    const { nominal, thicknessMm, widthMm } = section
    return stocks.length === 0 ? [] : [{ nominal, thicknessMm, widthMm, stocks }]
  })
}

const hasSection = (
  row: LumberStockDesign,
  { thicknessMm, widthMm }: Pick<StockSection, 'thicknessMm' | 'widthMm'>,
): boolean => {
  const { material, lengthMm } = row
  return isStockItem(
    { ...sorted(row), material, lengthMm },
    { material, lengthMm, thicknessMm, widthMm },
  )
}

/** A board's sides by size, whichever was typed first. */
const sorted = ({ thicknessMm, widthMm }: Pick<StockSection, 'thicknessMm' | 'widthMm'>) => ({
  thicknessMm: Math.min(thicknessMm, widthMm),
  widthMm: Math.max(thicknessMm, widthMm),
})

/** Sections of the design's own boards that are not in the catalogue, each once. */
const ownSections = (
  own: readonly OwnRow[],
  sold: readonly StockSection[],
): readonly StockSection[] => {
  const sections: StockSection[] = []
  for (const { id, row } of own) {
    if ([...sold, ...sections].some((section) => hasSection(row, section))) continue
    const { thicknessMm, widthMm } = sorted(row)
    const nominal = `own ${thicknessMm} x ${widthMm}`
    sections.push({ id, system: 'metric', nominal, thicknessMm, widthMm, source: 'own' })
  }
  return sections
}

/** What the yard sells, but for the lengths that the design has a row of its own for. */
const catalogueStocks = (
  section: StockSection,
  material: string,
  { longestBoardMm }: Design['shop'],
  own: readonly OwnRow[],
): readonly LumberStock[] => {
  const { thicknessMm, widthMm } = section
  const bought = own.filter(({ row }) => !row.onHand)
  return boardsForSale(section, material, longestBoardMm).flatMap(({ lengthMm, price }) => {
    const item = { kind: 'board', material, thicknessMm, widthMm, lengthMm } as const
    const isReplaced = bought.some(({ row }) => isStockItem({ ...row, ...sorted(row) }, item))
    return isReplaced ? [] : [{ id: stockItemId(item), lengthMm, price }]
  })
}

const ownStocks = (
  id: string,
  row: LumberStockDesign,
  useOnHand: boolean,
): readonly LumberStock[] => {
  const { lengthMm, price, supply, count, onHand, defects } = row
  if (supply === 'none' || (onHand && !useOnHand)) return []
  const isCounted = onHand || supply === 'counted'
  if (isCounted && count === 0) return []
  const each = { price: onHand ? 0 : price, ...(isCounted && { count }) }
  if (defects.length === 0) return [{ id, lengthMm, ...each }]
  // The pieces of a board that is on hand are free one by one. Of one that is still to be bought only
  // the longest counts: the others can be had no other way than with it.
  const clear = clearLengths(row).map(({ fromMm, toMm }) => toMm - fromMm)
  const longest = clear.indexOf(Math.max(...clear))
  return clear.flatMap((clearMm, i) => {
    if (!onHand && i !== longest) return []
    return [{ id: `${id}, clear length ${i + 1}`, lengthMm: clearMm, ...each }]
  })
}
