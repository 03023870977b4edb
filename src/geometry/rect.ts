/** A rectangle in the plane of a panel, mm. */
export interface Rect {
  readonly u0: number
  readonly u1: number
  readonly v0: number
  readonly v1: number
}

export const rect = (u0: number, u1: number, v0: number, v1: number): Rect => ({ u0, u1, v0, v1 })

/** Area, mm². */
export const rectArea = (r: Rect): number => (r.u1 - r.u0) * (r.v1 - r.v0)

/** Whether two rectangles share an area. */
export const rectsOverlap = (a: Rect, b: Rect): boolean =>
  a.u0 < b.u1 && b.u0 < a.u1 && a.v0 < b.v1 && b.v0 < a.v1

/** The common part of two rectangles, if they share an area. */
export const intersectRects = (a: Rect, b: Rect): Rect | undefined =>
  rectsOverlap(a, b)
    ? rect(Math.max(a.u0, b.u0), Math.min(a.u1, b.u1), Math.max(a.v0, b.v0), Math.min(a.v1, b.v1))
    : undefined

/** A rectangle made larger by `du` at both ends of u and `dv` at both ends of v; negative shrinks. */
export const growRect = (r: Rect, du: number, dv: number): Rect =>
  rect(r.u0 - du, r.u1 + du, r.v0 - dv, r.v1 + dv)

/** The smallest rectangle around two. */
export const joinRects = (a: Rect, b: Rect): Rect =>
  rect(Math.min(a.u0, b.u0), Math.max(a.u1, b.u1), Math.min(a.v0, b.v0), Math.max(a.v1, b.v1))

/** The stretches of u in one band of v that no hole covers. */
const freeStretches = (r: Rect, v0: number, v1: number, holes: readonly Rect[]) => {
  const blocking = holes
    .filter((h) => h.v0 < v1 && v0 < h.v1 && h.u0 < r.u1 && r.u0 < h.u1)
    .sort((a, b) => a.u0 - b.u0)
  const free: Rect[] = []
  let from = r.u0
  for (const h of blocking) {
    if (h.u0 > from) free.push(rect(from, h.u0, v0, v1))
    from = Math.max(from, h.u1)
  }
  if (from < r.u1) free.push(rect(from, r.u1, v0, v1))
  return free
}

/**
 * What is left of a rectangle when holes are cut out, as rectangles that touch but don't overlap: cut
 * into bands of v at the holes' edges, then bands with the same stretches joined again.
 */
export const subtractRects = (r: Rect, holes: readonly Rect[]): readonly Rect[] => {
  const inside = holes.filter((h) => rectsOverlap(r, h))
  if (inside.length === 0) return [r]
  const cuts = new Set([r.v0, r.v1])
  for (const h of inside) {
    if (h.v0 > r.v0) cuts.add(h.v0)
    if (h.v1 < r.v1) cuts.add(h.v1)
  }
  const levels = [...cuts].sort((a, b) => a - b)
  const done: Rect[] = []
  let open: Rect[] = []
  for (let i = 0; i + 1 < levels.length; i += 1) {
    const [v0, v1] = [levels[i] ?? r.v0, levels[i + 1] ?? r.v1]
    // A stretch that goes on from the band below grows; the others are finished.
    const band = freeStretches(r, v0, v1, inside).map((piece) => {
      const below = open.find((o) => o.u0 === piece.u0 && o.u1 === piece.u1)
      return below ? rect(below.u0, below.u1, below.v0, v1) : piece
    })
    done.push(...open.filter((o) => !band.some((b) => b.u0 === o.u0 && b.u1 === o.u1)))
    open = band
  }
  return [...done, ...open]
}
