import type { Box } from '../../geometry/box.ts'
import type { Axis } from '../../geometry/vector.ts'
import { toHundredths } from './roundSize.ts'
import type { Turn } from './turns.ts'

type Triple<T> = readonly [T, T, T]

/**
 * A body of boxes on the coarsest grid that shows its shape, so that it does not matter into which
 * boxes it was divided.
 */
export interface BlockGrid {
  /** Planes across x, y and z, ascending, in hundredths of a millimetre from the body's middle. */
  readonly planes: Triple<readonly number[]>
  /** 1 for each solid cell between them; z runs fastest, x slowest. */
  readonly cells: Uint8Array
  /** One full cell: a plain box. */
  readonly isBare: boolean
}

/** Lays boxes that touch but do not overlap on their grid; the body's middle must be the origin. */
export const blockGrid = (boxes: readonly Box[]): BlockGrid => {
  const spans = boxes.map(
    (b): Triple<readonly [number, number]> => [
      [toHundredths(b.x0), toHundredths(b.x1)],
      [toHundredths(b.y0), toHundredths(b.y1)],
      [toHundredths(b.z0), toHundredths(b.z1)],
    ],
  )
  const planesAlong = (slot: 0 | 1 | 2): readonly number[] =>
    [...new Set(spans.flatMap((span) => span[slot]))].sort((a, b) => a - b)
  const fine: Triple<readonly number[]> = [planesAlong(0), planesAlong(1), planesAlong(2)]
  const cells = fillCells(fine, spans)
  // A plane with the same cells on both of its sides only shows how the body was divided.
  const planes: Triple<readonly number[]> = [
    withoutSeams(fine, cells, 0),
    withoutSeams(fine, cells, 1),
    withoutSeams(fine, cells, 2),
  ]
  return {
    planes,
    cells: fillCells(planes, spans),
    isBare: planes.every((along) => along.length === 2),
  }
}

/** A cell is solid when its lower corner lies in one of the bodies. */
const fillCells = (
  [xs, ys, zs]: Triple<readonly number[]>,
  spans: readonly Triple<readonly [number, number]>[],
): Uint8Array => {
  const [ny, nz] = [ys.length - 1, zs.length - 1]
  const cells = new Uint8Array((xs.length - 1) * ny * nz)
  for (let cell = 0; cell < cells.length; cell += 1) {
    const x = xs[Math.floor(cell / (ny * nz))] ?? 0
    const y = ys[Math.floor(cell / nz) % ny] ?? 0
    const z = zs[cell % nz] ?? 0
    const isSolid = spans.some(
      ([sx, sy, sz]) =>
        sx[0] <= x && x < sx[1] && sy[0] <= y && y < sy[1] && sz[0] <= z && z < sz[1],
    )
    if (isSolid) cells[cell] = 1
  }
  return cells
}

/** The planes across one axis without those where nothing changes. */
const withoutSeams = (
  planes: Triple<readonly number[]>,
  cells: Uint8Array,
  slot: 0 | 1 | 2,
): readonly number[] => {
  const counts = planes.map((along) => along.length - 1)
  const [, ny = 0, nz = 0] = counts
  const stride = [ny * nz, nz, 1][slot] ?? 1
  const changes = new Set<number>()
  for (let cell = 0; cell < cells.length; cell += 1) {
    const place = Math.floor(cell / stride) % (counts[slot] ?? 1)
    if (place > 0 && cells[cell] !== cells[cell - stride]) changes.add(place)
  }
  const last = planes[slot].length - 1
  return planes[slot].filter((_, i) => i === 0 || i === last || changes.has(i))
}

const SLOT: Readonly<Record<Axis, 0 | 1 | 2>> = { x: 0, y: 1, z: 2 }

/** The grid as text after a turn: its planes along each bench axis, then its cells. */
export const gridKey = ({ planes, cells }: BlockGrid, { axes, signs }: Turn): string => {
  const strides = [(planes[1].length - 1) * (planes[2].length - 1), planes[2].length - 1, 1]
  const lines: string[] = []
  // The cell offsets met along each bench axis, in the order that the turn walks them.
  const walks = axes.map((axis, slot) => {
    const along = planes[SLOT[axis]]
    const isTurned = signs[slot] === -1
    lines.push((isTurned ? along.map((plane) => 0 - plane).reverse() : along).join(' '))
    const offsets = along.slice(1).map((_, i) => i * (strides[SLOT[axis]] ?? 1))
    return isTurned ? offsets.reverse() : offsets
  })
  const [first = [], second = [], third = []] = walks
  let text = ''
  for (const a of first) {
    for (const b of second) for (const c of third) text += cells[a + b + c] === 1 ? '1' : '0'
  }
  return `${lines.join('/')}:${text}`
}
