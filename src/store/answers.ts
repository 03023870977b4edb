import type { Design } from '../design/schema.ts'
import { deriveHive } from '../hive/deriveHive.ts'
import type { Hive } from '../hive/hive.ts'
import type { Refusal } from '../hive/refusal.ts'
import { type Report, runReports } from '../reports/report.ts'
import { useDesignStore } from './designStore.ts'

/** A design with its hive and report. */
export interface Answer {
  readonly design: Design
  readonly hive: Hive
  readonly report: Report
}

/**
 * What there is to show: the newest hive that could be built, and why the present design can't be
 * built when it can't. `answer` is undefined only when no design has ever been built.
 */
export interface Answers {
  readonly answer: Answer | undefined
  readonly refusals: readonly Refusal[]
  readonly stale: boolean
}

let lastDesign: Design | undefined
let last: Answers = { answer: undefined, refusals: [], stale: false }

/** Derives hive and report, remembered by the identity of the design, with the last good one kept. */
export const answersFor = (design: Design): Answers => {
  if (design === lastDesign) return last
  const result = deriveHive(design)
  last =
    result.kind === 'built'
      ? {
          answer: { design, hive: result.hive, report: runReports(design, result.hive) },
          refusals: [],
          stale: false,
        }
      : { answer: last.answer, refusals: result.refusals, stale: true }
  lastDesign = design
  return last
}

export const useAnswers = (): Answers => useDesignStore((s) => answersFor(s.design))
