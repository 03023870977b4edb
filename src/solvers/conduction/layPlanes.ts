import type { MeshSpec, Triple, World } from './world.ts'
import { WorldError } from './worldError.ts'

/** The planes of a grid across x, y and z, rising, m. */
export type Planes = readonly [Float64Array, Float64Array, Float64Array]

/** Two faces nearer than this are the same face, written down with different rounding, m. */
const ROUNDING_M = 1e-9
/** A grid with more cells would not fit the memory of an ordinary browser. */
const MOST_CELLS = 8e6
/** More cells side by side would leave room for next to none the other way. */
const MOST_IN_A_GAP = 20_000
const TOO_FINE = 'The cells are far too small for these blocks. Use a coarser mesh.'

/** One plane for each place along each axis where a block begins or ends; near ones are merged. */
export const facePlanes = (world: World, mergeM: number): Planes => {
  const along = (axis: 0 | 1 | 2): Float64Array => {
    const all = world.blocks.flatMap(({ minM, maxM }) => [minM[axis], maxM[axis]])
    const sorted = all.sort((a, b) => a - b)
    const [first = 0] = sorted
    const last = sorted[sorted.length - 1] ?? first
    const kept = [first]
    for (const place of sorted) {
      const gap = place - (kept[kept.length - 1] ?? first)
      if (gap > Math.max(mergeM, ROUNDING_M)) kept.push(place)
    }
    // The outermost face stays where it is; the plane before it gives way.
    if (kept.length > 1) kept[kept.length - 1] = last
    if (last - first <= ROUNDING_M) throw new WorldError('All blocks are flat. Give them a size.')
    return Float64Array.from(kept)
  }
  return [along(0), along(1), along(2)]
}

/** Which end of a gap lies on a face of matter, so that cells must be fine there. */
type Ends = 'both' | 'low'

/**
 * Divides the gaps between face planes into cells: fine at the faces, where the flow of heat bends,
 * and wider away from them. `mirrored` names axes whose last plane is a plane of symmetry, where
 * nothing bends. Throws a `WorldError` when there would be too many cells.
 */
export const layPlanes = (
  faces: Planes,
  mesh: MeshSpec,
  mirrored: readonly boolean[] = [],
): Planes => {
  const along = (axis: 0 | 1 | 2): Float64Array => {
    const places = faces[axis]
    const out = [places[0] ?? 0]
    for (let i = 1; i < places.length; i++) {
      const from = places[i - 1] ?? 0
      const to = places[i] ?? 0
      const isLast = i === places.length - 1
      const widths = divideGap(to - from, mesh, isLast && mirrored[axis] === true ? 'low' : 'both')
      let at = from
      for (const width of widths.slice(0, -1)) {
        at += width
        out.push(at)
      }
      out.push(to)
    }
    return Float64Array.from(out)
  }
  const planes: Planes = [along(0), along(1), along(2)]
  const cells = planes.reduce((n, p) => n * (p.length - 1), 1)
  if (cells > MOST_CELLS) {
    throw new WorldError(
      `The grid would have ${Math.round(cells / 1e6)} million cells. Use a coarser mesh or fewer blocks.`,
    )
  }
  return planes
}

/** Widths of the cells across one gap; they add up to `gap`. */
const divideGap = (gap: number, mesh: MeshSpec, ends: Ends): readonly number[] => {
  const { leastCellM, growth, greatestCellM, cellsPerGap } = mesh
  if (growth === 1 || gap <= 2 * leastCellM) {
    const n = Math.max(cellsPerGap, Math.ceil(gap / leastCellM - 1e-9))
    if (n > MOST_IN_A_GAP) throw new WorldError(TOO_FINE)
    return Array.from({ length: n }, () => gap / n)
  }
  // Grow from each fine end until the two sequences fill the gap, then shrink all to fit.
  const low: number[] = []
  const high: number[] = []
  let filled = 0
  let width = Math.min(leastCellM, greatestCellM)
  const isShort = () => filled < gap || low.length + high.length < cellsPerGap
  while (isShort()) {
    low.push(width)
    filled += width
    if (ends === 'both' && isShort()) {
      high.push(width)
      filled += width
    }
    if (low.length > MOST_IN_A_GAP) throw new WorldError(TOO_FINE)
    width = Math.min(width * growth, greatestCellM)
  }
  const scale = gap / filled
  return [...low, ...high.reverse()].map((w) => w * scale)
}

export const cellCounts = (planes: Planes): Triple => [
  planes[0].length - 1,
  planes[1].length - 1,
  planes[2].length - 1,
]
