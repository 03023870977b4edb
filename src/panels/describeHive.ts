import type { Answers } from '../store/answers.ts'
import type { UnitPreferences } from '../units/preferences.ts'
import { openChecks } from './answers/openChecks.ts'
import { outsideSize } from './outsideSize.ts'

/** The hive in one sentence, for those who do not see it: size, frames, checks. */
export const describeHive = (answers: Answers, units: UnitPreferences): string => {
  const { answer, refusals, stale } = answers
  if (answer === undefined) {
    return refusals[0] ? `No hive yet. ${refusals[0].message}` : 'No hive yet.'
  }
  const { design, hive, report } = answer
  const { frames } = design.cavity
  const open = openChecks(report.checks).length
  const sentence =
    `Hive ${outsideSize(hive.dimensions, units.length)}, ` +
    `${frames} ${frames === 1 ? 'frame' : 'frames'}, ${checkWords(open, report.checks.length)}.`
  if (!stale) return sentence
  return `The present design cannot be built. ${refusals[0]?.message ?? ''} Shown is the last that can: ${sentence}`
}

const checkWords = (open: number, all: number): string => {
  if (open === 0) return all === 0 ? 'no checks' : `all ${all} checks good`
  return `${open} ${open === 1 ? 'check needs' : 'checks need'} a look`
}
