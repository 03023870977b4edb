import { materialById } from '../../../../src/catalog/materials.ts'
import { DEFAULT_DESIGN, DEFAULT_LUMBER, DEFAULT_SHEET } from '../../../../src/design/defaults.ts'
import type { Design, LumberStockDesign, SheetStockDesign } from '../../../../src/design/schema.ts'
import type { CutListRow } from '../../../../src/reports/shop/shopReport.ts'

/** A cut list row of one plain part of spruce, with whatever the test is about. */
export const cutRow = (row: Partial<CutListRow>): CutListRow => {
  const { label = 'A', material = 'spruce', count = 1 } = row
  return {
    label,
    name: 'Rail',
    material,
    materialName: materialById(material).name,
    lengthMm: 500,
    widthMm: 60,
    thicknessMm: 28,
    count,
    grain: 'length',
    hand: 'none',
    massKgEach: 1,
    operations: [],
    groups: ['front-wall'],
    partIds: Array.from({ length: count }, (_, i) => `${label}-${i}`),
    bought: false,
    stock: undefined,
    ...row,
  }
}

interface Shop {
  readonly shop?: Partial<Design['shop']>
  readonly lumber?: readonly Partial<LumberStockDesign>[]
  readonly sheets?: readonly Partial<SheetStockDesign>[]
  readonly made?: readonly string[]
}

/** The default design with another workshop and stock. */
export const inShop = ({ shop, lumber = [], sheets = [], made = [] }: Shop): Design => ({
  ...DEFAULT_DESIGN,
  shop: { ...DEFAULT_DESIGN.shop, ...shop },
  stock: {
    lumber: lumber.map((row) => ({ ...DEFAULT_LUMBER, ...row })),
    sheets: sheets.map((row) => ({ ...DEFAULT_SHEET, ...row })),
    goods: [],
  },
  made: made.map((partId) => ({ partId, lengthMm: 100, widthMm: 100, thicknessMm: 10 })),
})
