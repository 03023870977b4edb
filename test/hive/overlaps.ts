import { type Solid, solidBounds } from '../../src/geometry/solid.ts'
import { separation } from '../../src/geometry/separation.ts'
import type { Part } from '../../src/hive/part.ts'

interface Piece {
  readonly part: Part
  readonly solid: Solid
  readonly x0: number
  readonly x1: number
}

/** Pairs of solids that reach into each other by more than `tolerance`, found by a sweep along x. */
export const overlapsIn = (parts: readonly Part[], tolerance: number): readonly string[] => {
  const pieces: Piece[] = parts
    .flatMap((part) =>
      part.solids.map((solid) => {
        const { x0, x1 } = solidBounds(solid)
        return { part, solid, x0, x1 }
      }),
    )
    .sort((a, b) => a.x0 - b.x0)
  const found: string[] = []
  let active: Piece[] = []
  for (const p of pieces) {
    active = active.filter((a) => a.x1 > p.x0 + tolerance)
    for (const a of active) {
      const depth = -separation(a.solid, p.solid)
      if (depth > tolerance) found.push(`${a.part.id} and ${p.part.id} overlap by ${depth.toFixed(4)}`)
    }
    active.push(p)
  }
  return found
}
