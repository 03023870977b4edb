import {
  growRect,
  intersectRects,
  joinRects,
  type Rect,
  rect,
  rectArea,
  rectsOverlap,
  subtractRects,
} from '../geometry/rect.ts'
import { fillAround } from './fillAround.ts'

/** Timber left beside and above a hole that goes through a panel, mm. */
const BLOCK_SIDE = 20
const BLOCK_ABOVE = 12
/** A strip of insulation narrower than this is not worth cutting; the timber beside it grows. */
export const LEAST_POCKET = 20

export interface CoreTimber {
  readonly kind: 'rail' | 'stud' | 'block'
  readonly id: string
  readonly place: Rect
}

/** The core of a framed panel, seen face-on: rails that run through, studs between, insulation. */
export interface CoreLayout {
  readonly timbers: readonly CoreTimber[]
  readonly pockets: readonly Rect[]
  /** Largest distance between the middles of neighbouring studs. */
  readonly studSpacing: number
}

export interface CoreSpec {
  readonly outline: Rect
  readonly railWidth: number
  readonly maxSpacing: number
  /** Holes through the panel; each gets timber all round, so that insulation is never bare. */
  readonly holes: readonly Rect[]
}

const studBays = (length: number, railWidth: number, maxSpacing: number): number =>
  Math.max(1, Math.ceil((length - railWidth) / maxSpacing - 1e-9))

/** Distance between the middles of the studs in a panel of that length, mm. */
export const studPitch = (length: number, railWidth: number, maxSpacing: number): number =>
  (length - railWidth) / studBays(length, railWidth, maxSpacing)

/** Studs between the rails, the outermost flush with the ends, none further apart than `maxSpacing`. */
const layStuds = ({ outline, railWidth, maxSpacing }: CoreSpec) => {
  const length = outline.u1 - outline.u0
  const bays = studBays(length, railWidth, maxSpacing)
  const pitch = studPitch(length, railWidth, maxSpacing)
  const [v0, v1] = [outline.v0 + railWidth, outline.v1 - railWidth]
  const studs = Array.from({ length: bays + 1 }, (_, i) => {
    const u0 = i === bays ? outline.u1 - railWidth : outline.u0 + i * pitch
    return rect(u0, i === bays ? outline.u1 : u0 + railWidth, v0, v1)
  })
  return { studs, pitch }
}

/** Grows a block until it covers every stud it meets and leaves no pocket too narrow to fill. */
const settleBlock = (block: Rect, room: Rect, studs: readonly Rect[]): Rect => {
  let b = block
  if (b.v0 - room.v0 < LEAST_POCKET) b = { ...b, v0: room.v0 }
  if (room.v1 - b.v1 < LEAST_POCKET) b = { ...b, v1: room.v1 }
  for (const s of studs) {
    const near = b.u0 < s.u1 + LEAST_POCKET && s.u0 - LEAST_POCKET < b.u1
    if (!near) continue
    if (b.u0 < s.u1 && s.u0 < b.u1) b = { ...b, u0: Math.min(b.u0, s.u0), u1: Math.max(b.u1, s.u1) }
    else if (s.u1 <= b.u0) b = { ...b, u0: s.u1 }
    else b = { ...b, u1: s.u0 }
  }
  return b
}

const blocksFor = (spec: CoreSpec, room: Rect, studs: readonly Rect[]): readonly Rect[] => {
  let blocks: readonly Rect[] = spec.holes.flatMap((hole) => {
    const wanted = growRect(hole, BLOCK_SIDE, BLOCK_ABOVE)
    const inRoom = intersectRects(wanted, room)
    if (inRoom === undefined) return []
    // A rail that carries most of the block leaves a thin remainder: make it a full strip.
    const tall =
      inRoom.v0 > room.v0
        ? { ...inRoom, v0: Math.min(inRoom.v0, inRoom.v1 - BLOCK_ABOVE) }
        : { ...inRoom, v1: Math.max(inRoom.v1, inRoom.v0 + BLOCK_ABOVE) }
    return [settleBlock(tall, room, studs)]
  })
  // Blocks that meet, or nearly do, become one.
  for (let settled = false; !settled; ) {
    settled = true
    const merged: Rect[] = []
    for (const b of blocks) {
      const other = merged.findIndex((m) =>
        rectsOverlap(growRect(m, LEAST_POCKET, LEAST_POCKET), b),
      )
      const found = merged[other]
      if (found === undefined) merged.push(b)
      else {
        merged[other] = settleBlock(joinRects(found, b), room, studs)
        settled = false
      }
    }
    blocks = merged
  }
  return blocks
}

/** Lays rails, studs, tunnel blocks and insulation so that they fill the outline exactly. */
export const layCore = (spec: CoreSpec): CoreLayout => {
  const { outline, railWidth } = spec
  const room = rect(outline.u0, outline.u1, outline.v0 + railWidth, outline.v1 - railWidth)
  const { studs, pitch } = layStuds(spec)
  const blocks = blocksFor(spec, room, studs)
  const timbers: CoreTimber[] = [
    { kind: 'rail', id: 'rail-low', place: { ...outline, v1: room.v0 } },
    { kind: 'rail', id: 'rail-high', place: { ...outline, v0: room.v1 } },
  ]
  studs.forEach((s, i) => {
    subtractRects(s, blocks).forEach((place, k) => {
      timbers.push({ kind: 'stud', id: `stud-${i + 1}${k === 0 ? '' : `-${k + 1}`}`, place })
    })
  })
  blocks.forEach((place, i) => {
    timbers.push({ kind: 'block', id: `block-${i + 1}`, place })
  })
  const pockets = studs.flatMap((s, i) => {
    const next = studs[i + 1]
    return next ? fillAround(rect(s.u1, next.u0, room.v0, room.v1), blocks) : []
  })
  return { timbers, pockets, studSpacing: pitch }
}

/** Area of all timbers within an outline, holes taken off, mm². */
export const timberWithin = (layout: CoreLayout, outline: Rect, holes: readonly Rect[]): number =>
  layout.timbers
    .flatMap((t) => {
      const inside = intersectRects(t.place, outline)
      return inside ? subtractRects(inside, holes) : []
    })
    .reduce((sum, r) => sum + rectArea(r), 0)
