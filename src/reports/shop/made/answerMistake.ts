import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'
import type { CutListRow } from '../shopReport.ts'
import { findShim } from './findShim.ts'
import { findSmallerRows } from './findSmallerRows.ts'
import { findAbsorbing } from './followMeasuredPart.ts'
import type { MistakeAnswer } from './madeReport.ts'
import { rowSize, SAME_SIZE_MM, SIDE_INDEX, type Side, withSide } from './partSize.ts'
import { layOutBench } from './weighRemedy.ts'

/**
 * "I cut part B 6 mm short": what can take it up, whether a shim does, what the piece can still become,
 * or how it is trimmed when it is too large. `target` is a label of the cut list or some ids of one row's
 * parts. Without answers for a label that the cut list does not
 * have, a bought part, or a design that can't be built.
 */
export const answerMistake = (
  design: Design,
  target: string | readonly string[],
  side: Side,
  measuredMm: number,
): MistakeAnswer => {
  const bench = layOutBench(design)
  const row = bench?.report.shop.cutList.find((each) =>
    typeof target === 'string' ? each.label === target : each.partIds.includes(target[0] ?? ''),
  )
  const part = bench?.partById.get(row?.partIds[0] ?? '')
  if (bench === undefined || row === undefined || part === undefined || row.bought)
    return noAnswer(side)
  const offByMm = measuredMm - rowSize(row)[SIDE_INDEX[side]]
  if (Math.abs(offByMm) <= SAME_SIZE_MM) return { ...noAnswer(side), offByMm }
  const size = withSide(rowSize(row), side, { mm: measuredMm, hasGrain: row.grain !== 'none' })
  return {
    offByMm,
    side,
    absorb: findAbsorbing(bench, target, side, measuredMm),
    shim: findShim(design, part, side, -offByMm),
    canBecome:
      offByMm < 0
        ? findSmallerRows(bench.report.shop.cutList, { row, size }, new Set(bench.madeById.keys()))
        : [],
    trim: offByMm > 0 ? trimWords(row, side) : undefined,
  }
}

const noAnswer = (side: Side): MistakeAnswer => ({
  offByMm: 0,
  side,
  absorb: [],
  shim: undefined,
  canBecome: [],
  trim: undefined,
})

/** Nothing is taken off a sheet's or a foam board's faces. */
const trimWords = (row: CutListRow, side: Side): string | undefined => {
  if (side === 'thickness') {
    return materialById(row.material).family === 'wood'
      ? 'Plane it down to its thickness.'
      : undefined
  }
  return side === 'length'
    ? 'Cut it again to its length; a stop takes off a hair better than a line.'
    : 'Cut it again to its width, with the set-up that the others of this width are cut at.'
}
