import type { Box } from '../../../geometry/box.ts'
import type { World } from '../../../solvers/conduction/world.ts'
import { solid } from './heatBlock.ts'
import { worldOf } from './heatWorld.ts'

/** Boards of one thickness all round a room. */
export const plainBoxWorld = (inside: Box, wallMm: number, conductivityWPerMK: number): World => {
  const outside: Box = {
    x0: inside.x0 - wallMm,
    x1: inside.x1 + wallMm,
    y0: inside.y0 - wallMm,
    y1: inside.y1 + wallMm,
    z0: inside.z0 - wallMm,
    z1: inside.z1 + wallMm,
  }
  const source = { partId: undefined, side: undefined }
  return worldOf([
    { placeMm: outside, matter: solid(conductivityWPerMK), ...source },
    { placeMm: inside, matter: { kind: 'inside-air' }, ...source },
  ])
}
