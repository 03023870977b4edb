import type { Solid } from './solid.ts'
import type { Vec3 } from './vector.ts'

/** The same solid, moved. */
export const moveSolid = (solid: Solid, { x, y, z }: Vec3): Solid => {
  if (solid.kind === 'box') {
    const { x0, x1, y0, y1, z0, z1 } = solid.box
    const box = { x0: x0 + x, x1: x1 + x, y0: y0 + y, y1: y1 + y, z0: z0 + z, z1: z1 + z }
    return { kind: 'box', box }
  }
  const [along, du, dv] =
    solid.axis === 'x' ? [x, z, y] : solid.axis === 'y' ? [y, x, z] : [z, x, y]
  return {
    ...solid,
    polygon: solid.polygon.map(({ u, v }) => ({ u: u + du, v: v + dv })),
    from: solid.from + along,
    to: solid.to + along,
  }
}
