import type { Check } from '../../reports/checks/runChecks.ts'
import { CheckItem } from './CheckItem.tsx'
import { byUrgency, openChecks } from './openChecks.ts'

/** All checks, those that need work first. */
export const ChecksAnswer = ({ checks }: { readonly checks: readonly Check[] }) => {
  const open = openChecks(checks).length
  return (
    <>
      <p className="answer-lead">{leadLine(open, checks.length)}</p>
      <ul className="checks">
        {byUrgency(checks).map((check) => (
          <CheckItem key={check.id} check={check} />
        ))}
      </ul>
    </>
  )
}

const leadLine = (open: number, all: number): string => {
  if (all === 0) return 'No checks yet.'
  if (open === 0) return `All ${all} checks are good.`
  return `${open} of ${all} checks ${open === 1 ? 'needs' : 'need'} a look.`
}
