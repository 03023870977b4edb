import type { Vec3 } from '../geometry/vector.ts'
import type { FieldGrid } from '../solvers/conduction/fieldGrid.ts'
import { sampleField } from '../solvers/conduction/fieldGrid.ts'

/** Within this distance of the field's box, what sticks out of it cools down to the air outside, mm. */
export const COOLING_MM = 12

/**
 * Temperature at a point of the closed hive, mm, as a share of the way from outside to inside. What
 * stands away from the box that the field fills, such as a leg of the stand, is as cold as the air.
 */
export const shareAt = (grid: FieldGrid, p: Vec3): number => {
  const beyond = Math.hypot(
    outsideOf(grid.xM, p.x / 1000),
    outsideOf(grid.yM, p.y / 1000),
    outsideOf(grid.zM, p.z / 1000),
  )
  const way = Math.min(1, (1000 * beyond) / COOLING_MM)
  const kept = 1 - way * way * (3 - 2 * way)
  return kept === 0 ? 0 : kept * sampleField(grid, p.x / 1000, p.y / 1000, p.z / 1000)
}

/** How far a coordinate lies outside the planes, m. */
const outsideOf = (planes: Float64Array, m: number): number =>
  Math.max((planes[0] ?? 0) - m, m - (planes.at(-1) ?? 0), 0)
