import type { Box } from '../geometry/box.ts'
import type { Vec3 } from '../geometry/vector.ts'
import type { HiveDimensions } from './dimensions.ts'
import type { Part } from './part.ts'

/** One thing in the row of frames, from left to right; the items fill the cavity without a gap. */
export type RowItem =
  | { readonly kind: 'frame'; readonly number: number; readonly x0: number; readonly x1: number }
  | { readonly kind: 'follower'; readonly number: number; readonly x0: number; readonly x1: number }
  | { readonly kind: 'divider'; readonly x0: number; readonly x1: number }
  | { readonly kind: 'space'; readonly x0: number; readonly x1: number }
  | { readonly kind: 'play'; readonly x0: number; readonly x1: number }
  | { readonly kind: 'empty'; readonly x0: number; readonly x1: number }

/** The line that the lid or floor turns about, along x. Positive angles open it. */
export interface Hinge {
  readonly motion: 'lid' | 'floor'
  readonly point: Vec3
  /** The turn about +x (right-handed) that opens by one degree: +1 or -1. */
  readonly sense: 1 | -1
  readonly openDeg: number
}

/** An opening through a wall, with the box of air in it, for heat, ventilation and checks. */
export interface Opening {
  readonly kind: 'entrance' | 'vent'
  readonly index: number
  readonly wall: 'front' | 'back' | 'left' | 'right'
  readonly tunnel: Box
  readonly holes: number
  /** Clear area of the whole opening, mm². */
  readonly area: number
  /** The colony it serves, from the left. */
  readonly colony: number
}

/**
 * One flat framed panel as heat and drawings need it: layers from inside to outside and the share of
 * its face that is timber. The lengths are of the core, mm.
 */
export interface PanelSummary {
  readonly id: 'front-wall' | 'back-wall' | 'left-wall' | 'right-wall' | 'lid' | 'floor'
  readonly name: string
  /** Inside face seen by the cavity, mm². */
  readonly innerArea: number
  /** Face of the core with its rails, mm². */
  readonly coreArea: number
  /** Part of `coreArea` that is timber (rails, studs and tunnel blocks), mm². */
  readonly timberArea: number
  readonly lining: { readonly material: string; readonly thickness: number }
  readonly core: {
    readonly insulation: string
    readonly timber: string
    readonly thickness: number
  }
  readonly cladding: { readonly material: string; readonly thickness: number }
}

/** What is above the lid's insulated panel when it slopes. Heights in mm. */
export interface RoofSpace {
  readonly filling: 'air' | 'tapered'
  readonly lowHeight: number
  readonly highHeight: number
  /** Part of the plan that is firring or closer, 0 to 1. */
  readonly timberShare: number
  readonly deck: { readonly material: string; readonly thickness: number }
}

/** The hive in space: everything that the reports, the scene and the drawings need to know. */
export interface Hive {
  readonly parts: readonly Part[]
  readonly row: readonly RowItem[]
  readonly dimensions: HiveDimensions
  readonly hinges: readonly Hinge[]
  readonly openings: readonly Opening[]
  readonly panels: readonly PanelSummary[]
  readonly roof: RoofSpace | undefined
  /** Boxes of air that bees can reach inside, by colony from the left. */
  readonly cavities: readonly { readonly colony: number; readonly box: Box }[]
  /** Bought sundries without a place of their own (screws for frames, pegs, chains). */
  readonly sundries: readonly {
    readonly name: string
    readonly count: number
    readonly use: string
  }[]
}
