import { materialById } from '../../../catalog/materials.ts'
import type { Box } from '../../../geometry/box.ts'
import { solidBounds } from '../../../geometry/solid.ts'
import { TOUCH_TOLERANCE } from '../../../geometry/tolerance.ts'
import type { Axis } from '../../../geometry/vector.ts'
import type { Part } from '../../../hive/part.ts'
import type { FamilyId } from './jointFamilies.ts'

/** A part as a fastener sees it. */
export interface Member {
  readonly part: Part
  readonly box: Box
  /** Sheets split in no direction; metal and cloth keep no distances at all. */
  readonly kind: 'wood' | 'sheet' | 'thin'
}

/** One direction of the face that parts share: the face itself, and how far the parts reach past it. */
export interface Span {
  readonly from: number
  readonly to: number
  /** The innermost ends and edges of the parts: an end is across the grain, an edge along it. */
  readonly endFrom: number
  readonly endTo: number
  readonly edgeFrom: number
  readonly edgeTo: number
}

/** A face that parts share, and what a fastener through it passes. All mm. */
export interface Contact {
  readonly family: FamilyId
  /** Head first, point last. */
  readonly layers: readonly { readonly part: Part; readonly thickness: number }[]
  /** The two directions of the face: the longer first. */
  readonly along: Span
  readonly across: Span
  /** Whether any part's grain runs along the longer direction. */
  readonly grainAlong: boolean
  /** The point goes into end grain. */
  readonly endGrain: boolean
  /** Holes through the parts, as from and to along, then from and to across. */
  readonly holes: readonly (readonly [number, number, number, number])[]
  /** Fasteners wanted, where the family leaves it open. */
  readonly count: number | undefined
}

/** What a builder of contacts may say besides the parts. */
export interface ContactExtra {
  readonly holes?: readonly Box[]
  readonly count?: number
  /** Thickness of the layers where a slope makes it differ from the parts' boxes. */
  readonly thicknesses?: readonly number[]
  /** Part of the face that may be used. */
  readonly within?: Box
}

/** Less than this of a common face holds no fastener, mm. */
const LEAST_FACE = 6

export const memberOf = (part: Part): Member => {
  const [first, ...rest] = part.solids
  let box = first === undefined ? NOWHERE : solidBounds(first)
  for (const solid of rest) box = grow(box, solidBounds(solid))
  return { part, box, kind: kindOf(part.material) }
}

const NOWHERE: Box = { x0: 0, x1: 0, y0: 0, y1: 0, z0: 0, z1: 0 }

const grow = (a: Box, b: Box): Box => ({
  x0: Math.min(a.x0, b.x0),
  x1: Math.max(a.x1, b.x1),
  y0: Math.min(a.y0, b.y0),
  y1: Math.max(a.y1, b.y1),
  z0: Math.min(a.z0, b.z0),
  z1: Math.max(a.z1, b.z1),
})

const kindOf = (material: string): Member['kind'] => {
  const { family } = materialById(material)
  return family === 'wood' ? 'wood' : family === 'sheet' ? 'sheet' : 'thin'
}

const low = (b: Box, axis: Axis): number => (axis === 'x' ? b.x0 : axis === 'y' ? b.y0 : b.z0)
const high = (b: Box, axis: Axis): number => (axis === 'x' ? b.x1 : axis === 'y' ? b.y1 : b.z1)

const OTHERS: Readonly<Record<Axis, readonly [Axis, Axis]>> = {
  x: ['y', 'z'],
  y: ['x', 'z'],
  z: ['x', 'y'],
}

/**
 * The face that a pile of parts shares along an axis, head first, when each touches the next and all
 * share enough of a face; otherwise undefined. `members` run towards the axis' positive side for
 * `way` 1, else towards its negative side.
 */
export const findContact = (
  family: FamilyId,
  members: readonly Member[],
  axis: Axis,
  way: 1 | -1,
  extra: ContactExtra = {},
): Contact | undefined => {
  for (let i = 0; i + 1 < members.length; i += 1) {
    const [a, b] = [members[i], members[i + 1]]
    if (a === undefined || b === undefined) return undefined
    // Slopes are told apart by whoever gives the thicknesses.
    if (extra.thicknesses !== undefined) continue
    const gap =
      way === 1 ? low(b.box, axis) - high(a.box, axis) : low(a.box, axis) - high(b.box, axis)
    if (Math.abs(gap) > TOUCH_TOLERANCE) return undefined
  }
  const [u, v] = OTHERS[axis]
  const first = spanOf(members, u, extra.within)
  if (first.to - first.from < LEAST_FACE) return undefined
  const second = spanOf(members, v, extra.within)
  if (second.to - second.from < LEAST_FACE) return undefined
  const swap = second.to - second.from > first.to - first.from
  const [a, b] = swap ? [v, u] : [u, v]
  const [along, across] = swap ? [second, first] : [first, second]
  const point = members.at(-1)
  return {
    family,
    layers: members.map(({ part, box }, i) => ({
      part,
      thickness: extra.thicknesses?.[i] ?? high(box, axis) - low(box, axis),
    })),
    along,
    across,
    grainAlong: members.some((m) => m.kind === 'wood' && m.part.grain === a),
    endGrain: point?.kind === 'wood' && point.part.grain === axis,
    holes: extra.holes === undefined ? NO_HOLES : holesNear(extra.holes, [a, b], [along, across]),
    count: extra.count,
  }
}

const NO_HOLES: Contact['holes'] = []
/** A hole further from a face than the largest edge distance changes nothing there, mm. */
const NEAR = 30

const holesNear = (
  holes: readonly Box[],
  [a, b]: readonly [Axis, Axis],
  [along, across]: readonly [Span, Span],
): Contact['holes'] => {
  const near = holes.filter(
    (h) =>
      low(h, a) < along.to + NEAR &&
      high(h, a) > along.from - NEAR &&
      low(h, b) < across.to + NEAR &&
      high(h, b) > across.from - NEAR,
  )
  return near.length === 0
    ? NO_HOLES
    : near.map((h) => [low(h, a), high(h, a), low(h, b), high(h, b)] as const)
}

const spanOf = (members: readonly Member[], axis: Axis, within: Box | undefined): Span => {
  let from = within === undefined ? -Infinity : low(within, axis)
  let to = within === undefined ? Infinity : high(within, axis)
  let [endFrom, endTo, edgeFrom, edgeTo] = [-Infinity, Infinity, -Infinity, Infinity]
  for (const { part, box, kind } of members) {
    const [lo, hi] = [low(box, axis), high(box, axis)]
    from = Math.max(from, lo)
    to = Math.min(to, hi)
    if (kind === 'thin') continue
    if (kind === 'wood' && part.grain === axis) {
      endFrom = Math.max(endFrom, lo)
      endTo = Math.min(endTo, hi)
    } else {
      edgeFrom = Math.max(edgeFrom, lo)
      edgeTo = Math.min(edgeTo, hi)
    }
  }
  return { from, to, endFrom, endTo, edgeFrom, edgeTo }
}

/** Area of the face, mm². */
export const contactArea = ({ along, across }: Contact): number =>
  (along.to - along.from) * (across.to - across.from)
