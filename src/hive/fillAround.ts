import { type Rect, rect, rectsOverlap, subtractRects } from '../geometry/rect.ts'

/** Pieces narrower than this are avoided where another way of cutting avoids them, mm. */
const LEAST_PIECE = 10

/**
 * The rectangles of insulation that fill a pocket round tunnel blocks. Cuts across at the blocks' edges,
 * or along them; where edges nearly in line would leave a sliver both ways, the pocket is parted between
 * the blocks first. Two blocks that stand at least 2 × `LEAST_PIECE` from each other and from the
 * pocket's edges, or touch these, never leave a sliver; a crowd of them may.
 */
export const fillAround = (pocket: Rect, blocks: readonly Rect[]): readonly Rect[] => {
  const inside = blocks.filter((b) => rectsOverlap(pocket, b))
  if (inside.length === 0) return [pocket]
  const across = subtractRects(pocket, inside)
  const along = subtractRects(turn(pocket), inside.map(turn)).map(turn)
  // Fewer and wider pieces are easier to cut and lose less at their edges.
  const wider = narrowest(across) >= narrowest(along) ? across : along
  if (narrowest(wider) >= LEAST_PIECE) return wider
  const halves = partBetween(pocket, inside)
  if (halves === undefined) return wider
  return halves.flatMap((half) => fillAround(half, inside))
}

const narrowest = (pieces: readonly Rect[]): number =>
  Math.min(...pieces.map((p) => Math.min(p.u1 - p.u0, p.v1 - p.v0)))

/** The same rectangle with its two directions exchanged. */
const turn = (r: Rect): Rect => rect(r.v0, r.v1, r.u0, r.u1)

/** The pocket in two, cut in the middle of the widest gap that runs right through between blocks. */
const partBetween = (pocket: Rect, blocks: readonly Rect[]): readonly Rect[] | undefined => {
  const alongU = widestGap(blocks)
  const alongV = widestGap(blocks.map(turn))
  if (alongU.width <= 0 && alongV.width <= 0) return undefined
  return alongU.width >= alongV.width
    ? [
        { ...pocket, u1: alongU.middle },
        { ...pocket, u0: alongU.middle },
      ]
    : [
        { ...pocket, v1: alongV.middle },
        { ...pocket, v0: alongV.middle },
      ]
}

/** The widest stretch of u between the first and the last block that no block covers. */
const widestGap = (blocks: readonly Rect[]) => {
  let best = { width: 0, middle: 0 }
  let reached = Number.POSITIVE_INFINITY
  for (const b of blocks.toSorted((p, q) => p.u0 - q.u0)) {
    const width = b.u0 - reached
    if (width > best.width) best = { width, middle: (b.u0 + reached) / 2 }
    reached = Number.isFinite(reached) ? Math.max(reached, b.u1) : b.u1
  }
  return best
}
