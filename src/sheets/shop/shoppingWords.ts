import type { ShoppingKind, ShoppingLine } from '../../reports/shop/shopping/shoppingList.ts'
import { formatLength, type LengthUnit } from '../../units/length.ts'
import { formatTrimmed } from '../../units/number.ts'

export const SHOPPING_KINDS: Readonly<Record<ShoppingKind, string>> = {
  lumber: 'Boards',
  sheet: 'Wood sheets',
  insulation: 'Insulation',
  covering: 'Roof and mesh',
  fastener: 'Fasteners',
  hardware: 'Hardware',
  adhesive: 'Glue and sealant',
  finish: 'Finish',
  frame: 'Frames and wax',
}

/** What one unit of a line is: its detail and its sizes. */
export const unitWords = (
  { detail, sizeMm }: Pick<ShoppingLine, 'detail' | 'sizeMm'>,
  unit: LengthUnit,
): string => {
  const size = sizesText(sizeMm, unit)
  return [detail, size].filter((t) => t !== '').join(', ')
}

/** What stays over: words, and pieces by their sizes. */
export const leftOverWords = (
  { leftOver, leftOverMm }: Pick<ShoppingLine, 'leftOver' | 'leftOverMm'>,
  unit: LengthUnit,
): string => {
  const pieces = new Map<string, number>()
  for (const sizeMm of leftOverMm) {
    const text = sizesText(sizeMm, unit)
    pieces.set(text, (pieces.get(text) ?? 0) + 1)
  }
  const listed = [...pieces].map(([text, count]) => (count === 1 ? text : `${count} × ${text}`))
  return [leftOver, ...listed].filter((t) => t !== '').join(', ')
}

export const quantityWords = ({ quantity }: Pick<ShoppingLine, 'quantity'>): string =>
  formatTrimmed(quantity, 2)

const sizesText = (sizeMm: readonly number[], unit: LengthUnit): string =>
  sizeMm.length === 0 ? '' : `${sizeMm.map((mm) => formatLength(mm, unit)).join(' × ')} ${unit}`
