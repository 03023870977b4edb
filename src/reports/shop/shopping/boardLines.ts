import type { Design } from '../../../design/schema.ts'
import type { LumberStock } from '../../../solvers/cutting/lumber/lumberJob.ts'
import type { CuttingPlan, LumberGroup } from '../cutting/cuttingPlan.ts'
import { stockName, stockRowPath } from '../cutting/stockName.ts'
import type { ShoppingLine } from './shoppingList.ts'

/** How much more than the parts alone is bought while no plan is there (common practice: 10 to 20 %). */
export const ESTIMATED_WASTE = 0.15

/** So many boards of one length, and what is known of them. */
interface Bought {
  quantity: number
  readonly labels: Set<string>
  readonly offcutsMm: number[]
}

/** The boards of one group: as planned, or estimated from the total length. */
export const boardLines = (
  design: Pick<Design, 'shop' | 'stock'>,
  group: LumberGroup,
  result: CuttingPlan['lumber'][number] | undefined,
): readonly ShoppingLine[] => {
  const bought = result?.kind === 'plan' ? asPlanned(design, group, result) : estimated(group)
  const lines = new Map<string, ShoppingLine>()
  bought.forEach((found, index) => {
    const stock = group.job.stocks[index]
    if (stock === undefined) return
    const line = lineOf(design, group, stock, found)
    const known = lines.get(line.id)
    lines.set(line.id, known === undefined ? line : oneBoard(known, line))
  })
  return [...lines.values()]
}

const asPlanned = (
  { shop }: Pick<Design, 'shop'>,
  group: LumberGroup,
  { patterns }: Extract<CuttingPlan['lumber'][number], { kind: 'plan' }>,
): ReadonlyMap<number, Bought> => {
  const bought = new Map<number, Bought>()
  for (const { stock, count, pieces, offcutMm } of patterns) {
    const found = bought.get(stock) ?? { quantity: 0, labels: new Set(), offcutsMm: [] }
    bought.set(stock, found)
    found.quantity += count
    for (const { part } of pieces) {
      const label = group.blanks[part]?.label
      if (label !== undefined) found.labels.add(label)
    }
    if (offcutMm >= Math.max(shop.keepOffcutMm, 1)) {
      for (let i = 0; i < count; i += 1) found.offcutsMm.push(Math.round(offcutMm))
    }
  }
  return bought
}

/** Boards by the least price for their length, those on hand first, until the parts and waste are in. */
const estimated = ({ job, blanks }: LumberGroup): ReadonlyMap<number, Bought> => {
  const longest = Math.max(0, ...job.parts.map((p) => p.lengthMm))
  const net = job.parts.reduce((sum, p) => sum + (p.lengthMm + job.kerfMm) * p.count, 0)
  const usable = (s: LumberStock) => s.lengthMm - job.trimMm
  const order = job.stocks
    .map((stock, index) => ({ stock, index }))
    .filter(({ stock }) => usable(stock) >= longest - 1e-6)
    .sort((a, b) => a.stock.price / usable(a.stock) - b.stock.price / usable(b.stock))
  const labels = new Set(blanks.map((b) => b.label))
  const bought = new Map<number, Bought>()
  let open = net * (1 + ESTIMATED_WASTE)
  for (const { stock, index } of order) {
    const wanted = Math.ceil(open / usable(stock) - 1e-9)
    const quantity = Math.min(wanted, stock.count ?? wanted)
    if (quantity <= 0) continue
    bought.set(index, { quantity, labels, offcutsMm: [] })
    open -= quantity * usable(stock)
    if (open <= 0) break
  }
  return bought
}

const lineOf = (
  design: Pick<Design, 'stock'>,
  group: LumberGroup,
  stock: LumberStock,
  { quantity, labels, offcutsMm }: Bought,
): ShoppingLine => {
  const own = stockRowPath(stock.id)
  const onHand = own !== undefined && isOnHand(design, own)
  const name = stockName(design, stock.id)?.replace(/, clear length \d+$/, '')
  return {
    kind: 'lumber',
    id: own ?? stock.id,
    name: name ?? `${group.materialName}, ${group.section.replace(/ x /g, ' × ')}`,
    detail: '',
    sizeMm: [stock.lengthMm, group.widthMm, group.thicknessMm],
    quantity,
    unit: 'board',
    onHand,
    priceEach: stock.price,
    price: toCents(quantity * stock.price),
    isDemoPrice: own === undefined,
    leftOver: piecesText(offcutsMm.length),
    leftOverMm: offcutsMm.sort((a, b) => b - a).map((mm) => [mm]),
    labels: [...labels],
  }
}

/** Clear lengths between bad places are one board: as many as the most used of them, and all they leave. */
const oneBoard = (a: ShoppingLine, b: ShoppingLine): ShoppingLine => {
  const quantity = Math.max(a.quantity, b.quantity)
  const leftOverMm = [...a.leftOverMm, ...b.leftOverMm]
  return {
    ...a,
    quantity,
    price: toCents(quantity * a.priceEach),
    leftOverMm,
    leftOver: piecesText(leftOverMm.length),
    labels: [...new Set([...a.labels, ...b.labels])],
  }
}

/** Whether a row of the design's stock, by its path, is there already. */
export const isOnHand = ({ stock }: Pick<Design, 'stock'>, path: string): boolean => {
  const [, list, number] = path.split('.')
  return (list === 'lumber' ? stock.lumber : stock.sheets)[Number(number)]?.onHand ?? false
}

export const piecesText = (count: number): string =>
  count === 0 ? '' : count === 1 ? '1 piece' : `${count} pieces`

export const toCents = (price: number): number => Math.round(price * 100) / 100
