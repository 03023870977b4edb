import type { Box } from '../../src/geometry/box.ts'
import { separation } from '../../src/geometry/separation.ts'
import { type Solid, solidBounds } from '../../src/geometry/solid.ts'
import type { Part } from '../../src/hive/part.ts'

interface Piece {
  readonly part: Part
  readonly solid: Solid
  readonly bounds: Box
}

/** Whether two boxes reach into each other across x by more than `tolerance`. */
const meetAcross = (a: Box, b: Box, tolerance: number): boolean =>
  Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0) > tolerance &&
  Math.min(a.z1, b.z1) - Math.max(a.z0, b.z0) > tolerance

/** Pairs of solids that reach into each other by more than `tolerance`, found by a sweep along x. */
export const overlapsIn = (parts: readonly Part[], tolerance: number): readonly string[] => {
  const pieces: Piece[] = parts
    .flatMap((part) => part.solids.map((solid) => ({ part, solid, bounds: solidBounds(solid) })))
    .sort((a, b) => a.bounds.x0 - b.bounds.x0)
  const found: string[] = []
  let active: Piece[] = []
  for (const p of pieces) {
    active = active.filter((a) => a.bounds.x1 > p.bounds.x0 + tolerance)
    for (const a of active) {
      if (!meetAcross(a.bounds, p.bounds, tolerance)) continue
      const depth = -separation(a.solid, p.solid)
      if (depth > tolerance)
        found.push(`${a.part.id} and ${p.part.id} overlap by ${depth.toFixed(4)}`)
    }
    active.push(p)
  }
  return found
}
