import type { Design } from '../../../design/schema.ts'
import type { CuttingJobs, CuttingPlan } from '../cutting/cuttingPlan.ts'
import type { FastenerReport } from '../fasteners/fastenerReport.ts'
import type { CutListRow } from '../shopReport.ts'
import { boardLines, toCents } from './boardLines.ts'
import { fillLines } from './fillLines.ts'
import { adhesiveLines, fastenerLines, finishLines, hardwareLines } from './goodsLines.ts'
import { sheetLines } from './sheetLines.ts'
import type { ShoppingKind, ShoppingLine, ShoppingList } from './shoppingList.ts'

/**
 * Everything to buy for all hives that are built at once, with its price, and what dominates the cost.
 * Without a plan for these very jobs boards and sheets are estimated with some waste, and `isFinal` is
 * false. Goods are counted for all hives before they are rounded up to boxes. Linear in the lines.
 */
export const computeShopping = (
  design: Pick<Design, 'shop' | 'stock'>,
  given: {
    readonly cutList: readonly CutListRow[]
    readonly cutting: CuttingJobs
    readonly plan: CuttingPlan | undefined
    readonly fasteners: FastenerReport
  },
): ShoppingList => {
  const { cutList, cutting, plan, fasteners } = given
  const { hives } = cutting
  const own = new Map(design.stock.goods.map(({ id, price }) => [id, price]))
  const ownPrice = (id: string) => own.get(id)
  const lines: readonly ShoppingLine[] = [
    ...cutting.lumber.flatMap((group, i) => boardLines(design, group, plan?.lumber[i])),
    ...cutting.sheets.flatMap((group, i) => sheetLines(design, group, plan?.sheets[i])),
    ...fillLines(cutList, hives, ownPrice),
    ...fastenerLines(fasteners.totals, hives, ownPrice),
    ...hardwareLines(fasteners.hardware, hives, ownPrice),
    ...adhesiveLines(fasteners.adhesives, hives, ownPrice),
    ...finishLines(fasteners.finish, hives, ownPrice),
  ].sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind))
  const total = toCents(lines.reduce((sum, { price }) => sum + price, 0))
  return {
    lines,
    hives,
    total,
    perHive: toCents(total / hives),
    currency: design.shop.currency,
    shares: sharesOf(lines, total),
    usesDemoPrices: lines.some(({ isDemoPrice }) => isDemoPrice),
    isFinal: plan?.isFinal ?? false,
  }
}

const ORDER: readonly ShoppingKind[] = [
  'lumber',
  'sheet',
  'insulation',
  'covering',
  'frame',
  'fastener',
  'hardware',
  'adhesive',
  'finish',
]

const sharesOf = (lines: readonly ShoppingLine[], total: number): ShoppingList['shares'] => {
  const byKind = new Map<ShoppingKind, number>()
  for (const { kind, price } of lines) byKind.set(kind, (byKind.get(kind) ?? 0) + price)
  return [...byKind]
    .map(([kind, price]) => ({
      kind,
      price: toCents(price),
      share: total > 0 ? price / total : 0,
    }))
    .sort((a, b) => b.price - a.price)
}
