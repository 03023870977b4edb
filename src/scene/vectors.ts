import { type Vec3, vec3 } from '../geometry/vector.ts'

export const plus = (a: Vec3, b: Vec3): Vec3 => vec3(a.x + b.x, a.y + b.y, a.z + b.z)
export const minus = (a: Vec3, b: Vec3): Vec3 => vec3(a.x - b.x, a.y - b.y, a.z - b.z)
export const scaled = (a: Vec3, k: number): Vec3 => vec3(a.x * k, a.y * k, a.z * k)
export const dot = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z
export const cross = (a: Vec3, b: Vec3): Vec3 =>
  vec3(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x)

/** The direction of `a`; the null vector stays as it is. */
export const unit = (a: Vec3): Vec3 => scaled(a, 1 / (Math.sqrt(dot(a, a)) || 1))

/** The point `share` of the way from `a` to `b`. */
export const between = (a: Vec3, b: Vec3, share: number): Vec3 =>
  plus(a, scaled(minus(b, a), share))
