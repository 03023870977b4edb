import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'
import type { SheetJob, SheetPart, SheetStock } from '../../../solvers/cutting/sheets/sheetJob.ts'
import type { CuttingProblem, SheetGroup } from './cuttingPlan.ts'
import { describeSheetProblems, type LackingSheetRow } from './sheetProblems.ts'
import { sheetsFor } from './sheetsFor.ts'
import type { WantedRow } from './wantedRows.ts'

/**
 * The rows that are cut from sheets, by material and thickness, in the order of the cut list. Rows that
 * no sheet takes are told as problems.
 */
export const buildSheetGroups = (
  design: Design,
  rows: readonly WantedRow[],
): { readonly groups: readonly SheetGroup[]; readonly problems: readonly CuttingProblem[] } => {
  const byKey = new Map<string, WantedRow[]>()
  for (const wanted of rows) {
    const key = `${wanted.row.material} ${wanted.row.thicknessMm}`
    const same = byKey.get(key)
    if (same === undefined) byKey.set(key, [wanted])
    else same.push(wanted)
  }
  const lacking: LackingSheetRow[] = []
  const groups = [...byKey].flatMap(([key, wanted]): SheetGroup[] => {
    const [first] = wanted
    if (first === undefined) return []
    const { material, materialName, thicknessMm } = first.row
    const stocks = sheetsFor(design, material, thicknessMm)
    const manner = mannerOf(design, material)
    const fitting = wanted.flatMap(({ row, parts }) => {
      const part = partOf(row, parts)
      const lack = lackOf(part, stocks, manner.trimMm)
      if (lack !== undefined) lacking.push({ row, part, stocks, trimMm: manner.trimMm, lack })
      return lack === undefined ? [{ row, part }] : []
    })
    if (fitting.length === 0) return []
    const job = { stocks, ...manner, parts: fitting.map(({ part }) => part) }
    const labels = fitting.map(({ row }) => row.label)
    const names = fitting.map(({ row }) => row.name)
    return [{ key, material, materialName, thicknessMm, job, labels, names }]
  })
  return { groups, problems: describeSheetProblems(design, lacking) }
}

/** Grain along the sheet's length, or either way round. */
const partOf = (row: WantedRow['row'], count: number): SheetPart => {
  const isAcross = row.grain === 'width'
  return {
    id: row.label,
    lengthMm: isAcross ? row.widthMm : row.lengthMm,
    widthMm: isAcross ? row.lengthMm : row.widthMm,
    count,
    mayTurn: row.grain === 'none',
  }
}

const STAGES = { two: 2, three: 3, any: 'any' } as const

/** Metal, membranes and cloth are cut with shears or a knife, which make no dust. */
const CUT_WITHOUT_SAW: readonly string[] = ['covering', 'metal', 'textile']

/** How a material is cut. Only wood-based sheets have edges that need trimming. */
const mannerOf = (
  { shop }: Design,
  material: string,
): Pick<SheetJob, 'kerfMm' | 'trimMm' | 'stages' | 'carry'> => {
  const { family } = materialById(material)
  const carry = { lengthMm: shop.carryLengthMm, widthMm: shop.carryWidthMm }
  return {
    kerfMm: CUT_WITHOUT_SAW.includes(family) ? 0 : shop.kerfMm,
    trimMm: family === 'sheet' ? shop.sheetTrimMm : 0,
    stages: STAGES[shop.sheetStages],
    ...(shop.cutToCarry && { carry }),
  }
}

const lackOf = (
  part: SheetPart,
  stocks: readonly SheetStock[],
  trimMm: number,
): LackingSheetRow['lack'] | undefined => {
  if (stocks.length === 0) return 'no-stock'
  return stocks.some((stock) => fits(part, stock, trimMm)) ? undefined : 'too-large'
}

const fits = (part: SheetPart, stock: SheetStock, trimMm: number): boolean => {
  const [lengthMm, widthMm] = [stock.lengthMm - 2 * trimMm, stock.widthMm - 2 * trimMm]
  return (
    (part.lengthMm <= lengthMm && part.widthMm <= widthMm) ||
    (part.mayTurn && part.widthMm <= lengthMm && part.lengthMm <= widthMm)
  )
}
