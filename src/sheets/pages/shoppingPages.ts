import type { ShoppingLine, ShoppingList } from '../../reports/shop/shopping/shoppingList.ts'
import type { LengthUnit } from '../../units/length.ts'
import { formatNumber, formatTrimmed } from '../../units/number.ts'
import { formatMoney } from '../shop/moneyWords.ts'
import { leftOverWords, quantityWords, SHOPPING_KINDS, unitWords } from '../shop/shoppingWords.ts'
import { type Block, heading, paragraph } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

/** What to buy, what it costs, and what is left over. */
export const shoppingPages = (content: SheetContent): readonly SheetPage[] => {
  const { report, units, paper, type } = content
  const list = report.shop.shopping
  if (list.lines.length === 0) return []
  const blocks: readonly Block[] = [
    heading(list.hives === 1 ? 'Shopping list' : `Shopping list for ${list.hives} hives`),
    paragraph(totalWords(list)),
    ...(list.usesDemoPrices ? [paragraph(DEMO_WORDS)] : []),
    ...(list.isFinal ? [] : [paragraph(ESTIMATE_WORDS)]),
    shoppingTable(list, units.length),
  ]
  return flowBlocks(blocks, paper.content, type).map((items) => ({
    title: 'Shopping list',
    scale: '',
    items,
  }))
}

const DEMO_WORDS =
  'Prices marked with a star are invented for the demonstration. Ask your own shop, and type its prices.'

const ESTIMATE_WORDS =
  'The boards and sheets were not planned yet when this was printed: their numbers are an estimate.'

const totalWords = ({ total, perHive, hives, currency, shares }: ShoppingList): string => {
  const largest = shares
    .slice(0, 3)
    .map(
      ({ kind, share }) =>
        `${SHOPPING_KINDS[kind].toLowerCase()} ${formatTrimmed(100 * share, 0)} %`,
    )
  const each = hives === 1 ? '' : `, ${formatMoney(perHive, currency)} for each hive`
  return `In all ${formatMoney(total, currency)}${each}. Most of it: ${largest.join(', ')}.`
}

const shoppingTable = (list: ShoppingList, unit: LengthUnit): Block => ({
  kind: 'table',
  columns: [
    { title: 'Buy', share: 18, anchor: 'end', weight: 'semibold' },
    { title: 'What', share: 84, weight: 'semibold' },
    { title: 'Size or pack', share: 58 },
    { title: 'Each', share: 26, anchor: 'end' },
    { title: 'Price', share: 28, anchor: 'end', weight: 'semibold' },
    { title: 'Left over', share: 62 },
  ],
  rows: [
    ...list.lines.map((line) => lineCells(line, unit)),
    ['', 'In all', '', '', formatMoney(list.total, list.currency), ''],
  ],
})

const lineCells = (line: ShoppingLine, unit: LengthUnit): readonly string[] => [
  line.onHand ? `(${quantityWords(line)})` : quantityWords(line),
  line.onHand ? `${line.name}, on hand` : line.name,
  unitWords(line, unit),
  line.onHand ? '' : `${formatNumber(line.priceEach, 2)}${line.isDemoPrice ? ' *' : ''}`,
  line.onHand ? '' : formatNumber(line.price, 2),
  leftOverWords(line, unit),
]
