import type { Box } from '../geometry/box.ts'

/** Line segments one after another, six numbers each: x, y, z of one end, then of the other, mm. */
export type Segments = readonly number[]

/**
 * The creases of a union of boxes that don't overlap. The planes of all faces cut space into cells;
 * a lattice edge is a crease when the four cells around it are filled in one, three, or two opposite.
 * Cost grows with the cube of the number of different faces, so it suits a handful of boxes.
 */
export const boxUnionEdges = (boxes: readonly Box[]): Segments => {
  const planes = [
    facePlanes(boxes.flatMap((b) => [b.x0, b.x1])),
    facePlanes(boxes.flatMap((b) => [b.y0, b.y1])),
    facePlanes(boxes.flatMap((b) => [b.z0, b.z1])),
  ] as const
  const cells = fillCells(boxes, planes)
  const out: number[] = []
  for (const axis of [0, 1, 2] as const) pushCreases(out, axis, planes, cells)
  return out
}

type Planes = readonly [readonly number[], readonly number[], readonly number[]]

/** Filled cells with an empty layer round them, so that every lattice edge has four neighbours. */
interface Cells {
  readonly filled: Uint8Array
  /** Steps in `filled` to the next cell along x, y and z. */
  readonly strides: readonly [number, number, number]
}

/** Two faces closer than this are one plane, mm. */
const SAME_PLANE = 1e-6

const facePlanes = (values: readonly number[]): readonly number[] => {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted.filter((v, i) => i === 0 || v - (sorted[i - 1] ?? v) > SAME_PLANE)
}

const planeIndex = (planes: readonly number[], value: number): number =>
  planes.findIndex((p) => Math.abs(p - value) <= SAME_PLANE)

const fillCells = (boxes: readonly Box[], [xs, ys, zs]: Planes): Cells => {
  // Between n planes lie n - 1 cells; one more at each side stays empty.
  const strides = [(ys.length + 1) * (zs.length + 1), zs.length + 1, 1] as const
  const filled = new Uint8Array((xs.length + 1) * strides[0])
  for (const b of boxes) {
    const [i1, j1, k1] = [planeIndex(xs, b.x1), planeIndex(ys, b.y1), planeIndex(zs, b.z1)]
    const [i0, j0, k0] = [planeIndex(xs, b.x0), planeIndex(ys, b.y0), planeIndex(zs, b.z0)]
    for (let i = i0 + 1; i <= i1; i++)
      for (let j = j0 + 1; j <= j1; j++)
        for (let k = k0 + 1; k <= k1; k++) filled[i * strides[0] + j * strides[1] + k] = 1
  }
  return { filled, strides }
}

/** Walks every lattice line of one axis and joins neighbouring creases into one segment. */
const pushCreases = (
  out: number[],
  axis: 0 | 1 | 2,
  planes: Planes,
  { filled, strides }: Cells,
): void => {
  const [p, q] = NEXT_AXES[axis]
  const [along, ps, qs] = [planes[axis], planes[p], planes[q]]
  const [sa, sp, sq] = [strides[axis], strides[p], strides[q]]
  const at = [0, 0, 0]
  const pushPoint = (value: number): void => {
    at[axis] = value
    out.push(...at)
  }
  for (let pi = 0; pi < ps.length; pi++) {
    at[p] = ps[pi] ?? 0
    for (let qi = 0; qi < qs.length; qi++) {
      at[q] = qs[qi] ?? 0
      let isOpen = false
      for (let i = 0; i < along.length; i++) {
        const cell = (i + 1) * sa + pi * sp + qi * sq
        const crease =
          i < along.length - 1 &&
          isCrease(filled[cell], filled[cell + sp], filled[cell + sq], filled[cell + sp + sq])
        if (crease !== isOpen) pushPoint(along[i] ?? 0)
        isOpen = crease
      }
    }
  }
}

const NEXT_AXES = [
  [1, 2],
  [2, 0],
  [0, 1],
] as const

/** `a` and `d` lie opposite each other across the edge, and so do `b` and `c`. */
const isCrease = (a = 0, b = 0, c = 0, d = 0): boolean => {
  const count = a + b + c + d
  return count === 1 || count === 3 || (count === 2 && a === d)
}
