/** Boards of one length that can be had; all of a job's boards have the same section. */
export interface LumberStock {
  readonly id: string
  readonly lengthMm: number
  /** In the user's money, 0 for what is on hand. */
  readonly price: number
  /** How many there are at most; unlimited when left out. */
  readonly count?: number
}

export interface LumberPart {
  readonly id: string
  readonly lengthMm: number
  readonly count: number
}

/** Parts to cut from boards of one section: everything in mm and in the user's money. */
export interface LumberJob {
  readonly stocks: readonly LumberStock[]
  readonly kerfMm: number
  /** Taken off each board in all, saw cuts of the trimming included; half of it at either end. */
  readonly trimMm: number
  readonly parts: readonly LumberPart[]
}

/** One piece on a board, from the board's left end. */
export interface BarPiece {
  /** Index in the job's parts. */
  readonly part: number
  readonly fromMm: number
  readonly lengthMm: number
}

/** Boards that are all cut alike. */
export interface BarPattern {
  /** Index in the job's stocks. */
  readonly stock: number
  readonly count: number
  /** Longest first. */
  readonly pieces: readonly BarPiece[]
  /** What is left in one length behind the last piece and its saw cut; 0 when the cut eats it. */
  readonly offcutMm: number
}

/**
 * Proof that nothing cheaper than `priceUnits` exists, in whole units as `verifyCertificate` reads them:
 * every cheaper purchase breaks the rule of at least one of the dual vectors, which give each part a
 * whole weight. See Farley 1990 and Alves & Valério de Carvalho 2008.
 */
export interface LumberCertificate {
  readonly priceUnits: number
  readonly duals: readonly (readonly number[])[]
}

/** The best plan known, and how far from the cheapest it can be at most. */
export interface LumberAnswer {
  readonly kind: 'plan'
  readonly patterns: readonly BarPattern[]
  readonly price: number
  /** No plan can cost less. */
  readonly bound: number
  /** `verifyCertificate` has confirmed that nothing is cheaper. */
  readonly proven: boolean
  readonly certificate: LumberCertificate | undefined
  /** What first-fit decreasing on the best single length would cost: what planning saves. */
  readonly plainPrice: number
  readonly boards: number
}

/** Parts that no board takes, or more than the counted boards hold. */
export interface LumberRefusal {
  readonly kind: 'refused'
  readonly reason: 'no-stock' | 'too-long' | 'not-enough' | 'bad-input'
  /** Indices in the job's parts. */
  readonly parts: readonly number[]
  readonly message: string
}

export type LumberResult = LumberAnswer | LumberRefusal
