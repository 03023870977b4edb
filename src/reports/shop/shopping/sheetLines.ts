import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'
import type { SheetStock } from '../../../solvers/cutting/sheets/sheetJob.ts'
import type { CuttingPlan, SheetGroup } from '../cutting/cuttingPlan.ts'
import { stockName, stockRowPath } from '../cutting/stockName.ts'
import { ESTIMATED_WASTE, isOnHand, piecesText, toCents } from './boardLines.ts'
import type { ShoppingKind, ShoppingLine } from './shoppingList.ts'

interface Bought {
  quantity: number
  readonly labels: Set<string>
  readonly offcutsMm: (readonly [number, number])[]
}

/** The sheets of one group: as planned, or estimated from the area. */
export const sheetLines = (
  design: Pick<Design, 'shop' | 'stock'>,
  group: SheetGroup,
  result: CuttingPlan['sheets'][number] | undefined,
): readonly ShoppingLine[] => {
  const bought = result?.kind === 'plan' ? asPlanned(design, group, result) : estimated(group)
  return [...bought].flatMap(([index, found]) => {
    const stock = group.job.stocks[index]
    return stock === undefined ? [] : [lineOf(design, group, stock, found)]
  })
}

const asPlanned = (
  { shop }: Pick<Design, 'shop'>,
  group: SheetGroup,
  { layouts }: Extract<CuttingPlan['sheets'][number], { kind: 'plan' }>,
): ReadonlyMap<number, Bought> => {
  const bought = new Map<number, Bought>()
  for (const { stock, count, pieces, offcuts } of layouts) {
    const found = bought.get(stock) ?? { quantity: 0, labels: new Set(), offcutsMm: [] }
    bought.set(stock, found)
    found.quantity += count
    for (const { part } of pieces) {
      const label = group.labels[part]
      if (label !== undefined) found.labels.add(label)
    }
    const kept = offcuts.filter((o) => isWorthKeeping(o, shop.keepOffcutMm))
    for (let i = 0; i < count; i += 1) {
      for (const o of kept) found.offcutsMm.push([Math.round(o.lengthMm), Math.round(o.widthMm)])
    }
  }
  return bought
}

/** Half as wide as it must be long: shop custom keeps 150 × 300 mm of sheet (from memory). */
const isWorthKeeping = (
  { lengthMm, widthMm }: { readonly lengthMm: number; readonly widthMm: number },
  keepMm: number,
): boolean =>
  Math.max(lengthMm, widthMm) >= Math.max(1, keepMm) &&
  Math.min(lengthMm, widthMm) >= Math.max(1, keepMm / 2)

/** Sheets by the least price for their area that take the largest part, until parts and waste are in. */
const estimated = ({ job, labels }: SheetGroup): ReadonlyMap<number, Bought> => {
  const area = job.parts.reduce((sum, p) => sum + p.lengthMm * p.widthMm * p.count, 0)
  const usable = (s: SheetStock) => (s.lengthMm - 2 * job.trimMm) * (s.widthMm - 2 * job.trimMm)
  const takesAll = (s: SheetStock) =>
    job.parts.every(
      (p) =>
        (p.lengthMm <= s.lengthMm - 2 * job.trimMm && p.widthMm <= s.widthMm - 2 * job.trimMm) ||
        (p.mayTurn &&
          p.widthMm <= s.lengthMm - 2 * job.trimMm &&
          p.lengthMm <= s.widthMm - 2 * job.trimMm),
    )
  const order = job.stocks
    .map((stock, index) => ({ stock, index }))
    .filter(({ stock }) => takesAll(stock))
    .sort((a, b) => a.stock.price / usable(a.stock) - b.stock.price / usable(b.stock))
  const bought = new Map<number, Bought>()
  let open = area * (1 + ESTIMATED_WASTE)
  for (const { stock, index } of order) {
    const wanted = Math.ceil(open / usable(stock) - 1e-9)
    const quantity = Math.min(wanted, stock.count ?? wanted)
    if (quantity <= 0) continue
    bought.set(index, { quantity, labels: new Set(labels), offcutsMm: [] })
    open -= quantity * usable(stock)
    if (open <= 0) break
  }
  return bought
}

const lineOf = (
  design: Pick<Design, 'stock'>,
  group: SheetGroup,
  stock: SheetStock,
  { quantity, labels, offcutsMm }: Bought,
): ShoppingLine => {
  const own = stockRowPath(stock.id)
  return {
    kind: kindOf(group.material),
    id: stock.id,
    name: stockName(design, stock.id) ?? group.materialName,
    detail: '',
    sizeMm: [stock.lengthMm, stock.widthMm, group.thicknessMm],
    quantity,
    unit: 'sheet',
    onHand: own !== undefined && isOnHand(design, own),
    priceEach: stock.price,
    price: toCents(quantity * stock.price),
    isDemoPrice: own === undefined,
    leftOver: piecesText(offcutsMm.length),
    leftOverMm: offcutsMm.sort((a, b) => b[0] * b[1] - a[0] * a[1]),
    labels: [...labels],
  }
}

const kindOf = (material: string): ShoppingKind => {
  const { family } = materialById(material)
  return family === 'insulation' ? 'insulation' : family === 'sheet' ? 'sheet' : 'covering'
}
