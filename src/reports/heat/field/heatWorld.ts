import type { Box } from '../../../geometry/box.ts'
import type { Block, Environment, Triple, World } from '../../../solvers/conduction/world.ts'
import { SURFACE_RESISTANCES } from '../../../solvers/iso6946/surfaceResistances.ts'
import type { HeatBlock } from './heatBlock.ts'
import { INSIDE, OUTSIDE } from './hiveHeatModel.ts'

/** Blocks in mm as a world in metres, with cold air all round and warm air inside. */
export const worldOf = (blocks: readonly HeatBlock[]): World => ({
  blocks: blocks.map(blockOf),
  environments: [OUTSIDE_AIR, INSIDE_AIR],
  background: OUTSIDE,
  beyond: [OUTSIDE, OUTSIDE, OUTSIDE, OUTSIDE, OUTSIDE, OUTSIDE],
})

const blockOf = ({ placeMm, matter }: HeatBlock): Block => {
  const corners = { minM: cornerOf(placeMm, 'min'), maxM: cornerOf(placeMm, 'max') }
  return matter.kind === 'solid'
    ? { kind: 'solid', ...corners, conductivityWPerMK: matter.conductivityWPerMK }
    : { kind: 'air', ...corners, environment: INSIDE }
}

const cornerOf = (b: Box, end: 'min' | 'max'): Triple =>
  end === 'min'
    ? [b.x0 / MM_PER_M, b.y0 / MM_PER_M, b.z0 / MM_PER_M]
    : [b.x1 / MM_PER_M, b.y1 / MM_PER_M, b.z1 / MM_PER_M]

const MM_PER_M = 1000

// Heat leaves the hive: through a ceiling, which faces down, it goes up, and through a floor down.
const { up, horizontal, down } = SURFACE_RESISTANCES

/** Warm air at 1. */
export const INSIDE_AIR: Environment = {
  temperatureC: 1,
  surfaceResistanceM2KPerW: [
    horizontal.insideM2KPerW,
    horizontal.insideM2KPerW,
    up.insideM2KPerW,
    down.insideM2KPerW,
    horizontal.insideM2KPerW,
    horizontal.insideM2KPerW,
  ],
}

/** Cold air at 0: heat goes up from a roof, which faces up, and down from an underside. */
export const OUTSIDE_AIR: Environment = {
  temperatureC: 0,
  surfaceResistanceM2KPerW: [
    horizontal.outsideM2KPerW,
    horizontal.outsideM2KPerW,
    down.outsideM2KPerW,
    up.outsideM2KPerW,
    horizontal.outsideM2KPerW,
    horizontal.outsideM2KPerW,
  ],
}
