import type { CutNode } from '../../solvers/cutting/sheets/sheetJob.ts'

/** One cut of a sheet in the order of work. */
export interface OrderedCut {
  /** Counted from 1. */
  readonly number: number
  readonly along: 'length' | 'width'
  readonly atMm: number
  /** From the edge of the piece that is being divided to the cut: what a fence or guide is set to. */
  readonly fromEdgeMm: number
  readonly isCarry: boolean
  /** Where it runs, along the saw's way, from and to, from the sheet's corner. */
  readonly fromMm: number
  readonly toMm: number
}

/** The cuts of a sheet, each before those of the pieces that it makes. */
export const cutOrder = (root: CutNode): readonly OrderedCut[] => {
  const cuts: OrderedCut[] = []
  // The first cuts of the whole sheet are done before any of its pieces is taken to the bench.
  const waiting: CutNode[] = [root]
  for (let node = waiting.shift(); node !== undefined; node = waiting.shift()) {
    if (node.kind !== 'cut') continue
    const { rect, along, atMm, isCarry } = node
    const isRip = along === 'length'
    cuts.push({
      number: cuts.length + 1,
      along,
      atMm,
      fromEdgeMm: atMm - (isRip ? rect.yMm : rect.xMm),
      isCarry,
      fromMm: isRip ? rect.xMm : rect.yMm,
      toMm: isRip ? rect.xMm + rect.lengthMm : rect.yMm + rect.widthMm,
    })
    waiting.push(node.first, node.second)
  }
  return cuts
}
