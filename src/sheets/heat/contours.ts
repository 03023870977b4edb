import type { ModelPoint } from '../view.ts'
import type { FieldSlice } from './sliceField.ts'

/** Part of a slice by its lines: the first and last of u and of v, both counted in. */
export interface SliceWindow {
  readonly i0: number
  readonly i1: number
  readonly j0: number
  readonly j1: number
}

export interface ContourLine {
  /** The first point stands again at the end of a closed line. The higher values are at the left. */
  readonly points: readonly ModelPoint[]
  readonly isClosed: boolean
}

const wholeSlice = ({ uMm, vMm }: FieldSlice): SliceWindow => ({
  i0: 0,
  i1: uMm.length - 1,
  j0: 0,
  j1: vMm.length - 1,
})

/**
 * The lines on which the slice has a value, by marching squares: straight through each cell, between
 * points found linearly on its sides. Each line is closed or ends on the slice's border. A cell with
 * two opposite high corners is parted as the bilinear surface is (Nielson and Hamann 1991).
 */
export const traceContour = (slice: FieldSlice, level: number): readonly ContourLine[] => {
  const next = crossCells(slice, level, wholeSlice(slice))
  const ends = new Set(next.values())
  const starts = [...next.keys()]
  // Lines that begin on the border first; what is left after them are rings.
  const open = starts.filter((node) => !ends.has(node)).map((node) => follow(next, node))
  const rings = starts.filter((node) => next.has(node)).map((node) => follow(next, node))
  return [...open, ...rings]
    .map((nodes) => ({
      points: placeNodes(slice, level, nodes),
      isClosed: nodes[0] === nodes.at(-1),
    }))
    .filter(({ points }) => points.length > 1)
}

/**
 * The part of a window in which the slice is at or above a value, as loops: anticlockwise around it,
 * clockwise around holes in it. Bordered by the very lines of `traceContour` and by the window.
 */
export const traceRegionAbove = (
  slice: FieldSlice,
  level: number,
  window: SliceWindow = wholeSlice(slice),
): readonly (readonly ModelPoint[])[] => {
  const next = crossCells(slice, level, window)
  for (const [from, to] of borderEdges(slice, level, window)) next.set(from, to)
  return [...next.keys()]
    .filter((node) => next.has(node))
    .map((node) => placeNodes(slice, level, follow(next, node)).slice(1))
    .filter((loop) => loop.length > 2)
}

/** A place where loops turn: a corner of the grid, or where a line of the grid crosses the level. */
type Node = number
const ON_U = 0
const ON_V = 1
const CORNER = 2

const nodeOf = (nu: number, i: number, j: number, kind: number): Node => 3 * (j * nu + i) + kind

/** The nodes from one on, each taken out of the map, until there is no next or the start comes again. */
const follow = (next: Map<Node, Node>, start: Node): readonly Node[] => {
  const nodes = [start]
  for (;;) {
    const last = nodes.at(-1)
    const to = last === undefined ? undefined : next.get(last)
    if (last === undefined || to === undefined) return nodes
    next.delete(last)
    nodes.push(to)
    if (to === start) return nodes
  }
}

const placeNodes = (
  { uMm, vMm, value }: FieldSlice,
  level: number,
  nodes: readonly Node[],
): readonly ModelPoint[] => {
  const nu = uMm.length
  const points: ModelPoint[] = []
  for (const node of nodes) {
    const kind = node % 3
    const at = (node - kind) / 3
    const [i, j] = [at % nu, Math.floor(at / nu)]
    const [di, dj] = [kind === ON_U ? 1 : 0, kind === ON_V ? 1 : 0]
    const [a, b] = [value[at] ?? 0, value[at + di + dj * nu] ?? 0]
    const t = kind === CORNER ? 0 : (level - a) / (b - a)
    const [u, v] = [mix(uMm, i, di, t), mix(vMm, j, dj, t)]
    const last = points.at(-1)
    // A level that meets a corner crosses several sides in one place.
    if (last === undefined || Math.hypot(u - last.u, v - last.v) > 1e-9) points.push({ u, v })
  }
  return points
}

const mix = (lines: Float64Array, i: number, step: number, t: number): number => {
  const from = lines[i] ?? 0
  return step === 0 ? from : from + ((lines[i + 1] ?? from) - from) * t
}

/** For each crossing where the level enters a cell of the window, the one where it leaves it. */
const crossCells = (
  { uMm, value }: FieldSlice,
  level: number,
  { i0, i1, j0, j1 }: SliceWindow,
): Map<Node, Node> => {
  const nu = uMm.length
  const next = new Map<Node, Node>()
  for (let j = j0; j < j1; j += 1) {
    for (let i = i0; i < i1; i += 1) {
      const at = j * nu + i
      const corners = [value[at], value[at + 1], value[at + nu + 1], value[at + nu]]
      const high = corners.map((c) => (c ?? 0) >= level)
      if (high.every((h) => h === high[0])) continue
      // The sides of the cell, anticlockwise from the lower one, each after its corner.
      const sides = [
        nodeOf(nu, i, j, ON_U),
        nodeOf(nu, i + 1, j, ON_V),
        nodeOf(nu, i, j + 1, ON_U),
        nodeOf(nu, i, j, ON_V),
      ]
      for (const [from, to] of pairSides(corners, high, level)) {
        const [start, end] = [sides[from], sides[to]]
        if (start !== undefined && end !== undefined) next.set(start, end)
      }
    }
  }
  return next
}

/** Which sides the level's lines join: from where the high part ends, anticlockwise, to where it begins. */
const pairSides = (
  corners: readonly (number | undefined)[],
  high: readonly (boolean | undefined)[],
  level: number,
): readonly (readonly [number, number])[] => {
  const sides = [0, 1, 2, 3]
  const falls = sides.filter((s) => high[s] && !high[(s + 1) % 4])
  const rises = sides.filter((s) => !high[s] && high[(s + 1) % 4])
  if (falls.length === 1) return falls.flatMap((f) => rises.map((r) => [f, r] as const))
  const [a = 0, b = 0, c = 0, d = 0] = corners
  // The value where the bilinear surface is level: as high as that, the high corners hang together.
  const saddle = (a * c - b * d) / (a + c - b - d)
  return falls.map((f) => [f, (f + (saddle >= level ? 1 : 3)) % 4] as const)
}

/** The high stretches of the window's border, anticlockwise, grid line by grid line. */
const borderEdges = (
  { uMm, value }: FieldSlice,
  level: number,
  { i0, i1, j0, j1 }: SliceWindow,
): readonly (readonly [Node, Node])[] => {
  const nu = uMm.length
  const edges: (readonly [Node, Node])[] = []
  const isHigh = (i: number, j: number) => (value[j * nu + i] ?? 0) >= level
  const walk = (i: number, j: number, di: number, dj: number) => {
    const [from, to] = [isHigh(i, j), isHigh(i + di, j + dj)]
    if (!from && !to) return
    const kind = di === 0 ? ON_V : ON_U
    const crossing = nodeOf(nu, Math.min(i, i + di), Math.min(j, j + dj), kind)
    edges.push([
      from ? nodeOf(nu, i, j, CORNER) : crossing,
      to ? nodeOf(nu, i + di, j + dj, CORNER) : crossing,
    ])
  }
  for (let i = i0; i < i1; i += 1) walk(i, j0, 1, 0)
  for (let j = j0; j < j1; j += 1) walk(i1, j, 0, 1)
  for (let i = i1; i > i0; i -= 1) walk(i, j1, -1, 0)
  for (let j = j1; j > j0; j -= 1) walk(i0, j, 0, -1)
  return edges
}
