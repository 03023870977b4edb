import type { CutNode } from './sheetJob.ts'

/**
 * How often the direction of the saw changes on the way to any piece, the first direction counted. Not
 * counted: cuts into pieces to be carried (each carried piece begins anew, so a carry cut that runs the
 * same way as the first stage belongs to it), and a last cut across that only trims a part out of its
 * strip. 0 where nothing is cut.
 */
export function countStages(root: CutNode): number {
  const count = (node: CutNode, along: 'length' | 'width' | undefined, stage: number): number => {
    if (node.kind !== 'cut') return stage
    if (node.isCarry) {
      return Math.max(count(node.first, undefined, 0), count(node.second, undefined, 0))
    }
    const isTrim = stage > 0 && node.first.kind === 'part' && node.second.kind === 'offcut'
    const own = node.along === along ? stage : stage + 1
    if (isTrim && node.along !== along) return stage
    return Math.max(count(node.first, node.along, own), count(node.second, node.along, own))
  }
  return count(root, undefined, 0)
}
