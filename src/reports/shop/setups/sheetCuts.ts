import { materialById } from '../../../catalog/materials.ts'
import type { CutListRow } from '../shopReport.ts'
import { guidePlace } from './boardCuts.ts'
import { type Cut, type CutStock, lengthSetting, type Tool } from './cut.ts'
import type { SetUpKind } from './setUpReport.ts'
import type { Shop } from './shop.ts'
import { KNIFE, SCISSORS, SNIPS, toolFor } from './toolProfile.ts'

/**
 * Both sides of a part that comes out of a sheet, a foam board, metal or cloth; one cut when the sides
 * are equal. Loose filling is not cut.
 */
export const sheetCuts = (row: CutListRow, shop: Shop): readonly Cut[] => {
  const { materialName, thicknessMm } = row
  const stock: CutStock = { materialName, thicknessMm, widthMm: undefined }
  const along = sideCut(row, row.lengthMm, stock, shop)
  if (along === undefined) return []
  const across = row.lengthMm === row.widthMm ? undefined : sideCut(row, row.widthMm, stock, shop)
  return across === undefined ? [along] : [along, across]
}

const sideCut = (row: CutListRow, mm: number, stock: CutStock, shop: Shop): Cut | undefined => {
  const means = meansFor(row, mm, shop)
  if (means === undefined) return undefined
  const { kind, tool } = means
  return { kind, tool, setting: lengthSetting(mm), further: guidePlace(tool, mm, shop), stock, row }
}

const meansFor = (
  { material }: CutListRow,
  mm: number,
  shop: Shop,
): { readonly kind: SetUpKind; readonly tool: Tool } | undefined => {
  const { family, form, surface } = materialById(material)
  switch (family) {
    case 'wood':
    case 'sheet':
      // The fence serves what it reaches; the guide breaks down what is larger.
      return shop.tools === 'table-saw' && mm <= shop.ripLimitMm
        ? { kind: 'rip', tool: toolFor(shop.tools, 'rip') }
        : { kind: 'break-down', tool: toolFor(shop.tools, 'break-down') }
    case 'insulation':
      return form === 'loose' ? undefined : { kind: 'knife', tool: KNIFE }
    case 'covering':
    case 'metal':
      return surface === 'metal' ? { kind: 'snips', tool: SNIPS } : { kind: 'knife', tool: KNIFE }
    case 'textile':
      return { kind: 'knife', tool: SCISSORS }
    case 'wax':
      return { kind: 'knife', tool: KNIFE }
  }
}
