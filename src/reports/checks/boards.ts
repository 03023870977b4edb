import { materialById } from '../../catalog/materials.ts'
import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { CutListRow, ShopReport } from '../shop/computeShop.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { fewerFrames } from './fewerFrames.ts'

interface Context {
  readonly design: Design
  readonly hive: Pick<Hive, 'dimensions'>
  readonly shop: Pick<ShopReport, 'cutList' | 'setUps'>
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

const checkRips = (context: Context, sawn: readonly CutListRow[]): readonly Check[] => {
  switch (context.design.shop.tools) {
    case 'table-saw':
      return checkWidestRip(context.design, sawn)
    case 'circular-saw':
      return [
        assess({
          ...ripsByHand(context),
          id: 'narrow-strips',
          title: 'Kinds of part too narrow or thin for a hand-held saw',
          why: 'Have these ripped where you buy the wood, or choose sizes that are sold.',
        }),
      ]
    case 'hand-tools':
      return [
        assess({
          ...ripsByHand(context),
          id: 'rips-without-saw',
          title: 'Kinds of part to rip by hand',
          why: 'Buy these planed to width, have them ripped, or choose sizes that are sold.',
        }),
      ]
  }
}

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

/** Rows that the builder's saw can't bring to width or thickness. Many people buy their frames. */
const ripsByHand = ({ shop }: Context) => {
  const labels = new Set(
    shop.setUps.setUps
      .filter(({ kind, problem }) => problem !== undefined && (kind === 'rip' || kind === 'resaw'))
      .flatMap(({ rows }) => rows.map(({ label }) => label)),
  )
  const rows = shop.cutList.filter(
    ({ label, groups }) => labels.has(label) && !groups.includes('frames'),
  )
  return {
    quantity: 'count',
    measured: rows.length,
    band: { high: 0 },
    source: 'common practice; frames not counted',
    partIds: rows.flatMap(({ partIds }) => partIds.slice(0, 1)).slice(0, 4),
  } as const
}
