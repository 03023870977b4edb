import type { Box } from '../../../geometry/box.ts'
import type { Triple } from '../../../solvers/conduction/world.ts'

/** From a point to the nearest point of a box, mm; 0 inside. The box may be flat or a line. */
export const distanceToBox = ([x, y, z]: Triple, b: Box): number =>
  Math.hypot(outside(x, b.x0, b.x1), outside(y, b.y0, b.y1), outside(z, b.z0, b.z1))

const outside = (value: number, low: number, high: number): number =>
  Math.max(low - value, 0, value - high)
