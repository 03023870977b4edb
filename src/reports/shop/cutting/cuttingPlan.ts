import type { FieldEdit } from '../../../design/setField.ts'
import type { LumberJob, LumberResult } from '../../../solvers/cutting/lumber/lumberJob.ts'
import type { SheetJob, SheetResult } from '../../../solvers/cutting/sheets/sheetJob.ts'

/** What one length of board becomes: `across × layers` parts of one row, side by side. */
export interface Blank {
  /** The cut list row's label. */
  readonly label: string
  readonly name: string
  readonly lengthMm: number
  readonly widthMm: number
  readonly thicknessMm: number
  /** Parts in all, for all hives. */
  readonly parts: number
  /** Strips ripped side by side from the board's width. */
  readonly across: number
  /** Strips sawn from the board's thickness. */
  readonly layers: number
}

/** Boards of one material and section. `blanks[i]` is what `job.parts[i]` becomes. */
export interface LumberGroup {
  /** `spruce 28×70` in hundredths-free mm; stable while material and section stay. */
  readonly key: string
  readonly material: string
  readonly materialName: string
  /** The trade name of the section: `planed 28 x 70`. */
  readonly section: string
  readonly thicknessMm: number
  readonly widthMm: number
  readonly job: LumberJob
  readonly blanks: readonly Blank[]
}

/** Sheets of one material and thickness. `labels[i]` is the cut list row of `job.parts[i]`. */
export interface SheetGroup {
  readonly key: string
  readonly material: string
  readonly materialName: string
  readonly thicknessMm: number
  readonly job: SheetJob
  readonly labels: readonly string[]
  readonly names: readonly string[]
}

/** Something that can't be cut from what can be had, and the nearest way out. */
export interface CuttingProblem {
  readonly labels: readonly string[]
  readonly message: string
  readonly remedies: readonly {
    readonly text: string
    /** An edit of the design that does it, where there is one. */
    readonly changes?: readonly FieldEdit[]
  }[]
}

/** All that is to be planned for a design; cheap to make, slow to solve. */
export interface CuttingJobs {
  readonly hives: number
  readonly lumber: readonly LumberGroup[]
  readonly sheets: readonly SheetGroup[]
  readonly problems: readonly CuttingProblem[]
}

/** The jobs with their answers, side by side. */
export interface CuttingPlan {
  readonly jobs: CuttingJobs
  readonly lumber: readonly LumberResult[]
  readonly sheets: readonly SheetResult[]
  /** False while better plans are still looked for. */
  readonly isFinal: boolean
}
