import { type Box, boundingBox } from '../geometry/box.ts'
import { solidBounds } from '../geometry/solid.ts'
import { type Vec3, vec3 } from '../geometry/vector.ts'
import type { Hive } from '../hive/hive.ts'
import type { Part } from '../hive/part.ts'

/** What must get out of the way of one lifted frame. */
export interface LiftFacts {
  /** Where each cover over the frame goes; `off` when it is too long to lie on its neighbour. */
  readonly asideByCover: ReadonlyMap<number, Vec3 | 'off'>
}

/** A cover longer than this share of the cavity can't be laid on the others. */
const LONGEST_STACKED = 0.5
/** Height at which a moved cover board lies above its neighbours, mm. */
const STACK_GAP = 6

/**
 * Finds the covers over frame `index` and a place for each on its neighbour, as a keeper stacks
 * them. Undefined when the hive has no such frame. Remembered for the latest hive and frame.
 */
export const measureLift = (hive: Hive, index: number): LiftFacts | undefined => {
  if (hive === lastHive && index === lastIndex) return last
  lastHive = hive
  lastIndex = index
  last = findCovers(hive, index)
  return last
}

let lastHive: Hive | undefined
let lastIndex = -1
let last: LiftFacts | undefined

const findCovers = (hive: Hive, index: number): LiftFacts | undefined => {
  const frame = boundsOf(hive.parts.filter((p) => p.motion === 'frame' && p.index === index))
  if (frame === undefined) return undefined
  const covers = groupCovers(hive.parts)
  const asideByCover = new Map<number, Vec3 | 'off'>()
  for (const [cover, parts] of covers) {
    const b = boundsOf(parts)
    if (b === undefined || b.x1 <= frame.x0 || b.x0 >= frame.x1) continue
    asideByCover.set(cover, placeAside(b, { frame, cavityLength: hive.dimensions.cavityLength }))
  }
  return { asideByCover }
}

/** Onto the neighbour on the side where the board reaches further from the frame, and inside. */
const placeAside = (
  cover: Box,
  { frame, cavityLength }: { readonly frame: Box; readonly cavityLength: number },
): Vec3 | 'off' => {
  const length = cover.x1 - cover.x0
  if (length > LONGEST_STACKED * cavityLength) return 'off'
  const rise = cover.y1 - cover.y0 + STACK_GAP
  const toLeft = frame.x0 - length - cover.x0
  const toRight = frame.x1 - cover.x0
  const leftFits = cover.x0 + toLeft >= 0
  const rightFits = cover.x1 + toRight <= cavityLength
  const nearer = -toLeft <= toRight ? toLeft : toRight
  const move = leftFits === rightFits ? nearer : leftFits ? toLeft : toRight
  return vec3(move, rise, 0)
}

const groupCovers = (parts: readonly Part[]): ReadonlyMap<number, readonly Part[]> => {
  const groups = new Map<number, Part[]>()
  for (const part of parts) {
    if (part.motion !== 'cover') continue
    const key = part.index ?? -1
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [part])
    else group.push(part)
  }
  return groups
}

const boundsOf = (parts: readonly Part[]): Box | undefined => {
  const boxes = parts.flatMap((p) => p.solids.map(solidBounds))
  return boxes.length === 0 ? undefined : boundingBox(boxes)
}
