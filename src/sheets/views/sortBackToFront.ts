import { polygonsOverlap } from './polygon2.ts'
import type { Projection } from './projection.ts'
import { compareDepth, type Shape } from './shape.ts'

/**
 * An order in which shapes can be painted so that each covers what it hides (the painter's algorithm of
 * Newell, Newell and Sancha, 1972): a sort of the pairs that overlap on the paper. In a ring of shapes
 * that hide each other in turn, the first in the list goes first. O(n²).
 */
export const sortBackToFront = (
  shapes: readonly Shape[],
  { toViewer }: Projection,
): readonly Shape[] => {
  // For each shape, those that must be painted after it, and how many must come before it.
  const after: number[][] = shapes.map(() => [])
  const before: number[] = shapes.map(() => 0)
  const link = (back: number, front: number) => {
    after[back]?.push(front)
    before[front] = (before[front] ?? 0) + 1
  }
  shapes.forEach((a, i) => {
    for (let j = i + 1; j < shapes.length; j += 1) {
      const b = shapes[j]
      if (b === undefined || !boundsOverlap(a, b) || !polygonsOverlap(a.hull, b.hull, 0.01))
        continue
      const order = compareDepth(a, b, toViewer)
      if (order > 0) link(j, i)
      else if (order < 0) link(i, j)
    }
  })
  return release(shapes, after, before)
}

const boundsOverlap = ({ bounds: a }: Shape, { bounds: b }: Shape): boolean =>
  a.u0 < b.u1 && b.u0 < a.u1 && a.v0 < b.v1 && b.v0 < a.v1

const release = (
  shapes: readonly Shape[],
  after: readonly (readonly number[])[],
  before: number[],
): readonly Shape[] => {
  const painted: Shape[] = []
  const done = shapes.map(() => false)
  const ready = shapes.flatMap((_, i) => (before[i] === 0 ? [i] : []))
  const paint = (i: number) => {
    const shape = shapes[i]
    if (shape === undefined || done[i]) return
    done[i] = true
    painted.push(shape)
    for (const j of after[i] ?? []) {
      before[j] = (before[j] ?? 0) - 1
      if (before[j] === 0) ready.push(j)
    }
  }
  while (painted.length < shapes.length) {
    const next = ready.shift()
    // A ring leaves nothing ready: break it at any shape not yet painted.
    paint(next ?? done.indexOf(false))
  }
  return painted
}
