/** A board or sheet of one size, as a yard sells it. */
export interface StockItem {
  readonly kind: 'board' | 'sheet'
  readonly material: string
  readonly thicknessMm: number
  readonly widthMm: number
  readonly lengthMm: number
}

/** The id by which a price is found: `board spruce 20x94x2400`; the sizes in mm, smallest first. */
export function stockItemId(item: StockItem): string {
  const { kind, material, thicknessMm, widthMm, lengthMm } = item
  return `${kind} ${material} ${thicknessMm}x${widthMm}x${lengthMm}`
}

/** What `stockItemId` named; undefined for any other text. */
export function parseStockItemId(id: string): StockItem | undefined {
  const [, kind, material, thickness, width, length] = ITEM.exec(id) ?? []
  if (material === undefined || (kind !== 'board' && kind !== 'sheet')) return undefined
  return {
    kind,
    material,
    thicknessMm: Number(thickness),
    widthMm: Number(width),
    lengthMm: Number(length),
  }
}

/** Sizes nearer than this are the same stock: half of what a tape measure shows. */
const SAME_MM = 0.5

/** True when a row of the design's stock is of this material and size. */
export function isStockItem(row: Omit<StockItem, 'kind'>, item: Omit<StockItem, 'kind'>): boolean {
  return (
    row.material === item.material &&
    Math.abs(row.lengthMm - item.lengthMm) < SAME_MM &&
    Math.abs(row.widthMm - item.widthMm) < SAME_MM &&
    // Thin sheets differ by less than half a millimetre.
    Math.abs(row.thicknessMm - item.thicknessMm) < Math.min(SAME_MM, item.thicknessMm / 10)
  )
}

const ITEM = /^(\w+) ([\w-]+) ([\d.]+)x([\d.]+)x([\d.]+)$/
