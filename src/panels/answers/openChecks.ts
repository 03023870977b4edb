import type { Check } from '../../reports/checks/runChecks.ts'

/** Those that need work first, within a verdict as the report has them. */
export const byUrgency = (checks: readonly Check[]): readonly Check[] =>
  [...checks].sort((a, b) => URGENCY[a.verdict] - URGENCY[b.verdict])

/** Checks that are not good. */
export const openChecks = (checks: readonly Check[]): readonly Check[] =>
  checks.filter((check) => check.verdict !== 'ok')

const URGENCY = { fix: 0, look: 1, ok: 2 } as const
