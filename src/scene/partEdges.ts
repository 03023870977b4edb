import type { Box } from '../geometry/box.ts'
import type { Solid } from '../geometry/solid.ts'
import { frameSolid } from '../geometry/solidFrame.ts'
import type { Part } from '../hive/part.ts'
import { boxUnionEdges, type Segments } from './boxUnionEdges.ts'

/**
 * The edges that an ink drawing of `part` shows, in the closed hive. Seams between the solids that
 * make up one piece of wood are left out; they are not there to see.
 */
export const partEdges = (part: Part): Segments => {
  const [first, ...rest] = part.solids
  if (first === undefined) return []
  if (rest.length === 0) return solidEdges(first)
  const boxes = part.solids.flatMap((s) => (s.kind === 'box' ? [s.box] : []))
  if (boxes.length === part.solids.length) return knownUnionEdges(boxes)
  return withoutTwins(part.solids.flatMap((s) => solidEdges(s)))
}

/** Shapes seen before, measured from the low corner of their first box. */
const edgesByShape = new Map<string, Segments>()
const MOST_SHAPES = 400

/** As `boxUnionEdges`, but equal pieces, such as thirty top bars, are worked out once. */
const knownUnionEdges = (boxes: readonly Box[]): Segments => {
  const { x0: x, y0: y, z0: z } = boxes[0] ?? ORIGIN_BOX
  let key = ''
  for (const b of boxes) {
    // A thousandth of a millimetre: finer than any saw, coarser than rounding noise.
    for (const v of [b.x0 - x, b.x1 - x, b.y0 - y, b.y1 - y, b.z0 - z, b.z1 - z]) {
      key += `${Math.round(v * 1000)},`
    }
  }
  let shape = edgesByShape.get(key)
  if (shape === undefined) {
    if (edgesByShape.size >= MOST_SHAPES) edgesByShape.clear()
    shape = moved(boxUnionEdges(boxes), [-x, -y, -z])
    edgesByShape.set(key, shape)
  }
  return moved(shape, [x, y, z])
}

const ORIGIN_BOX: Box = { x0: 0, x1: 0, y0: 0, y1: 0, z0: 0, z1: 0 }

const moved = (segments: Segments, by: readonly [number, number, number]): Segments =>
  segments.map((v, i) => v + (by[i % 3] ?? 0))

const solidEdges = (solid: Solid): Segments => {
  const { corners, edges } = frameSolid(solid)
  const out: number[] = []
  for (const [i, j] of edges) {
    const [a, b] = [corners[i], corners[j]]
    if (a !== undefined && b !== undefined) out.push(a.x, a.y, a.z, b.x, b.y, b.z)
  }
  return out
}

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
