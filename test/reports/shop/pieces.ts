import { type Box, boundingBox, boxExtent } from '../../../src/geometry/box.ts'
import { boxSolid, type Solid, solidBounds } from '../../../src/geometry/solid.ts'
import { ORIGIN } from '../../../src/geometry/vector.ts'
import type { Part } from '../../../src/hive/part.ts'

const AXES = ['x', 'y', 'z'] as const

/** A box from its low corner and its extents. */
export const at = (x: number, y: number, z: number, dx: number, dy: number, dz: number): Box => ({
  x0: x,
  x1: x + dx,
  y0: y,
  y1: y + dy,
  z0: z,
  z1: z + dz,
})

/** A spruce part for tests, its finished size read off the box around it: grain first, then longest first. */
export const piece = (
  solids: readonly Solid[] | readonly Box[],
  changes: Partial<Part> = {},
): Part => {
  const bodies = solids.map((s): Solid => ('kind' in s ? s : boxSolid(s)))
  const bounds = boundingBox(bodies.map(solidBounds))
  const grain =
    changes.grain ?? AXES.reduce((a, b) => (boxExtent(bounds, b) > boxExtent(bounds, a) ? b : a))
  const others = AXES.filter((axis) => axis !== grain)
    .map((axis) => boxExtent(bounds, axis))
    .sort((a, b) => b - a)
  const [width = 0, thickness = 0, third] = grain === 'none' ? others.slice(1) : others
  return {
    id: 'part',
    name: 'Part',
    group: 'front-wall',
    motion: 'fixed',
    material: 'spruce',
    size: {
      length: grain === 'none' ? (others[0] ?? 0) : boxExtent(bounds, grain),
      width,
      thickness: third ?? thickness,
    },
    grain,
    solids: bodies,
    operations: [],
    fixedTo: [],
    explode: { direction: ORIGIN, layer: 1 },
    step: 1,
    bought: false,
    ...changes,
  }
}
