import type { ModelPoint } from '../view.ts'

/** One line of a view that is not hidden, in model mm. */
export interface VisibleLine {
  readonly a: ModelPoint
  readonly b: ModelPoint
  /** The hive's own edge against nothing behind it, or an edge with more of the hive beside it. */
  readonly kind: 'silhouette' | 'edge'
  readonly partId: string
}

/** Shorter stretches are the ends of an edge felt from just beside it, not lines, mm. */
const LEAST_SILHOUETTE = 0.2

/** Lines closer than this are one line, mm. */
const SAME_LINE = 0.05

interface Placed {
  readonly line: VisibleLine
  /** Unit direction, always with u > 0 or straight up, and the distance of the line from the origin. */
  readonly du: number
  readonly dv: number
  readonly offset: number
  readonly from: number
  readonly to: number
}

/**
 * The fewest lines that draw the same picture: stretches of one straight line that touch or overlap are
 * joined, so that no line is drawn twice. A silhouette wins over an edge in the same place.
 */
export const mergeLines = (lines: readonly VisibleLine[]): readonly VisibleLine[] => {
  const byCarrier = new Map<string, Placed[]>()
  for (const line of lines) {
    const placed = place(line)
    if (placed === undefined) continue
    const group = findGroup(byCarrier, placed)
    group.push(placed)
  }
  return [...byCarrier.values()].flatMap(mergeCarrier)
}

const place = (line: VisibleLine): Placed | undefined => {
  const flip =
    line.b.u < line.a.u - 1e-9 || (Math.abs(line.b.u - line.a.u) <= 1e-9 && line.b.v < line.a.v)
  const [a, b] = flip ? [line.b, line.a] : [line.a, line.b]
  const size = Math.hypot(b.u - a.u, b.v - a.v)
  if (size < 1e-9) return undefined
  const [du, dv] = [(b.u - a.u) / size, (b.v - a.v) / size]
  const at = (p: ModelPoint) => p.u * du + p.v * dv
  return { line, du, dv, offset: a.v * du - a.u * dv, from: at(a), to: at(b) }
}

const keyOf = (p: Placed, shift: number): string => {
  const angle = Math.round(Math.atan2(p.dv, p.du) * 1e4)
  return `${angle}/${Math.round(p.offset / SAME_LINE) + shift}`
}

/** Lines that round to neighbouring keys belong together too. */
const findGroup = (groups: Map<string, Placed[]>, placed: Placed): Placed[] => {
  for (const shift of [0, -1, 1]) {
    const group = groups.get(keyOf(placed, shift))
    const first = group?.[0]
    if (group && first && Math.abs(first.offset - placed.offset) < SAME_LINE) return group
  }
  const fresh: Placed[] = []
  groups.set(keyOf(placed, 0), fresh)
  return fresh
}

interface Stretch {
  readonly from: number
  readonly to: number
  readonly partId: string
}

const join = (placed: readonly Placed[]): Stretch[] => {
  const joined: Stretch[] = []
  for (const p of [...placed].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1)
    if (last && p.from <= last.to + SAME_LINE) {
      joined[joined.length - 1] = { ...last, to: Math.max(last.to, p.to) }
    } else joined.push({ from: p.from, to: p.to, partId: p.line.partId })
  }
  return joined
}

/** The parts of `stretch` that none of `taken` covers. */
const remainder = (stretch: Stretch, taken: readonly Stretch[]): Stretch[] => {
  const left: Stretch[] = []
  let at = stretch.from
  for (const t of taken) {
    if (t.to <= at || t.from >= stretch.to) continue
    if (t.from > at + SAME_LINE) left.push({ ...stretch, from: at, to: t.from })
    at = Math.max(at, t.to)
  }
  if (stretch.to > at + SAME_LINE) left.push({ ...stretch, from: at })
  return left
}

const mergeCarrier = (placed: readonly Placed[]): readonly VisibleLine[] => {
  const first = placed[0]
  if (first === undefined) return []
  const { du, dv, offset } = first
  const point = (t: number): ModelPoint => ({ u: t * du - offset * dv, v: t * dv + offset * du })
  const silhouettes = join(placed.filter((p) => p.line.kind === 'silhouette')).filter(
    (s) => s.to - s.from > LEAST_SILHOUETTE,
  )
  const edges = join(placed.filter((p) => p.line.kind === 'edge')).flatMap((e) =>
    remainder(e, silhouettes),
  )
  const lineOf =
    (kind: VisibleLine['kind']) =>
    (s: Stretch): VisibleLine => ({
      a: point(s.from),
      b: point(s.to),
      kind,
      partId: s.partId,
    })
  return [...silhouettes.map(lineOf('silhouette')), ...edges.map(lineOf('edge'))]
}
