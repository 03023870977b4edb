import { separation } from '../../src/geometry/separation.ts'
import { type PrismSolid, type Solid, solidBounds } from '../../src/geometry/solid.ts'
import type { Hinge } from '../../src/hive/hive.ts'
import type { Part } from '../../src/hive/part.ts'

/** A solid turned about a hinge by an angle: a prism along x, since the hinge lies along x. */
export const turnSolid = (solid: Solid, { point, sense }: Hinge, deg: number): PrismSolid => {
  const angle = (sense * deg * Math.PI) / 180
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)]
  const { x0, x1, y0, y1, z0, z1 } = solidBounds(solid)
  const section =
    solid.kind === 'prism' && solid.axis === 'x'
      ? solid.polygon.map(({ u, v }) => ({ y: v, z: u }))
      : [
          { y: y0, z: z0 },
          { y: y0, z: z1 },
          { y: y1, z: z1 },
          { y: y1, z: z0 },
        ]
  return {
    kind: 'prism',
    axis: 'x',
    from: x0,
    to: x1,
    // A right-handed turn about +x takes y towards z.
    polygon: section.map(({ y, z }) => ({
      u: point.z + (y - point.y) * sin + (z - point.z) * cos,
      v: point.y + (y - point.y) * cos - (z - point.z) * sin,
    })),
  }
}

/** Pairs of a moving and a standing part that reach into each other when the hinge is opened. */
export const collisionsAt = (
  moving: readonly Part[],
  standing: readonly Part[],
  turn: { readonly hinge: Hinge; readonly deg: number; readonly tolerance: number },
): readonly string[] => {
  const obstacles = standing.flatMap((part) =>
    part.solids.map((solid) => ({ part, solid, bounds: solidBounds(solid) })),
  )
  return moving.flatMap((part) =>
    part.solids.flatMap((solid) => {
      const turned = turnSolid(solid, turn.hinge, turn.deg)
      const b = solidBounds(turned)
      return obstacles
        .filter(
          ({ bounds: o }) =>
            Math.min(b.x1 - o.x0, o.x1 - b.x0, b.y1 - o.y0, o.y1 - b.y0, b.z1 - o.z0, o.z1 - b.z0) >
            turn.tolerance,
        )
        .map((o) => ({ ...o, depth: -separation(turned, o.solid) }))
        .filter(({ depth }) => depth > turn.tolerance)
        .map((o) => `${part.id} reaches ${o.depth.toFixed(3)} into ${o.part.id} at ${turn.deg}°`)
    }),
  )
}
