import { buildCutTree } from './buildCutTree.ts'
import { countStages } from './countStages.ts'
import type { PackedSheet } from './packedSheet.ts'
import type { CutNode, SheetJob, SheetLayout, SheetPiece, SheetRect } from './sheetJob.ts'
import type { PartClass } from './sheetModel.ts'

/** The packed sheets as layouts to saw; sheets that are cut alike are one layout with a count. */
export function buildLayouts(
  job: SheetJob,
  sheets: readonly PackedSheet[],
): readonly SheetLayout[] {
  const takenById = new Map<number, number>()
  const takeCopy = (part: PartClass): number => {
    const taken = takenById.get(part.id) ?? 0
    takenById.set(part.id, taken + 1)
    return part.copies[taken] ?? 0
  }
  const layoutsByKey = new Map<string, SheetLayout>()
  for (const sheet of sheets) {
    const root = buildCutTree(job, sheet, takeCopy)
    const key = `${sheet.type.stock} ${describeCuts(root)}`
    const alike = layoutsByKey.get(key)
    layoutsByKey.set(
      key,
      alike ? { ...alike, count: alike.count + 1 } : buildLayout(sheet.type.stock, root),
    )
  }
  return [...layoutsByKey.values()].sort((a, b) => a.stock - b.stock || b.count - a.count)
}

function buildLayout(stock: number, root: CutNode): SheetLayout {
  const pieces: SheetPiece[] = []
  const offcuts: SheetRect[] = []
  const collect = (node: CutNode): void => {
    if (node.kind === 'part') pieces.push(node.piece)
    else if (node.kind === 'cut') {
      collect(node.first)
      collect(node.second)
    } else if (node.rect.lengthMm > 0 && node.rect.widthMm > 0) offcuts.push(node.rect)
  }
  collect(root)
  offcuts.sort((a, b) => b.lengthMm * b.widthMm - a.lengthMm * a.widthMm)
  return { stock, count: 1, root, pieces, offcuts, stages: countStages(root) }
}

function describeCuts(node: CutNode): string {
  if (node.kind === 'part') return `p${node.piece.part}${node.piece.turned ? 't' : ''}`
  if (node.kind === 'offcut') return 'o'
  const along = node.along === 'length' ? 'l' : 'w'
  return `${along}${node.atMm.toFixed(4)}(${describeCuts(node.first)},${describeCuts(node.second)})`
}
