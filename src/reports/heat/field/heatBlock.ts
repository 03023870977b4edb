import type { Box } from '../../../geometry/box.ts'
import type { Axis } from '../../../geometry/vector.ts'
import type { BlockSource } from './hiveHeatModel.ts'

/** What fills a block: matter that conducts, in W/(m·K), or the air that the bees live in. */
export type HeatMatter =
  | { readonly kind: 'solid'; readonly conductivityWPerMK: number }
  | { readonly kind: 'inside-air' }

/** A block of the closed hive in mm, before it is handed to the solver. Later ones hold. */
export interface HeatBlock extends BlockSource {
  readonly placeMm: Box
  readonly matter: HeatMatter
  /**
   * Its faces may move by a hair to lie in a plane that others have: for what bounds no layer that
   * insulates, since each plane of its own costs cells through the whole hive.
   */
  readonly isLoose?: boolean
}

export const solid = (conductivityWPerMK: number): HeatMatter => ({
  kind: 'solid',
  conductivityWPerMK,
})

/** The box with its extent along one axis replaced. */
export const withSpan = (b: Box, axis: Axis, from: number, to: number): Box => {
  switch (axis) {
    case 'x':
      return { ...b, x0: from, x1: to }
    case 'y':
      return { ...b, y0: from, y1: to }
    case 'z':
      return { ...b, z0: from, z1: to }
  }
}

/** Where the box begins and ends along an axis. */
export const spanOf = (b: Box, axis: Axis): readonly [number, number] => {
  switch (axis) {
    case 'x':
      return [b.x0, b.x1]
    case 'y':
      return [b.y0, b.y1]
    case 'z':
      return [b.z0, b.z1]
  }
}
