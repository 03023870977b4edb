/** What is built by itself before it joins the rest. */
export type AssemblyUnit = 'body' | 'floor' | 'lid' | 'frames'

/** What stands on a step's picture: its own unit on the bench, the hive, or the hive without its lid. */
export type StepScope = 'unit' | 'hive' | 'open-hive'

export type StepView = 'three-quarter' | 'front' | 'side' | 'top' | 'inside' | 'underneath'

/** One step of building, with everything that is needed at it. */
export interface AssemblyStep {
  /** Counted from 1. */
  readonly number: number
  /** The stage of `src/hive/steps.ts`: what `Part.step` and `Fastening.step` name. */
  readonly stage: number
  readonly title: string
  /** Parts that come on in this step, in the order in which they do. */
  readonly partIds: readonly string[]
  /** Parts of other steps that this one is about: walls that are joined, boards that are painted. */
  readonly worksOn: readonly string[]
  /** Where many are alike, the ids of the one that is drawn; else empty. */
  readonly pictured: readonly string[]
  readonly unit: AssemblyUnit
  readonly scope: StepScope
  readonly rows: readonly {
    readonly label: string
    readonly name: string
    readonly count: number
  }[]
  /** What to do, sentence by sentence. They hold no lengths and masses, whose unit is the reader's. */
  readonly instructions: readonly string[]
  /** Fastenings of the step, as indices into the fastener report. */
  readonly fastenings: readonly number[]
  /** Equal diagonals show that a frame is square; `limitMm` is how far they may differ. */
  readonly diagonals: readonly {
    readonly name: string
    readonly lengthMm: number
    readonly limitMm: number
  }[]
  /** The heaviest thing that is lifted or held at once, kg. */
  readonly liftKg: number
  /** Why a second pair of hands is needed, and what to do without. */
  readonly secondPerson: string | undefined
  /** Ids from the catalogue of cautions. */
  readonly cautions: readonly string[]
  /** An honest range, minutes, without waiting. */
  readonly minutes: readonly [number, number]
  /** Hours to wait before the next step, for glue or paint; after the last one, before bees. */
  readonly waitHours: number
  /** From where the step is seen best. */
  readonly view: StepView
}

/** What is written on parts of one row, and what they meet. */
export interface PartLabel {
  readonly label: string
  readonly name: string
  readonly count: number
  /** Which edge or end is up when it stands in the hive; none where it does not matter. */
  readonly up: 'long edge' | 'end' | 'face' | 'none'
  /** Which face looks outwards, in words. */
  readonly outside: string
  readonly hand: 'left' | 'right' | 'none'
  /** Labels of the rows that it touches and is fixed to. */
  readonly mates: readonly string[]
  readonly groups: readonly string[]
}

export interface AssemblyReport {
  readonly steps: readonly AssemblyStep[]
  readonly labels: readonly PartLabel[]
  /** How the limits of all diagonals follow, in words. */
  readonly squareRule: string
  /** Where the minutes come from, in words. */
  readonly timeRule: string
}
