/** Sheets of one size that can be had; all of a job's sheets have the same material and thickness. */
export interface SheetStock {
  readonly id: string
  /** Along the grain, where there is grain. */
  readonly lengthMm: number
  readonly widthMm: number
  /** In the user's money, 0 for what is on hand. */
  readonly price: number
  /** How many there are at most; unlimited when left out. */
  readonly count?: number
}

export interface SheetPart {
  readonly id: string
  /** Along the sheet's length unless it may be turned. */
  readonly lengthMm: number
  readonly widthMm: number
  readonly count: number
  readonly mayTurn: boolean
}

/** Rectangles to cut from sheets with cuts from edge to edge. */
export interface SheetJob {
  readonly stocks: readonly SheetStock[]
  readonly kerfMm: number
  /** Taken off each edge of each sheet, saw cut included. */
  readonly trimMm: number
  /**
   * How often the direction of the cuts may change, the first cuts counted as stage 1; a last cut that
   * only trims a part out of its strip is not counted (non-exact, as in Gilmore & Gomory 1965). Cuts
   * for carrying are not counted either: each carried piece begins anew.
   */
  readonly stages: 2 | 3 | 4 | 'any'
  /** Pieces of a sheet after its first cuts must fit into this size either way round, to be carried. */
  readonly carry?: { readonly lengthMm: number; readonly widthMm: number }
  readonly parts: readonly SheetPart[]
}

/** A rectangle on a sheet, from its lower left corner, factory edges included. */
export interface SheetRect {
  readonly xMm: number
  readonly yMm: number
  /** Along the sheet's length. */
  readonly lengthMm: number
  /** Along the sheet's width. */
  readonly widthMm: number
}

export interface SheetPiece extends SheetRect {
  /** Index in the job's parts. */
  readonly part: number
  readonly turned: boolean
}

/**
 * How a rectangle is divided. A cut removes the kerf between `first` (towards the origin) and `second`.
 * The root rectangle is the sheet without its trimmed edges. `isCarry` marks the first cuts that make
 * pieces which can be carried.
 */
export type CutNode =
  | {
      readonly kind: 'cut'
      readonly rect: SheetRect
      /** The axis that the saw runs along: `length` divides the width. */
      readonly along: 'length' | 'width'
      /** Where `first` ends, from the sheet's corner, across the saw's way. */
      readonly atMm: number
      readonly isCarry: boolean
      readonly first: CutNode
      readonly second: CutNode
    }
  | { readonly kind: 'part'; readonly rect: SheetRect; readonly piece: SheetPiece }
  | { readonly kind: 'offcut'; readonly rect: SheetRect }

/** Sheets that are all cut alike. */
export interface SheetLayout {
  /** Index in the job's stocks. */
  readonly stock: number
  readonly count: number
  readonly root: CutNode
  readonly pieces: readonly SheetPiece[]
  /** Largest first. */
  readonly offcuts: readonly SheetRect[]
  readonly stages: number
}

export interface SheetAnswer {
  readonly kind: 'plan'
  readonly layouts: readonly SheetLayout[]
  readonly price: number
  /** No plan can cost less. */
  readonly bound: number
  /** The price equals the bound. */
  readonly proven: boolean
  /** How the bound was found, for a person: `area`, or the pair of dual feasible functions. */
  readonly boundBy: string
  readonly sheets: number
}

/** Parts that no sheet takes, or more than the counted sheets hold. */
export interface SheetRefusal {
  readonly kind: 'refused'
  readonly reason: 'no-stock' | 'too-large' | 'not-enough' | 'bad-input'
  /** Indices in the job's parts. */
  readonly parts: readonly number[]
  readonly message: string
}

export type SheetResult = SheetAnswer | SheetRefusal
