import type { Design } from '../design/schema.ts'
import type { HeatComparisons } from '../reports/heat/field/heatComparisons.ts'
import type { HeatFieldAnswer } from '../reports/heat/field/heatFieldAnswer.ts'
import type { OtherDesign } from '../reports/heat/field/planComparisons.ts'
import type { SchemeAnswer } from '../solvers/conduction/fieldAnswer.ts'
import type { FieldQuestion } from '../solvers/conduction/solveWorld.ts'

/** What the page may want to know about the heat of a design. */
export type HeatJob =
  | {
      readonly kind: 'field'
      readonly design: Design
      readonly quality: HeatFieldAnswer['quality']
    }
  | {
      readonly kind: 'comparisons'
      readonly design: Design
      readonly others: readonly OtherDesign[]
    }

/** What comes of a job. A message is for a person to read. */
export type HeatResult =
  | { readonly kind: 'field'; readonly answer: HeatFieldAnswer }
  | { readonly kind: 'comparisons'; readonly comparisons: HeatComparisons }
  | { readonly kind: 'failed'; readonly message: string }

/**
 * To the thread that answers jobs. A new question takes the place of the one under way. `serial` grows
 * and comes back with the result, so that what was meant for an older question is known.
 */
export type FieldRequest =
  | { readonly kind: 'ask'; readonly serial: number; readonly job: HeatJob }
  | { readonly kind: 'cancel' }

export interface FieldReply {
  readonly serial: number
  readonly result: HeatResult
}

/** To the thread that helps with one of the two schemes. */
export type CellRequest =
  | { readonly kind: 'solve'; readonly serial: number; readonly question: FieldQuestion }
  | { readonly kind: 'cancel' }

export type CellReply =
  | { readonly kind: 'solved'; readonly serial: number; readonly answer: SchemeAnswer }
  /** `isWorld`: the world has no answer, which is no fault of the program. */
  | {
      readonly kind: 'failed'
      readonly serial: number
      readonly message: string
      readonly isWorld: boolean
    }

/** The first message to a worker: what it is for, and its line to the other one. */
export interface FieldRole {
  readonly kind: 'role'
  readonly role: 'answers' | 'cells'
  readonly line: MessagePort
}
