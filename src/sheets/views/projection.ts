import type { Vec3 } from '../../geometry/vector.ts'
import type { ModelPoint } from '../view.ts'

/** A parallel projection: where the paper's right and up point, and the way to the viewer. Unit vectors. */
export interface Projection {
  readonly right: Vec3
  readonly up: Vec3
  readonly toViewer: Vec3
}

export const dot = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z

export const project = (p: Projection, at: Vec3): ModelPoint => ({
  u: dot(p.right, at),
  v: dot(p.up, at),
})

const axis = (x: number, y: number, z: number): Vec3 => ({ x, y, z })

/** Seen by a person who stands in front of the hive. */
export const FROM_FRONT: Projection = {
  right: axis(1, 0, 0),
  up: axis(0, 1, 0),
  toViewer: axis(0, 0, 1),
}
/** Seen from the right-hand end: the front of the hive is at the left of the paper. */
export const FROM_RIGHT: Projection = {
  right: axis(0, 0, -1),
  up: axis(0, 1, 0),
  toViewer: axis(1, 0, 0),
}
/** Seen from the left-hand end: the front of the hive is at the right of the paper. */
export const FROM_LEFT: Projection = {
  right: axis(0, 0, 1),
  up: axis(0, 1, 0),
  toViewer: axis(-1, 0, 0),
}
/** Seen from above; the front of the hive is at the foot of the paper. */
export const FROM_ABOVE: Projection = {
  right: axis(1, 0, 0),
  up: axis(0, 0, -1),
  toViewer: axis(0, 1, 0),
}

/**
 * Seen from the front, turned `turnDeg` to the right of it and `riseDeg` above the ground: an
 * axonometric view, so edges along one axis stay parallel and to one scale.
 */
export const fromCorner = (turnDeg: number, riseDeg: number): Projection => {
  const [turn, rise] = [(turnDeg * Math.PI) / 180, (riseDeg * Math.PI) / 180]
  const [st, ct, sr, cr] = [Math.sin(turn), Math.cos(turn), Math.sin(rise), Math.cos(rise)]
  return {
    right: axis(ct, 0, -st),
    up: axis(-sr * st, cr, -sr * ct),
    toViewer: axis(cr * st, sr, cr * ct),
  }
}
