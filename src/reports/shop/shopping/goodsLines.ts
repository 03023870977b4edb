import { ADHESIVES, type AdhesiveRow } from '../../../catalog/adhesives.ts'
import { packQuantities, ROOF_SCREW_FINISH, SCREWS } from '../../../catalog/fastenerSizes.ts'
import { FINISHES } from '../../../catalog/finishes.ts'
import { fastenerPrice, goodsPrice } from '../../../catalog/goodsPrices.ts'
import type { FastenerReport, FastenerSize } from '../fasteners/fastenerReport.ts'
import { toCents } from './boardLines.ts'
import type { ShoppingLine } from './shoppingList.ts'

/** The design's own price of an article, if it has one. */
export type OwnPrice = (id: string) => number | undefined

/** A line of the list without what follows from quantity and price. */
type Article = Pick<ShoppingLine, 'kind' | 'id' | 'name' | 'quantity' | 'unit'> &
  Partial<Pick<ShoppingLine, 'detail' | 'sizeMm' | 'leftOver' | 'labels'>>

/** Completes a line: the design's own price, or the invented one. */
export const priced = (article: Article, demoPrice: number, ownPrice: OwnPrice): ShoppingLine => {
  const own = ownPrice(article.id)
  const priceEach = own ?? demoPrice
  return {
    detail: '',
    sizeMm: [],
    leftOver: '',
    labels: [],
    ...article,
    onHand: false,
    priceEach,
    price: toCents(article.quantity * priceEach),
    isDemoPrice: own === undefined,
    leftOverMm: [],
  }
}

/** Screws and nails in boxes, for so many hives. Spares are reckoned on all of them together. */
export const fastenerLines = (
  totals: FastenerReport['totals'],
  hives: number,
  ownPrice: OwnPrice,
): readonly ShoppingLine[] =>
  totals.map(({ fastener, count }) => {
    const need = withSpares(count * hives)
    const { pack, box } = packQuantities(fastener.kind, fastener.diameterMm)
    // A few come in a small pack; more than one of those is dearer than a box.
    const [word, each] = need <= pack ? (['pack', pack] as const) : (['box', box] as const)
    const quantity = Math.ceil(need / each)
    const words = wordsOf(fastener)
    return priced(
      {
        kind: fastener.kind === 'peg' ? 'frame' : 'fastener',
        id: `${word} of ${words} ${fastener.diameterMm}x${fastener.lengthMm}`,
        name: `${capitalise(words)} ${fastener.diameterMm} × ${fastener.lengthMm}`,
        detail: detailOf(fastener, `${word} of ${each}`),
        quantity,
        unit: 'box',
        leftOver: `${quantity * each - need} ${words}`,
      },
      fastenerPrice(fastener.kind, fastener, each),
      ownPrice,
    )
  })

/** One in ten more, rounded up. */
const withSpares = (count: number): number => count + Math.ceil(count / 10 - 1e-9)

const wordsOf = ({ kind, finish, diameterMm }: FastenerSize): string => {
  switch (kind) {
    case 'screw':
      return finish === ROOF_SCREW_FINISH ? 'roof screws' : 'screws'
    case 'nail':
      return diameterMm < 2 ? 'frame nails' : 'nails'
    case 'peg':
      return 'pegs'
    case 'staple':
      return 'staples'
  }
}

const detailOf = ({ kind, finish, diameterMm }: FastenerSize, pack: string): string => {
  const gauge = kind === 'screw' ? SCREWS.find((row) => row.diameterMm === diameterMm)?.gauge : ''
  return `${finish}${gauge ? `, near gauge ${gauge}` : ''}; ${pack}`
}

/** Fittings by the piece, pair, metre or square metre. */
export const hardwareLines = (
  hardware: FastenerReport['hardware'],
  hives: number,
  ownPrice: OwnPrice,
): readonly ShoppingLine[] =>
  hardware.map(({ id, name, count, unit, detail }) => {
    const all = count * hives
    const isHinge = id.startsWith('hinge-')
    const quantity = isHinge
      ? Math.ceil(all / 2)
      : unit === 'm2'
        ? Math.ceil(all * 10 - 1e-9) / 10
        : Math.ceil(all - 1e-9)
    return priced(
      {
        kind: 'hardware',
        id,
        name,
        detail,
        quantity,
        unit: isHinge ? 'pair' : unit,
        leftOver: isHinge && quantity * 2 > all ? '1 hinge' : '',
      },
      goodsPrice(id),
      ownPrice,
    )
  })

/** Glue, sealant and tape by what shops sell it in. */
export const adhesiveLines = (
  adhesives: FastenerReport['adhesives'],
  hives: number,
  ownPrice: OwnPrice,
): readonly ShoppingLine[] =>
  adhesives.flatMap(({ id, name, quantity: each, unit }) => {
    const row = Object.values(ADHESIVES).find((r: AdhesiveRow) => r.id === id)
    if (row === undefined) return []
    const need = each * hives
    const quantity = Math.ceil(need / row.packSize)
    const left = quantity * row.packSize - need
    return [
      priced(
        {
          kind: 'adhesive',
          id,
          name,
          detail: row.unit === 'm' ? '' : `${row.packSize} ${row.unit}`,
          sizeMm: row.unit === 'm' ? [row.packSize * 1000] : [],
          quantity,
          unit: row.packUnit,
          leftOver: unit === 'm' ? '' : `${Math.floor(left)} ${unit}`,
        },
        goodsPrice(id),
        ownPrice,
      ),
    ]
  })

/** The finish in tins. */
export const finishLines = (
  finish: FastenerReport['finish'],
  hives: number,
  ownPrice: OwnPrice,
): readonly ShoppingLine[] => {
  const row = FINISHES.find(({ id }) => id === finish?.id)
  if (finish === undefined || row === undefined) return []
  const need = finish.litres * hives
  const quantity = Math.ceil(need / row.tinL - 1e-9)
  return [
    priced(
      {
        kind: 'finish',
        id: row.id,
        name: row.name,
        detail: `${row.tinL} litres`,
        quantity,
        unit: 'tin',
        leftOver: `${Math.round((quantity * row.tinL - need) * 100) / 100} litres`,
      },
      goodsPrice(row.id),
      ownPrice,
    ),
  ]
}

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
