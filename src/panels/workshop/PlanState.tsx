import { VerdictMark } from '../answers/VerdictMark.tsx'
import type { PlanVerdict, PlanWords } from './planWords.ts'

/** How good a plan is: a mark and the words beside it. */
export const PlanState = ({ words }: { readonly words: PlanWords }) => (
  <p className={`plan-state ${words.verdict}`}>
    <PlanMark verdict={words.verdict} />
    <span>{words.text}</span>
  </p>
)

const PlanMark = ({ verdict }: { readonly verdict: PlanVerdict }) => {
  if (verdict === 'proven') return <VerdictMark verdict="ok" />
  if (verdict === 'refused') return <VerdictMark verdict="fix" />
  return (
    <svg className={`stage-mark ${verdict}`} viewBox="0 0 24 24" aria-hidden="true">
      <circle
        className="ring"
        cx="12"
        cy="12"
        r="9"
        {...(verdict === 'looking' && { strokeDasharray: '4 3.1' })}
      />
      {verdict === 'gap' && <path className="fill" d="M12 3a9 9 0 0 1 0 18z" />}
    </svg>
  )
}
