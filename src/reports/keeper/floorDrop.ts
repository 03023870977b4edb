import { type Box, boundingBox } from '../../geometry/box.ts'
import { polygonsMeet } from '../../geometry/polygonsMeet.ts'
import { type Point2, type Solid, solidBounds } from '../../geometry/solid.ts'
import type { Hinge, Hive } from '../../hive/hive.ts'

/** A floor that swings further than this hangs the wrong way up, degrees. */
const FULL_SWING = 180
const STEP_DEG = 0.5
/** What only touches does not stop the floor, mm. */
const TOUCH = 0.01

/**
 * The largest angle, degrees, to which the floor can drop before it meets the ground (exact) or a
 * part of the stand (in steps of half a degree). The floor is taken as the box around its boards.
 * 0 without a hinged floor; at most 180.
 */
export const floorDropLimitDeg = (hive: Pick<Hive, 'parts' | 'hinges' | 'dimensions'>): number => {
  const hinge = hive.hinges.find(({ motion }) => motion === 'floor')
  const boards = hive.parts.filter(({ motion, group }) => motion === 'floor' && group === 'floor')
  if (hinge === undefined || boards.length === 0) return 0
  const panel = boundingBox(boards.flatMap(({ solids }) => solids.map(solidBounds)))
  const ground = groundLimitDeg(panel, hinge, hive.dimensions.groundHeight)
  const stand = hive.parts.filter(({ group }) => group === 'stand')
  return standLimitDeg(
    panel,
    hinge,
    stand.flatMap(({ solids }) => solids),
    ground,
  )
}

/** The turn about +x that opens by `deg`, as sine and cosine. */
const turnOf = ({ sense }: Hinge, deg: number): { readonly sin: number; readonly cos: number } => {
  const angle = (sense * deg * Math.PI) / 180
  return { sin: Math.sin(angle), cos: Math.cos(angle) }
}

/** Corners of the panel's end face: u is z and v is y, both from the hinge. */
const facesOf = (panel: Box, { point }: Hinge): readonly Point2[] => {
  const [z0, z1, y0, y1] = [
    panel.z0 - point.z,
    panel.z1 - point.z,
    panel.y0 - point.y,
    panel.y1 - point.y,
  ]
  return [
    { u: z0, v: y0 },
    { u: z1, v: y0 },
    { u: z1, v: y1 },
    { u: z0, v: y1 },
  ]
}

/**
 * First angle at which a corner is as low as the ground. A corner at (y, z) from the hinge stands at
 * y cos t - s z sin t = R cos(t + p) with p = atan2(s z, y), so t = ±acos(ground / R) - p.
 */
const groundLimitDeg = (panel: Box, hinge: Hinge, groundHeight: number): number => {
  const ground = groundHeight - hinge.point.y
  let limit = FULL_SWING
  for (const { u, v } of facesOf(panel, hinge)) {
    const radius = Math.hypot(u, v)
    // This corner never comes down so far.
    if (radius <= Math.abs(ground)) continue
    const phase = Math.atan2(hinge.sense * u, v)
    const reach = Math.acos(ground / radius)
    for (const angle of [reach - phase, -reach - phase]) {
      const turns = 2 * Math.PI
      const deg = ((((angle % turns) + turns) % turns) * 180) / Math.PI
      limit = Math.min(limit, deg)
    }
  }
  return limit
}

const standLimitDeg = (
  panel: Box,
  hinge: Hinge,
  stand: readonly Solid[],
  limit: number,
): number => {
  const corners = facesOf(panel, hinge)
  const reach = Math.max(...corners.map(({ u, v }) => Math.hypot(u, v)))
  const obstacles = stand
    .filter((solid) => {
      const { x0, x1 } = solidBounds(solid)
      return x0 < panel.x1 - TOUCH && panel.x0 + TOUCH < x1
    })
    .map((solid) => outlineFrom(solid, hinge))
    .filter((outline) => nearestTo(outline) < reach)
  if (obstacles.length === 0) return limit
  for (let deg = STEP_DEG; deg < limit; deg += STEP_DEG) {
    const { sin, cos } = turnOf(hinge, deg)
    const swung = corners.map(({ u, v }) => ({ u: v * sin + u * cos, v: v * cos - u * sin }))
    if (obstacles.some((outline) => polygonsMeet(swung, outline, TOUCH))) return deg - STEP_DEG
  }
  return limit
}

/** Outline of a solid seen along x, from the hinge; a slope that does not run along x as its box. */
const outlineFrom = (solid: Solid, { point }: Hinge): readonly Point2[] => {
  if (solid.kind === 'prism' && solid.axis === 'x') {
    return solid.polygon.map(({ u, v }) => ({ u: u - point.z, v: v - point.y }))
  }
  const { y0, y1, z0, z1 } = solidBounds(solid)
  return [
    { u: z0 - point.z, v: y0 - point.y },
    { u: z1 - point.z, v: y0 - point.y },
    { u: z1 - point.z, v: y1 - point.y },
    { u: z0 - point.z, v: y1 - point.y },
  ]
}

/** Least distance of the box around an outline from the hinge, mm. */
const nearestTo = (outline: readonly Point2[]): number => {
  const gap = (values: readonly number[]): number =>
    Math.max(0, Math.min(...values), -Math.max(...values))
  return Math.hypot(gap(outline.map(({ u }) => u)), gap(outline.map(({ v }) => v)))
}
