import { type Vec3, vec3 } from '../geometry/vector.ts'
import { cross, dot, plus, scaled, unit } from './vectors.ts'

/** A camera that looks from `eye` at `target` and whose picture holds all the points. */
export interface CameraPlace {
  readonly eye: Vec3
  readonly target: Vec3
}

export interface FitFrame {
  /** From the target towards the eye; of any length but not along y. */
  readonly direction: Vec3
  /** Height of the field of view, degrees. */
  readonly fovDeg: number
  /** Width over height of the picture. */
  readonly aspect: number
  /** Share of the picture left free at each side, 0 to below 0.5. */
  readonly margin: number
}

/**
 * The nearest place from which a perspective camera sees every point, with the picture centred on
 * them. Exact: each side of the view pyramid is moved in until it touches a point. Throws when there
 * are no points.
 */
export const fitCamera = (points: readonly Vec3[], frame: FitFrame): CameraPlace => {
  if (points.length === 0) throw new Error('fitCamera: no points')
  const axes = cameraAxes(frame.direction)
  const tanV = Math.tan((frame.fovDeg * Math.PI) / 360) * (1 - 2 * frame.margin)
  const tanH = Math.tan((frame.fovDeg * Math.PI) / 360) * frame.aspect * (1 - 2 * frame.margin)
  const across = touch(points, { side: axes.right, towards: axes.back, tan: tanH })
  const upright = touch(points, { side: axes.up, towards: axes.back, tan: tanV })
  const depth = Math.max(across.depth, upright.depth)
  const nearest = Math.max(...points.map((p) => dot(p, axes.back)))
  const farthest = Math.min(...points.map((p) => dot(p, axes.back)))
  // The target lies in the middle of the depth, so that orbiting turns about the hive's middle.
  const middle = (Math.min(nearest, depth) + farthest) / 2
  const at = (back: number): Vec3 =>
    [
      scaled(axes.right, across.centre),
      scaled(axes.up, upright.centre),
      scaled(axes.back, back),
    ].reduce(plus)
  return { eye: at(depth), target: at(middle) }
}

/** Unit axes of a camera that stands towards `direction` from what it looks at, level with y. */
export const cameraAxes = (
  direction: Vec3,
): { readonly right: Vec3; readonly up: Vec3; readonly back: Vec3 } => {
  const back = unit(direction)
  const right = unit(vec3(back.z, 0, -back.x))
  return { right, up: cross(back, right), back }
}

/** Coordinate of the eye along `side` and `towards` at which both view planes touch the points. */
const touch = (
  points: readonly Vec3[],
  { side, towards, tan }: { readonly side: Vec3; readonly towards: Vec3; readonly tan: number },
): { readonly depth: number; readonly centre: number } => {
  // A point at (s, n) is inside when |s - centre| <= tan * (depth - n).
  const right = Math.max(...points.map((p) => dot(p, side) + tan * dot(p, towards)))
  const left = Math.max(...points.map((p) => -dot(p, side) + tan * dot(p, towards)))
  return { depth: (right + left) / (2 * tan), centre: (right - left) / 2 }
}
