import type { Axis } from './vector.ts'

/** An axis-parallel box, mm. Each lower bound is below its upper bound. */
export interface Box {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}

export const box = (
  x: readonly [number, number],
  y: readonly [number, number],
  z: readonly [number, number],
): Box => ({ x0: x[0], x1: x[1], y0: y[0], y1: y[1], z0: z[0], z1: z[1] })

/** The extent of a box along one axis, mm. */
export const boxExtent = (b: Box, axis: Axis): number =>
  axis === 'x' ? b.x1 - b.x0 : axis === 'y' ? b.y1 - b.y0 : b.z1 - b.z0

/** Volume, mm³. */
export const boxVolume = (b: Box): number => (b.x1 - b.x0) * (b.y1 - b.y0) * (b.z1 - b.z0)

/** The smallest box around all of `boxes`; throws when there are none. */
export const boundingBox = (boxes: readonly Box[]): Box => {
  const first = boxes[0]
  if (first === undefined) throw new Error('boundingBox: no boxes')
  return boxes.reduce(
    (a, b) => ({
      x0: Math.min(a.x0, b.x0),
      x1: Math.max(a.x1, b.x1),
      y0: Math.min(a.y0, b.y0),
      y1: Math.max(a.y1, b.y1),
      z0: Math.min(a.z0, b.z0),
      z1: Math.max(a.z1, b.z1),
    }),
    first,
  )
}
