import type { Missing } from './fillSheets.ts'
import type { PackedSheet } from './packedSheet.ts'
import type { SheetModel } from './sheetModel.ts'
import { listParts } from './sliceTree.ts'

/** The model with only these copies of its parts, and without the counted sheets that are used already. */
export function buildPartModel(
  model: SheetModel,
  missing: Missing,
  used: readonly PackedSheet[],
): SheetModel {
  const classes = model.classes.map((part) => ({ ...part, count: missing[part.id] ?? 0 }))
  const types = model.types.map((type) => ({
    ...type,
    count: type.count - used.filter((sheet) => sheet.type.stock === type.stock).length,
  }))
  const parts = classes.reduce((sum, part) => sum + part.count, 0)
  const area = classes.reduce((sum, part) => sum + part.count * part.area, 0)
  return { ...model, classes, types, parts, meanArea: area / Math.max(1, parts) }
}

/** How many copies of each class lie on these sheets. */
export function countParts(model: SheetModel, sheets: readonly PackedSheet[]): Missing {
  const counts: Missing = model.classes.map(() => 0)
  for (const sheet of sheets) {
    for (const cell of sheet.cells) {
      for (const part of cell.root ? listParts(cell.root) : []) {
        counts[part.id] = (counts[part.id] ?? 0) + 1
      }
    }
  }
  return counts
}
