import type { Box } from '../geometry/box.ts'
import type { Solid } from '../geometry/solid.ts'
import type { Part } from '../hive/part.ts'
import { frameSolid } from './solidCorners.ts'

/** Line segments one after another, six numbers each: x, y, z of one end, then of the other, mm. */
export type Segments = readonly number[]

/**
 * The edges that an ink drawing of `part` shows, in the closed hive. Seams between the solids that
 * make up one piece of wood are left out; they are not there to see.
 */
export const partEdges = (part: Part): Segments => {
  const [first, ...rest] = part.solids
  if (first === undefined) return []
  if (rest.length === 0) return solidEdges(first)
  const boxes = part.solids.flatMap((s) => (s.kind === 'box' ? [s.box] : []))
  if (boxes.length === part.solids.length) return boxUnionEdges(boxes)
  return withoutTwins(part.solids.flatMap((s) => solidEdges(s)))
}

const solidEdges = (solid: Solid): Segments => {
  const { corners, edges } = frameSolid(solid)
  const out: number[] = []
  for (const [i, j] of edges) {
    const [a, b] = [corners[i], corners[j]]
    if (a !== undefined && b !== undefined) out.push(a.x, a.y, a.z, b.x, b.y, b.z)
  }
  return out
}

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
  const filled = fillCells(boxes, planes)
  return [0, 1, 2].flatMap((axis) => creasesAlong(axis, planes, filled))
}

type Planes = readonly [readonly number[], readonly number[], readonly number[]]
type Filled = (cell: readonly [number, number, number]) => boolean

/** Two faces closer than this are one plane, mm. */
const SAME_PLANE = 1e-6

const facePlanes = (values: readonly number[]): readonly number[] => {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted.filter((v, i) => i === 0 || v - (sorted[i - 1] ?? v) > SAME_PLANE)
}

const planeIndex = (planes: readonly number[], value: number): number =>
  planes.findIndex((p) => Math.abs(p - value) <= SAME_PLANE)

const fillCells = (boxes: readonly Box[], [xs, ys, zs]: Planes): Filled => {
  const cells = new Uint8Array(xs.length * ys.length * zs.length)
  const place = (i: number, j: number, k: number) => (i * ys.length + j) * zs.length + k
  for (const b of boxes) {
    const [i1, j1, k1] = [planeIndex(xs, b.x1), planeIndex(ys, b.y1), planeIndex(zs, b.z1)]
    for (let i = planeIndex(xs, b.x0); i < i1; i++)
      for (let j = planeIndex(ys, b.y0); j < j1; j++)
        for (let k = planeIndex(zs, b.z0); k < k1; k++) cells[place(i, j, k)] = 1
  }
  return ([i, j, k]) =>
    i >= 0 && j >= 0 && k >= 0 && cells[place(i, j, k)] === 1 && j < ys.length && k < zs.length
}

/** Walks every lattice line of one axis and joins neighbouring creases into one segment. */
const creasesAlong = (axis: number, planes: Planes, filled: Filled): number[] => {
  const [p, q] = [(axis + 1) % 3, (axis + 2) % 3]
  const [along, ps, qs] = [planes[axis] ?? [], planes[p] ?? [], planes[q] ?? []]
  const out: number[] = []
  ps.forEach((pv, pi) => {
    qs.forEach((qv, qi) => {
      let start: number | undefined
      along.forEach((value, i) => {
        const crease = i < along.length - 1 && isCrease(filled, { axis, i, pi, qi })
        if (crease && start === undefined) start = value
        if (!crease && start !== undefined) {
          out.push(...pointAt(axis, [start, pv, qv]), ...pointAt(axis, [value, pv, qv]))
          start = undefined
        }
      })
    })
  })
  return out
}

const isCrease = (
  filled: Filled,
  at: { readonly axis: number; readonly i: number; readonly pi: number; readonly qi: number },
): boolean => {
  const cell = (dp: number, dq: number): number =>
    filled(pointAt(at.axis, [at.i, at.pi + dp, at.qi + dq])) ? 1 : 0
  const [a, b, c, d] = [cell(-1, -1), cell(0, -1), cell(-1, 0), cell(0, 0)]
  const count = a + b + c + d
  return count === 1 || count === 3 || (count === 2 && a === d)
}

/** Puts coordinates given as (along, next axis, last axis) back in the order x, y, z. */
const pointAt = (
  axis: number,
  [along, p, q]: readonly [number, number, number],
): [number, number, number] =>
  axis === 0 ? [along, p, q] : axis === 1 ? [q, along, p] : [p, q, along]

/** Keeps one of each pair of equal segments, whichever way they run. */
const withoutTwins = (segments: Segments): Segments => {
  const seen = new Set<string>()
  const out: number[] = []
  for (let i = 0; i < segments.length; i += 6) {
    const segment = segments.slice(i, i + 6)
    const ends = [segment.slice(0, 3), segment.slice(3)].map((e) => e.map((v) => v.toFixed(3)))
    const key = ends
      .map((e) => e.join())
      .sort()
      .join(' ')
    if (!seen.has(key)) out.push(...segment)
    seen.add(key)
  }
  return out
}
