import { type Box, boundingBox } from '../geometry/box.ts'
import { solidBounds } from '../geometry/solid.ts'
import { type Vec3, vec3 } from '../geometry/vector.ts'
import type { Hive } from '../hive/hive.ts'
import type { Part } from '../hive/part.ts'
import { applyPose, CLOSED_VIEW, type PartPose, type PoseView, partPose } from './pose.ts'

/** A part with its place in the present view. */
export interface PosedPart {
  readonly part: Part
  readonly pose: PartPose
  /** The box around the part in the closed hive. */
  readonly closed: Box
}

/**
 * All parts of the hive in their places for this view, in the order of `hive.parts`. In a step of
 * assembly what is there stands in its place, and all else is hidden, whatever is open or apart.
 */
export const poseParts = (hive: Hive, view: PoseView): readonly PosedPart[] => {
  const closed = closedBounds(hive)
  const { assembly } = view
  const standing = assembly && new Set([...assembly.solid, ...assembly.fresh])
  return hive.parts.map((part, i) => ({
    part,
    pose:
      standing === undefined
        ? partPose(part, hive, view)
        : { ...partPose(part, hive, CLOSED_VIEW), hidden: !standing.has(part.id) },
    closed: closed[i] ?? EMPTY,
  }))
}

const EMPTY: Box = { x0: 0, x1: 0, y0: 0, y1: 0, z0: 0, z1: 0 }

let lastHive: Hive | undefined
let last: readonly Box[] = []

/** The box around each part of the closed hive; remembered for the latest hive. */
export const closedBounds = (hive: Hive): readonly Box[] => {
  if (hive === lastHive) return last
  lastHive = hive
  last = hive.parts.map((p) => boundingBox(p.solids.map(solidBounds)))
  return last
}

/** Corners of the boxes around all posed parts: what a camera must hold. Hidden parts don't count. */
export const posedCorners = (posed: readonly PosedPart[]): readonly Vec3[] => {
  const out: Vec3[] = []
  for (const { pose, closed: b } of posed) {
    if (pose.hidden) continue
    for (let i = 0; i < 8; i++) {
      const corner = vec3(i & 1 ? b.x1 : b.x0, i & 2 ? b.y1 : b.y0, i & 4 ? b.z1 : b.z0)
      out.push(applyPose(pose, corner))
    }
  }
  return out
}

/** The box around points; a box of no size at the origin when there are none. */
export const boundsOfPoints = (points: readonly Vec3[]): Box => {
  const first = points[0]
  if (first === undefined) return EMPTY
  const b = { x0: first.x, x1: first.x, y0: first.y, y1: first.y, z0: first.z, z1: first.z }
  for (const p of points) {
    b.x0 = Math.min(b.x0, p.x)
    b.x1 = Math.max(b.x1, p.x)
    b.y0 = Math.min(b.y0, p.y)
    b.y1 = Math.max(b.y1, p.y)
    b.z0 = Math.min(b.z0, p.z)
    b.z1 = Math.max(b.z1, p.z)
  }
  return b
}
