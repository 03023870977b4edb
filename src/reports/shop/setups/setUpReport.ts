export type SetUpKind =
  | 'break-down'
  | 'rip'
  | 'resaw'
  | 'plane'
  | 'crosscut'
  | 'bevel'
  | 'taper'
  | 'groove'
  | 'notch'
  | 'slot'
  | 'drill'
  | 'knife'
  | 'snips'

export type Setting =
  | { readonly kind: 'length'; readonly mm: number }
  | { readonly kind: 'angle'; readonly deg: number }
  | { readonly kind: 'diameter'; readonly mm: number }

/** Pieces that pass at one setting. */
export interface SetUpRow {
  /** The cut list row's label. */
  readonly label: string
  readonly name: string
  readonly count: number
}

/** One setting of one tool, made once, and everything that is cut at it: a card at the bench. */
export interface SetUp {
  /** Counted from 1 in the order of work. */
  readonly number: number
  readonly kind: SetUpKind
  /** In words: `Table saw, rip fence`. */
  readonly tool: string
  /** The one large figure of the card. */
  readonly setting: Setting
  /** A second figure, such as a groove's depth or a guide's offset, each with its word. */
  readonly further: readonly { readonly name: string; readonly setting: Setting }[]
  /** What is cut: `Spruce 20 × 144`. */
  readonly stock: string
  readonly materialName: string
  /** Large pieces first, so that a spoiled one can become a smaller one. */
  readonly rows: readonly SetUpRow[]
  readonly usesStopBlock: boolean
  /** In the order in which they are to be read; the test piece first. */
  readonly advice: readonly string[]
  /** The tools of the profile can't make this cut. */
  readonly problem: { readonly message: string; readonly wayOut: string } | undefined
}

export interface SetUpReport {
  readonly setUps: readonly SetUp[]
  /** Parts that are cut, bought ones not counted. */
  readonly partCount: number
  /** Distinct tools, in words. */
  readonly tools: readonly string[]
  /** Rows that differ by so little that they are easily mixed up. */
  readonly nearTwins: readonly {
    readonly labels: readonly [string, string]
    readonly differenceMm: number
  }[]
}
