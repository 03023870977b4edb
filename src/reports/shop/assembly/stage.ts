import type { Design } from '../../../design/schema.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { Part } from '../../../hive/part.ts'
import type { FinishPlan } from '../fasteners/fastenerReport.ts'
import type { AssemblyUnit, StepScope, StepView } from './assemblyReport.ts'

/** Parts of one row of the cut list that come on in a stage. */
export interface StageRow {
  readonly label: string
  readonly name: string
  readonly count: number
  readonly massKgEach: number
}

/** What a stage can ask of the hive while it is put into words. */
export interface StageFacts {
  readonly design: Design
  readonly hive: Hive
  readonly finish: FinishPlan | undefined
  /** Parts that come on in this stage. */
  readonly parts: readonly Part[]
  /** The rows of the cut list that they are taken from, and how many of each. */
  readonly rows: readonly StageRow[]
  /** Mass of all parts that come on in these stages, kg. */
  readonly massOf: (stages: readonly number[]) => number
  /** `screw` or `nail`: how wood is joined to wood. */
  readonly fasten: string
}

/** Something that is lifted or held up while it is fixed. */
export interface Lift {
  /** At the head of a sentence: `The lid`. */
  readonly what: string
  readonly massKg: number
  /** Its two longest sides, the longer first. */
  readonly sidesMm: readonly [number, number]
  /** Why it can't be let go, whatever it weighs. */
  readonly held?: string
  /** How one person does it. */
  readonly alone: string
}

/** A rectangle that is glued up. */
export interface GlueUp {
  readonly name: string
  readonly sidesMm: readonly [number, number]
}

/** One stage of building in words, whatever the hive. */
export interface StageSpec {
  readonly stage: number
  readonly unit: AssemblyUnit
  readonly scope: StepScope
  readonly view: StepView | ((facts: StageFacts) => StepView)
  readonly title: string | ((facts: StageFacts) => string)
  readonly instructions: (facts: StageFacts) => readonly string[]
  readonly glueUps?: (facts: StageFacts) => readonly GlueUp[]
  readonly lift?: (facts: StageFacts) => Lift | undefined
  readonly cautions?: (facts: StageFacts) => readonly string[]
  /** Hours until the glue bears; 0 where nothing is glued. */
  readonly glueHours?: number
  /** Hours to wait for another reason than glue. */
  readonly otherWaitHours?: (facts: StageFacts) => number
  /** A stage without parts is left out unless this says that it is due. */
  readonly isDue?: (facts: StageFacts) => boolean
  readonly worksOn?: (facts: StageFacts) => readonly Part[]
  readonly pictured?: (facts: StageFacts) => readonly Part[]
  /** Minutes beyond handling and fastening the parts. */
  readonly extraMinutes?: (facts: StageFacts) => readonly [number, number]
  /** Minutes for each part instead of the usual ones. */
  readonly minutesPerPart?: readonly [number, number]
}

/**
 * Hours until a glued joint that is also screwed or nailed can be handled, and until one that must
 * hold by itself can be loaded. Common practice for waterproof wood glue; the bottle decides.
 */
export const GLUE_HANDLE_H = 4
export const GLUE_SET_H = 12

/** A word with the letters of the stage's rows whose name holds `part`: `rails (H, I)`. */
export const lettered = (word: string, part: string, { rows }: StageFacts): string => {
  const letters = rows.filter((row) => row.name.toLowerCase().includes(part)).map((r) => r.label)
  return letters.length === 0 ? word : `${word} (${letters.join(', ')})`
}

/** Whether a part that comes on in this stage has an id that holds `piece`. */
export const hasPiece = ({ parts }: StageFacts, piece: string): boolean =>
  parts.some((part) => part.id.includes(piece))

/** Only what applies, in order. */
export const sentences = (...lines: readonly (string | false | undefined)[]): readonly string[] =>
  lines.filter((line) => typeof line === 'string')
