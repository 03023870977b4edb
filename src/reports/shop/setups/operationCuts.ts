import { materialById } from '../../../catalog/materials.ts'
import type { Operation } from '../../../hive/part.ts'
import type { CutListRow } from '../shopReport.ts'
import { type Cut, lengthSetting } from './cut.ts'
import { NARROW_STRIP_MM } from './limits.ts'
import type { Shop } from './shop.ts'
import {
  DRILL,
  endBevelTool,
  FINE_SAW,
  HAND_PLANE,
  sheetNotchTool,
  toolFor,
} from './toolProfile.ts'

/** What is done to a part after it is sawn square to size, each kind once. */
export const operationCuts = (row: CutListRow, shop: Shop): readonly Cut[] => {
  if (row.operations.length === 0) return []
  const { materialName, thicknessMm, widthMm } = row
  const isBoard = materialById(row.material).family === 'wood'
  const stock = { materialName, thicknessMm, widthMm: isBoard ? widthMm : undefined }
  return row.operations.map((operation) => ({ ...operationCut(operation, row, shop), stock, row }))
}

const operationCut = (
  operation: Operation,
  row: CutListRow,
  { tools }: Shop,
): Omit<Cut, 'stock' | 'row'> => {
  const isWood = materialById(row.material).family === 'wood'
  switch (operation.kind) {
    case 'bevel':
      return {
        kind: 'bevel',
        tool: bevelTool(row, tools),
        setting: { kind: 'angle', deg: operation.angleDeg },
        further: [],
      }
    case 'taper':
      return {
        kind: 'taper',
        tool: isWood ? toolFor(tools, 'taper') : FINE_SAW,
        setting: lengthSetting(operation.to),
        further: [{ name: 'Low end', setting: lengthSetting(operation.from) }],
      }
    case 'groove':
      return {
        kind: 'groove',
        tool: toolFor(tools, 'groove'),
        setting: lengthSetting(operation.width),
        further: [
          { name: 'Depth', setting: lengthSetting(operation.depth) },
          // A groove runs along the middle of its bar, so the fence follows from both widths.
          {
            name: 'Edge to groove',
            setting: lengthSetting((row.widthMm - operation.width) / 2),
          },
        ],
      }
    case 'notch':
      return {
        kind: 'notch',
        tool: isWood ? toolFor(tools, 'notch') : sheetNotchTool(tools),
        setting: lengthSetting(operation.width),
        further: [{ name: 'Depth', setting: lengthSetting(operation.depth) }],
      }
    case 'slot':
      return {
        kind: 'slot',
        tool: toolFor(tools, 'slot'),
        setting: lengthSetting(operation.width),
        further: [{ name: 'Height', setting: lengthSetting(operation.height) }],
      }
    case 'holes':
      return {
        kind: 'drill',
        tool: DRILL,
        setting: { kind: 'diameter', mm: operation.diameter },
        further: [],
      }
  }
}

const bevelTool = (row: CutListRow, tools: Shop['tools']): Cut['tool'] => {
  if (row.groups.includes('stand')) return endBevelTool(tools)
  // A strip too narrow to carry a hand-held saw is planed.
  const isNarrow = row.widthMm < NARROW_STRIP_MM
  return tools === 'circular-saw' && isNarrow ? HAND_PLANE : toolFor(tools, 'bevel')
}
