import { applyChanges } from '../../design/setField.ts'
import type { Check } from '../../reports/checks/runChecks.ts'
import { formatLimits, formatMeasured } from '../../sheets/checkWords.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { VERDICT_WORD, Verdict } from './VerdictMark.tsx'

/** One check: verdict, what was measured, the limit, why, the source, and a fix where there is one. */
export const CheckItem = ({ check }: { readonly check: Check }) => {
  const units = useViewStore((s) => s.units)
  const select = useViewStore((s) => s.select)
  const edit = useDesignStore((s) => s.edit)
  const { fix, measured, quantity, partIds } = check
  const limits = formatLimits(check, units)
  return (
    <li className={`check ${check.verdict}`}>
      <div className="check-head">
        <Verdict verdict={check.verdict}>{VERDICT_WORD[check.verdict]}</Verdict>
        <h4>
          {partIds.length === 0 ? (
            check.title
          ) : (
            <button
              type="button"
              className="link"
              title="Show its parts in the hive"
              onClick={() => select(partIds)}
            >
              {check.title}
            </button>
          )}
        </h4>
        {measured !== undefined && (
          <strong className="check-figure">{formatMeasured(quantity, measured, units)}</strong>
        )}
      </div>
      {limits !== '' && <p className="check-limit">Should be {limits}.</p>}
      <p>{check.why}</p>
      {fix && (
        <button
          type="button"
          className="plain fix-button"
          onClick={() => edit((design) => applyChanges(design, fix.changes))}
        >
          Fix: {fix.label}
        </button>
      )}
      <details className="source">
        <summary>Where this comes from</summary>
        <p>{check.source}</p>
      </details>
    </li>
  )
}
