import { materialById } from '../../catalog/materials.ts'
import { STOCK_SECTIONS } from '../../catalog/stock.ts'
import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { CutListRow, ShopReport } from '../shop/computeShop.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { fewerFrames } from './fewerFrames.ts'

interface Context {
  readonly design: Design
  readonly hive: Pick<Hive, 'dimensions'>
  readonly shop: Pick<ShopReport, 'cutList'>
}

/** Whether the parts come out of the boards and through the saws that the builder has. */
export const checkBoards = (context: Context): readonly Check[] => {
  const sawn = context.shop.cutList.filter(
    ({ bought, material }) => !bought && ['wood', 'sheet'].includes(materialById(material).family),
  )
  return [...checkLongest(context, sawn), ...checkRips(context, sawn)]
}

const largest = (
  rows: readonly CutListRow[],
  measure: (row: CutListRow) => number,
): CutListRow | undefined =>
  rows.reduce<CutListRow | undefined>(
    (a, b) => (a !== undefined && measure(a) >= measure(b) ? a : b),
    undefined,
  )

const longSide = ({ lengthMm, widthMm }: CutListRow): number => Math.max(lengthMm, widthMm)
const shortSide = ({ lengthMm, widthMm }: CutListRow): number => Math.min(lengthMm, widthMm)

const checkLongest = ({ design, hive }: Context, sawn: readonly CutListRow[]): readonly Check[] => {
  const row = largest(sawn, longSide)
  if (row === undefined) return []
  const limit = design.shop.longestBoardMm
  return [
    assess({
      id: 'longest-part',
      title: 'Longest part',
      quantity: 'length',
      measured: longSide(row),
      band: { high: limit, fixAbove: limit },
      why: `No part can be longer than the boards you can get; the longest is: ${row.name}.`,
      source: 'your own limit',
      fix: () =>
        longSide(row) > hive.dimensions.cavityLength
          ? fewerFrames(design, hive.dimensions.cavityLength, longSide(row) - limit)
          : undefined,
      partIds: row.partIds.slice(0, 4),
    }),
  ]
}

const checkRips = ({ design }: Context, sawn: readonly CutListRow[]): readonly Check[] =>
  design.shop.tableSaw ? checkWidestRip(design, sawn) : checkRipsByHand(sawn)

const checkWidestRip = (
  { shop }: Pick<Design, 'shop'>,
  sawn: readonly CutListRow[],
): readonly Check[] => {
  const row = largest(sawn, shortSide)
  if (row === undefined) return []
  return [
    assess({
      id: 'widest-rip',
      title: 'Widest part to rip',
      quantity: 'length',
      measured: shortSide(row),
      band: { high: shop.ripLimitMm },
      why: `Wider than your fence reaches, it has to be cut with a guide; the widest is: ${row.name}.`,
      source: 'your own limit',
      partIds: row.partIds.slice(0, 4),
    }),
  ]
}

/** Without a table saw: wooden rows that no shop sells in this section. Many people buy their frames. */
const checkRipsByHand = (sawn: readonly CutListRow[]): readonly Check[] => {
  const ripped = sawn.filter(
    (row) =>
      materialById(row.material).family === 'wood' &&
      !row.groups.includes('frames') &&
      !isSold(row),
  )
  return [
    assess({
      id: 'rips-without-saw',
      title: 'Kinds of part to rip without a table saw',
      quantity: 'count',
      measured: ripped.length,
      band: { high: 0 },
      why: 'Have these ripped where you buy the wood, or choose sizes that are sold.',
      source: 'common practice; frames not counted',
      partIds: ripped.flatMap(({ partIds }) => partIds.slice(0, 1)).slice(0, 4),
    }),
  ]
}

/** A planed section is sold to about a millimetre. */
const SOLD_TO_MM = 1

const isSold = ({ thicknessMm, widthMm }: CutListRow): boolean => {
  const [thin, wide] = [Math.min(thicknessMm, widthMm), Math.max(thicknessMm, widthMm)]
  return STOCK_SECTIONS.some(
    (section) =>
      Math.abs(section.thicknessMm - thin) <= SOLD_TO_MM &&
      Math.abs(section.widthMm - wide) <= SOLD_TO_MM,
  )
}
