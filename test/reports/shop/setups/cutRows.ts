import { materialById } from '../../../../src/catalog/materials.ts'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import type { Design } from '../../../../src/design/schema.ts'
import type { CuttingJobs } from '../../../../src/reports/shop/cutting/cuttingPlan.ts'
import type { CutListRow } from '../../../../src/reports/shop/shopReport.ts'

/** A row of one spruce part, 800 × 60 × 28 unless told otherwise. */
export const cutRow = (label: string, changes: Partial<CutListRow> = {}): CutListRow => {
  const material = changes.material ?? 'spruce'
  return {
    label,
    name: `Part ${label}`,
    material,
    materialName: materialById(material).name,
    lengthMm: 800,
    widthMm: 60,
    thicknessMm: 28,
    count: 1,
    grain: 'length',
    hand: 'none',
    massKgEach: 1,
    operations: [],
    groups: ['front-wall'],
    partIds: [label],
    bought: false,
    stock: undefined,
    ...changes,
  }
}

/** Jobs in which each row comes alone from a board of that thickness and width. */
export const jobsWith = (
  boards: readonly {
    readonly row: CutListRow
    readonly board: readonly [number, number]
    readonly layers?: number
  }[],
  hives = 1,
): CuttingJobs => ({
  hives,
  sheets: [],
  problems: [],
  lumber: boards.map(({ row, board: [thicknessMm, widthMm], layers = 1 }) => ({
    key: row.label,
    material: row.material,
    materialName: row.materialName,
    section: `${thicknessMm} x ${widthMm}`,
    thicknessMm,
    widthMm,
    job: { stocks: [], kerfMm: 3, trimMm: 0, parts: [] },
    blanks: [
      {
        label: row.label,
        name: row.name,
        lengthMm: row.lengthMm,
        widthMm: row.widthMm,
        thicknessMm: row.thicknessMm,
        parts: row.count * hives,
        across: 1,
        layers,
      },
    ],
  })),
})

/** The default design's workshop with these fields, and what is made. */
export const benchOf = (
  shop: Partial<Design['shop']> = {},
  made: Design['made'] = [],
): Pick<Design, 'shop' | 'made'> => ({ shop: { ...DEFAULT_DESIGN.shop, ...shop }, made })
