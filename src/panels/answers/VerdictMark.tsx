import type { Check } from '../../reports/checks/runChecks.ts'

/** The verdicts in words; each also has a shape of its own, so that colour is never needed. */
export const VERDICT_WORD: Readonly<Record<Check['verdict'], string>> = {
  ok: 'Good',
  look: 'Look',
  fix: 'Fix',
}

/** The shape of a verdict: a ring with a tick, a triangle with a stroke, a square with a cross. */
export const VerdictMark = ({ verdict }: { readonly verdict: Check['verdict'] }) => (
  <svg className={`verdict-mark ${verdict}`} viewBox="0 0 24 24" aria-hidden="true">
    {verdict === 'ok' && (
      <>
        <circle className="shape" cx="12" cy="12" r="10" />
        <path className="sign" d="m7 12.500 3.500 3.500L17 8.500" />
      </>
    )}
    {verdict === 'look' && (
      <>
        <path className="shape" d="M12 2 23 22H1z" />
        <path className="sign" d="M12 9v6M12 18v1.500" />
      </>
    )}
    {verdict === 'fix' && (
      <>
        <path className="shape" d="M2 2h20v20H2z" />
        <path className="sign" d="m7.500 7.500 9 9M16.500 7.500l-9 9" />
      </>
    )}
  </svg>
)

/** Shape and words together. */
export const Verdict = ({
  verdict,
  children,
}: {
  readonly verdict: Check['verdict']
  readonly children: string
}) => (
  <span className={`verdict ${verdict}`}>
    <VerdictMark verdict={verdict} /> {children}
  </span>
)
