import type { Box } from '../geometry/box.ts'
import type { Solid } from '../geometry/solid.ts'
import { frameSolid } from '../geometry/solidFrame.ts'
import { type Vec3, vec3 } from '../geometry/vector.ts'
import type { Part } from '../hive/part.ts'
import { boxUnionEdges, type Segments } from './boxUnionEdges.ts'
import { applyPose, type PartPose } from './pose.ts'
import { between } from './vectors.ts'

/** A plane across x or z; what lies beyond it (greater coordinate) is cut away. */
export interface SectionPlane {
  readonly axis: 'x' | 'z'
  readonly at: number
}

/** The cut face of one part: convex pieces to fill, and the outline of the whole. */
export interface SectionCap {
  readonly partId: string
  readonly material: string
  /** Of the part, mm. */
  readonly thickness: number
  readonly pieces: readonly (readonly Vec3[])[]
  readonly outline: Segments
  readonly pose: PartPose
}

/** The cut faces of all parts that the plane passes through, in their posed places. */
export const sectionCaps = (
  posed: readonly { readonly part: Part; readonly pose: PartPose }[],
  plane: SectionPlane,
): readonly SectionCap[] =>
  posed.flatMap(({ part, pose }) => {
    if (pose.hidden) return []
    const pieces = part.solids.flatMap((solid) => {
      const piece = cutSolid(solid, pose, plane)
      return piece === undefined ? [] : [piece]
    })
    if (pieces.length === 0) return []
    const outline = outlineOf(part, pose, plane) ?? pieces.flatMap(loopSegments)
    const { id: partId, material, size } = part
    return [{ partId, material, thickness: size.thickness, pieces, outline, pose }]
  })

/**
 * The convex polygon where the plane cuts a posed solid, or undefined. The polygon's corners are
 * where the solid's edges cross the plane, put in order about their middle. A corner on the plane
 * counts as beyond it, so a solid that only touches has no cut face.
 */
export const cutSolid = (
  solid: Solid,
  pose: PartPose,
  plane: SectionPlane,
): readonly Vec3[] | undefined => {
  const { corners, edges } = frameSolid(solid)
  const placed = corners.map((c) => applyPose(pose, c))
  const beyond = placed.map((p) => p[plane.axis] - plane.at)
  if (beyond.every((d) => d >= 0) || beyond.every((d) => d < 0)) return undefined
  const crossings = edges.flatMap(([i, j]) => {
    const [a, b, da, db] = [placed[i], placed[j], beyond[i], beyond[j]]
    if (a === undefined || b === undefined || da === undefined || db === undefined) return []
    return da >= 0 === db >= 0 ? [] : [between(a, b, da / (da - db))]
  })
  const ordered = orderRound(crossings, plane)
  return ordered.length < 3 ? undefined : ordered
}

/** Anticlockwise as seen from the side that is cut away. */
const orderRound = (points: readonly Vec3[], plane: SectionPlane): readonly Vec3[] => {
  const flat = points.map((point) => ({ point, ...inPlane(point, plane) }))
  const u = flat.reduce((sum, f) => sum + f.u, 0) / flat.length
  const v = flat.reduce((sum, f) => sum + f.v, 0) / flat.length
  return flat
    .map((f) => ({ point: f.point, angle: Math.atan2(f.v - v, f.u - u) }))
    .sort((a, b) => a.angle - b.angle)
    .map((f) => f.point)
}

const inPlane = (p: Vec3, plane: SectionPlane): { readonly u: number; readonly v: number } =>
  plane.axis === 'x' ? { u: -p.z, v: p.y } : { u: p.x, v: p.y }

const loopSegments = (loop: readonly Vec3[]): number[] =>
  loop.flatMap((a, i) => {
    const b = loop[(i + 1) % loop.length] ?? a
    return [a.x, a.y, a.z, b.x, b.y, b.z]
  })

/**
 * The outline of a part of boxes without the seams between them, while the part is still square to
 * the plane's axis. Undefined when it must be drawn piece by piece.
 */
const outlineOf = (part: Part, pose: PartPose, plane: SectionPlane): number[] | undefined => {
  const square = pose.turn === undefined || plane.axis === 'x'
  const boxes = part.solids.flatMap((s) => (s.kind === 'box' ? [s.box] : []))
  if (!square || boxes.length < 2 || boxes.length !== part.solids.length) return undefined
  // A turn about x leaves x alone, so the plane can be moved back into the closed hive.
  const at = plane.at - pose.translation[plane.axis]
  const slices = boxes
    .filter((b) => crosses(b, plane.axis, at))
    .map((b) => slice(b, plane.axis, at))
  const segments = boxUnionEdges(slices)
  const out: number[] = []
  for (let i = 0; i < segments.length; i += 6) {
    const [a, b] = [pointFrom(segments, i), pointFrom(segments, i + 3)]
    if (a[plane.axis] !== at || b[plane.axis] !== at) continue
    const [p, q] = [applyPose(pose, a), applyPose(pose, b)]
    out.push(p.x, p.y, p.z, q.x, q.y, q.z)
  }
  return out
}

const crosses = (b: Box, axis: 'x' | 'z', at: number): boolean =>
  axis === 'x' ? b.x0 < at && at <= b.x1 : b.z0 < at && at <= b.z1

/** The box made 1 mm thin, with its far face in the plane. */
const slice = (b: Box, axis: 'x' | 'z', at: number): Box =>
  axis === 'x' ? { ...b, x0: at - 1, x1: at } : { ...b, z0: at - 1, z1: at }

const pointFrom = (s: Segments, i: number): Vec3 => vec3(s[i] ?? 0, s[i + 1] ?? 0, s[i + 2] ?? 0)
