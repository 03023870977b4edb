export type ShoppingKind =
  | 'lumber'
  | 'sheet'
  | 'insulation'
  | 'covering'
  | 'fastener'
  | 'hardware'
  | 'adhesive'
  | 'finish'
  | 'frame'

/** One line to buy. */
export interface ShoppingLine {
  readonly kind: ShoppingKind
  /** The key of its price in the design's stock, to edit it by. */
  readonly id: string
  readonly name: string
  /** `2.4 m`, `1220 × 2440`, `box of 200`. Lengths are left to `sizeMm` so that units can be chosen. */
  readonly detail: string
  /** Sizes of one unit in mm: a board's length, a sheet's length and width. */
  readonly sizeMm: readonly number[]
  readonly quantity: number
  readonly unit:
    | 'board'
    | 'sheet'
    | 'box'
    | 'each'
    | 'pair'
    | 'm'
    | 'm2'
    | 'tin'
    | 'tube'
    | 'roll'
    | 'bag'

  readonly onHand: boolean
  readonly priceEach: number
  readonly price: number
  /** The price is invented, and not the user's own. */
  readonly isDemoPrice: boolean
  /** What stays over, in words without units of length: `3 pieces`, `120 screws`. */
  readonly leftOver: string
  readonly leftOverMm: readonly (readonly number[])[]
  /** Bought for parts of these cut list rows. */
  readonly labels: readonly string[]
}

export interface ShoppingList {
  readonly lines: readonly ShoppingLine[]
  readonly hives: number
  readonly total: number
  readonly perHive: number
  readonly currency: string
  /** Share of the total of each kind, largest first, 0 to 1. */
  readonly shares: readonly {
    readonly kind: ShoppingKind
    readonly price: number
    readonly share: number
  }[]
  readonly usesDemoPrices: boolean
  /** False while the boards and sheets are estimates because the plan is still being made. */
  readonly isFinal: boolean
}
