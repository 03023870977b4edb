import type { Solid } from '../geometry/solid.ts'
import type { Axis, Vec3 } from '../geometry/vector.ts'

/** Which assembly a part belongs to; the exploded view and the assembly steps go by it. */
export type PartGroup =
  | 'frames'
  | 'boards'
  | 'covers'
  | 'front-wall'
  | 'back-wall'
  | 'left-wall'
  | 'right-wall'
  | 'rim'
  | 'floor'
  | 'lid'
  | 'roof'
  | 'openings'
  | 'stand'
  | 'hardware'

/** What moves with what. Parts of a moving group turn about its hinge; see `Hive.hinges`. */
export type PartMotion = 'fixed' | 'lid' | 'floor' | 'frame' | 'follower' | 'cover'

/** A cut or hole beyond sawing the part square to its finished size. Lengths in mm. */
export type Operation =
  | { readonly kind: 'slot'; readonly width: number; readonly height: number }
  | { readonly kind: 'holes'; readonly diameter: number; readonly count: number }
  | {
      readonly kind: 'notch'
      readonly width: number
      readonly depth: number
      readonly count: number
    }
  | { readonly kind: 'bevel'; readonly angleDeg: number }
  | { readonly kind: 'taper'; readonly from: number; readonly to: number }
  | { readonly kind: 'groove'; readonly width: number; readonly depth: number }

/** One piece of the hive in its place with the lid and floor closed. Bare lengths are mm. */
export interface Part {
  /** Unique and stable while the number before it does not change: `front-wall/lining`. */
  readonly id: string
  /** In trade words: `Front wall lining`. Equal parts have equal names where the place does not matter. */
  readonly name: string
  readonly group: PartGroup
  readonly motion: PartMotion
  /** For frames, followers and covers: which of them, counted from 0 at the left. */
  readonly index?: number
  /** Catalogue id. */
  readonly material: string
  /** Finished size. Length is along the grain where there is grain; thickness is the least. */
  readonly size: { readonly length: number; readonly width: number; readonly thickness: number }
  /** The world axis of the grain in the closed hive; none for foam, metal, cloth. */
  readonly grain: Axis | 'none'
  /** Convex pieces that touch but do not overlap and together are the part. */
  readonly solids: readonly Solid[]
  readonly operations: readonly Operation[]
  /** Parts that this one is fixed to or rests on; each of them touches it. */
  readonly fixedTo: readonly string[]
  /** Where it goes in the exploded view: a unit direction, and how many steps out within its group. */
  readonly explode: { readonly direction: Vec3; readonly layer: number }
  /** Order of assembly, counted from 1. */
  readonly step: number
  /** The id of a part that this one is the same piece as, only moved along the row: all frames are alike. */
  readonly copyOf?: string
  /** Bought as it is (hinges, mesh, wax), not cut from stock. */
  readonly bought: boolean
}
