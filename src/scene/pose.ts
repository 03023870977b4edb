import { ORIGIN, type Vec3, vec3 } from '../geometry/vector.ts'
import type { Hive } from '../hive/hive.ts'
import type { Part } from '../hive/part.ts'
import type { ViewState } from '../store/viewStore.ts'
import { explodeOffset, planExplode } from './explodePlan.ts'
import { type LiftFacts, measureLift } from './liftFacts.ts'
import { minus, plus } from './vectors.ts'

/** What of the view state moves parts. */
export type PoseView = Pick<
  ViewState,
  'explode' | 'lidOpen' | 'floorOpen' | 'liftedFrame' | 'frameLift' | 'camera' | 'assembly'
>

/** Where a part stands against its place in the closed hive: first turned, then moved. */
export interface PartPose {
  readonly translation: Vec3
  /** A right-handed turn about the line through `pivot` along +x; undefined when there is none. */
  readonly turn: { readonly angleRad: number; readonly pivot: Vec3 } | undefined
  /** True when the part is taken off, so that it would only stand in the way. */
  readonly hidden: boolean
}

/** A closed hive, nothing moved. */
export const CLOSED_VIEW: PoseView = {
  explode: 0,
  lidOpen: 0,
  floorOpen: 0,
  liftedFrame: 0,
  frameLift: 0,
  camera: { preset: 'three-quarter', serial: 0 },
  assembly: undefined,
}

/** Room in mm between the box and the lower edge of a frame that is lifted right out. */
const LIFT_CLEARANCE = 120

/**
 * The place of `part` for this view. Pure; an index or a hinge that the hive lacks moves nothing.
 * A frame can't come out under a closed lid, so any lift shows the lid open and the covers aside.
 */
export const partPose = (part: Part, hive: Hive, view: PoseView): PartPose => {
  const exploded = explodeOffset(part, planExplode(hive), view.explode)
  const lift = view.frameLift > 0 ? measureLift(hive, view.liftedFrame) : undefined
  const moved = lift === undefined ? UNMOVED : liftedPlace(part, hive, { lift, view })
  // Who looks into the open hive wants to see the frames, not the boards over them.
  const isUncovered = part.motion === 'cover' && view.camera.preset === 'inside' && view.lidOpen > 0
  return {
    translation: plus(exploded, moved.translation),
    turn: hingeTurn(part, hive, view),
    hidden: moved.hidden || isUncovered,
  }
}

/** The turn of a lid or floor part about its hinge. */
const hingeTurn = (part: Part, hive: Hive, view: PoseView): PartPose['turn'] => {
  if (part.motion !== 'lid' && part.motion !== 'floor') return undefined
  const lid = view.frameLift > 0 ? 1 : view.lidOpen
  const open = part.motion === 'lid' ? lid : view.floorOpen
  const hinge = hive.hinges.find((h) => h.motion === part.motion)
  if (open <= 0 || hinge === undefined) return undefined
  return { angleRad: (hinge.sense * open * hinge.openDeg * Math.PI) / 180, pivot: hinge.point }
}

const UNMOVED = { translation: ORIGIN, hidden: false } as const

/** Raises the lifted frame and clears the cover boards over it. */
const liftedPlace = (
  part: Part,
  hive: Hive,
  { lift, view }: { readonly lift: LiftFacts; readonly view: PoseView },
): { readonly translation: Vec3; readonly hidden: boolean } => {
  if (part.motion === 'frame' && part.index === view.liftedFrame) {
    const rise = view.frameLift * (hive.dimensions.frameDepth + LIFT_CLEARANCE)
    return { translation: vec3(0, rise, 0), hidden: false }
  }
  if (part.motion !== 'cover') return UNMOVED
  const aside = lift.asideByCover.get(part.index ?? -1)
  if (aside === undefined) return UNMOVED
  return aside === 'off'
    ? { translation: ORIGIN, hidden: true }
    : { translation: aside, hidden: false }
}

/** The posed place of a point of the closed hive. */
export const applyPose = (pose: PartPose, p: Vec3): Vec3 => {
  const turned = pose.turn === undefined ? p : turnAboutX(p, pose.turn.pivot, pose.turn.angleRad)
  return plus(turned, pose.translation)
}

/** The place in the closed hive of a posed point; undoes `applyPose`. */
export const undoPose = (pose: PartPose, p: Vec3): Vec3 => {
  const back = minus(p, pose.translation)
  return pose.turn === undefined ? back : turnAboutX(back, pose.turn.pivot, -pose.turn.angleRad)
}

/** A direction of the closed hive, as the posed part has it. */
export const applyPoseDirection = (pose: PartPose, d: Vec3): Vec3 =>
  pose.turn === undefined ? d : turnAboutX(d, ORIGIN, pose.turn.angleRad)

/** A direction of the posed part, as seen in the closed hive. */
export const undoPoseDirection = (pose: PartPose, d: Vec3): Vec3 =>
  pose.turn === undefined ? d : turnAboutX(d, ORIGIN, -pose.turn.angleRad)

const turnAboutX = (p: Vec3, pivot: Vec3, angleRad: number): Vec3 => {
  const [c, s] = [Math.cos(angleRad), Math.sin(angleRad)]
  const [y, z] = [p.y - pivot.y, p.z - pivot.z]
  return vec3(p.x, pivot.y + c * y - s * z, pivot.z + s * y + c * z)
}
