import { type Box, box } from '../../src/geometry/box.ts'
import { solidBounds } from '../../src/geometry/solid.ts'
import type { Hive } from '../../src/hive/hive.ts'
import type { Part } from '../../src/hive/part.ts'

/** Whether a part is insulation, by the last word of its id. */
export const isInsulation = (part: Part): boolean => /\/insulation(-\d+)?$/.test(part.id)

/** Where bees can be: the rooms, and the rebates over the ledges that the lugs hang in. */
export const beeRooms = ({ cavities, dimensions: d }: Hive): readonly Box[] => [
  ...cavities.map((c) => c.box),
  ...[1, -1].map((side) => {
    const [inner, outer] = [(side * d.cavityWidth) / 2, side * (d.cavityWidth / 2 + d.seatWidth)]
    return box(
      [0, d.cavityLength],
      [d.restHeight, d.coverLedgeHeight],
      [Math.min(inner, outer), Math.max(inner, outer)],
    )
  }),
]

/** Volume that two boxes share, mm³. */
export const sharedVolume = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0)) *
  Math.max(0, Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0)) *
  Math.max(0, Math.min(a.z1, b.z1) - Math.max(a.z0, b.z0))

/** Whether a place lies in some part's solids or on their faces; parts are taken as the boxes around their solids. */
export const isSolidAt = (
  parts: readonly Part[],
  { x, y, z }: { readonly x: number; readonly y: number; readonly z: number },
): boolean =>
  parts.some((p) =>
    p.solids.some((s) => {
      const b = solidBounds(s)
      return b.x0 <= x && x <= b.x1 && b.y0 <= y && y <= b.y1 && b.z0 <= z && z <= b.z1
    }),
  )
