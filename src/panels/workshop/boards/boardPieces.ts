import type { Blank } from '../../../reports/shop/cutting/cuttingPlan.ts'
import type { BarPattern, LumberJob } from '../../../solvers/cutting/lumber/lumberJob.ts'

/** Something on a board, in shares of the longest board of its group, from the left end. */
export interface BoardMark {
  readonly kind: 'piece' | 'kerf' | 'trim' | 'kept' | 'waste'
  readonly from: number
  readonly length: number
  readonly lengthMm: number
  /** Of a piece: what it becomes. */
  readonly blank: Blank | undefined
}

/** A board as it is drawn. */
export interface BoardDrawing {
  /** Its length as a share of the longest board of the group. */
  readonly length: number
  readonly lengthMm: number
  readonly marks: readonly BoardMark[]
}

interface DrawingContext {
  readonly job: LumberJob
  readonly blanks: readonly Blank[]
  /** What is at least this long is kept. */
  readonly keepMm: number
  /** The length that fills the width of the sheet. */
  readonly fullMm: number
}

/** What stands on the boards of a pattern, from the left: trim, pieces with the saw cuts between, rest. */
export const drawBoard = (pattern: BarPattern, context: DrawingContext): BoardDrawing => {
  const { job, blanks, keepMm, fullMm } = context
  const stockMm = job.stocks[pattern.stock]?.lengthMm ?? 0
  const marks: BoardMark[] = []
  const add = (kind: BoardMark['kind'], fromMm: number, lengthMm: number, blank?: Blank) => {
    if (lengthMm <= 0.005) return
    marks.push({ kind, from: fromMm / fullMm, length: lengthMm / fullMm, lengthMm, blank })
  }
  const pieces = [...pattern.pieces].sort((a, b) => a.fromMm - b.fromMm)
  let at = 0
  for (const [i, piece] of pieces.entries()) {
    // What lies before the first piece is trimmed off; between pieces lies dust, or a bad place.
    const gap = piece.fromMm - at
    add(i > 0 && gap <= job.kerfMm + 0.01 ? 'kerf' : i === 0 ? 'trim' : 'waste', at, gap)
    add('piece', piece.fromMm, piece.lengthMm, blanks[piece.part])
    at = piece.fromMm + piece.lengthMm
  }
  const restMm = stockMm - at
  const endMm = Math.min(job.trimMm / 2, restMm)
  const cutMm = Math.min(job.kerfMm, Math.max(0, restMm - endMm - pattern.offcutMm))
  add('kerf', at, cutMm)
  add(pattern.offcutMm >= keepMm ? 'kept' : 'waste', at + cutMm, pattern.offcutMm)
  add('trim', stockMm - endMm, endMm)
  return { length: stockMm / fullMm, lengthMm: stockMm, marks }
}

/** Pieces of one kind on a board. */
export interface PieceCount {
  readonly part: number
  readonly count: number
  readonly lengthMm: number
  readonly blank: Blank | undefined
}

/** What is on a board, alike pieces together, in the order in which they are cut. */
export const countPieces = (
  pattern: BarPattern,
  blanks: readonly Blank[],
): readonly PieceCount[] => {
  const counts = new Map<number, PieceCount>()
  for (const { part, lengthMm } of pattern.pieces) {
    const count = (counts.get(part)?.count ?? 0) + 1
    counts.set(part, { part, count, lengthMm, blank: blanks[part] })
  }
  return [...counts.values()]
}

/** How many parts one length of board becomes, in words; empty for one. */
export const stripWords = ({ across, layers }: Pick<Blank, 'across' | 'layers'>): string => {
  const words = [
    ...(across > 1 ? [`${across} strips side by side`] : []),
    ...(layers > 1 ? [`${layers} from the thickness`] : []),
  ]
  return words.join(', ')
}
