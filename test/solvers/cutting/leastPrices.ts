import type { LumberJob } from '../../../src/solvers/cutting/lumber/lumberJob.ts'
import type { SheetJob } from '../../../src/solvers/cutting/sheets/sheetJob.ts'

/** Sums that differ by rounding alone are alike. */
const EVEN_MM = 1e-6

/**
 * The least price at which a few parts (10 at most) can be cut from boards, by trying every way to share
 * them out; infinite where the boards do not hold them.
 */
export const leastLumberPrice = (job: LumberJob): number => {
  const pieces = job.parts.flatMap(({ lengthMm, count }) => Array<number>(count).fill(lengthMm))
  const needed = subsetsOf(pieces).map((subset) =>
    subset.reduce((sum, lengthMm) => sum + lengthMm + job.kerfMm, job.trimMm - job.kerfMm),
  )
  return shareOut(pieces.length, job.stocks, (set, stock) => {
    const board = job.stocks[stock]?.lengthMm ?? 0
    return (needed[set] ?? Infinity) <= board + EVEN_MM
  })
}

/** The same for sheets with any number of stages: 7 parts at most. */
export const leastSheetPrice = (job: SheetJob): number => {
  const pieces = job.parts.flatMap((part) => Array<typeof part>(part.count).fill(part))
  const boxes = smallestBoxes(job, pieces)
  return shareOut(pieces.length, job.stocks, (set, stock) => {
    const { lengthMm = 0, widthMm = 0 } = job.stocks[stock] ?? {}
    const length = lengthMm - 2 * job.trimMm + EVEN_MM
    const width = widthMm - 2 * job.trimMm + EVEN_MM
    return (boxes[set] ?? []).some((box) => box.length <= length && box.width <= width)
  })
}

/** All subsets, each at the number whose bits name its members. */
const subsetsOf = <Entry>(entries: readonly Entry[]): readonly (readonly Entry[])[] =>
  Array.from({ length: 1 << entries.length }, (_, set) =>
    entries.filter((_entry, i) => (set >> i) & 1),
  )

interface Priced {
  readonly price: number
  readonly count?: number
}

/** The least price of stocks that take all pieces, where `fits` says what one of a stock takes. */
const shareOut = (
  pieces: number,
  stocks: readonly Priced[],
  fits: (set: number, stock: number) => boolean,
): number => {
  const known = new Map<string, number>()
  const priceOf = (set: number, used: readonly number[]): number => {
    if (set === 0) return 0
    const key = `${set}:${used.join()}`
    const before = known.get(key)
    if (before !== undefined) return before
    let least = Infinity
    const lowest = set & -set
    // Each set of pieces with the lowest one that is left, on each stock that there still is.
    for (let own = set; own > 0; own = (own - 1) & set) {
      if ((own & lowest) === 0) continue
      stocks.forEach(({ price, count }, stock) => {
        const left = count === undefined ? Infinity : count - (used[stock] ?? 0)
        if (left <= 0 || !fits(own, stock)) return
        const after = count === undefined ? used : used.with(stock, (used[stock] ?? 0) + 1)
        least = Math.min(least, price + priceOf(set & ~own, after))
      })
    }
    known.set(key, least)
    return least
  }
  return priceOf(
    (1 << pieces) - 1,
    stocks.map(() => 0),
  )
}

interface Box {
  readonly length: number
  readonly width: number
}

type Piece = SheetJob['parts'][number]

/**
 * For each set of pieces the smallest rectangles that cuts from edge to edge divide into them: two
 * rectangles of two smaller sets side by side, either way, with a kerf between.
 */
const smallestBoxes = (
  { kerfMm }: SheetJob,
  pieces: readonly Piece[],
): readonly (readonly Box[])[] => {
  const boxes: (readonly Box[])[] = [[]]
  for (let set = 1; set < 1 << pieces.length; set++) {
    const found: Box[] = []
    const single = pieces.findIndex((_, i) => set === 1 << i)
    const piece = pieces[single]
    if (piece !== undefined) {
      found.push({ length: piece.lengthMm, width: piece.widthMm })
      if (piece.mayTurn) found.push({ length: piece.widthMm, width: piece.lengthMm })
    }
    for (let part = (set - 1) & set; part > set - part; part = (part - 1) & set) {
      for (const a of boxes[part] ?? []) {
        for (const b of boxes[set - part] ?? []) {
          found.push(
            { length: a.length + kerfMm + b.length, width: Math.max(a.width, b.width) },
            { length: Math.max(a.length, b.length), width: a.width + kerfMm + b.width },
          )
        }
      }
    }
    boxes.push(withoutLarger(found))
  }
  return boxes
}

const withoutLarger = (boxes: readonly Box[]): readonly Box[] => {
  const kept: Box[] = []
  for (const box of boxes.toSorted((a, b) => a.length - b.length || a.width - b.width)) {
    if (box.width < (kept.at(-1)?.width ?? Infinity)) kept.push(box)
  }
  return kept
}
