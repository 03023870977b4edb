import { applyChanges } from '../../design/setField.ts'
import type { CuttingProblem } from '../../reports/shop/cutting/cuttingPlan.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { VerdictMark } from '../answers/VerdictMark.tsx'

/** What can't be cut from what can be had, each with its ways out; pressing one is one edit. */
export const Problems = ({ problems }: { readonly problems: readonly CuttingProblem[] }) => {
  const edit = useDesignStore((s) => s.edit)
  if (problems.length === 0) return null
  return (
    <ul className="shop-problems">
      {problems.map(({ labels, message, remedies }) => (
        <li key={`${labels.join()} ${message}`}>
          <p>
            <VerdictMark verdict="fix" />
            <span>
              {labels.length > 0 && <strong>{labels.join(', ')}. </strong>}
              {message}
            </span>
          </p>
          {remedies.length > 0 && (
            <ul>
              {remedies.map(({ text, changes }) => (
                <li key={text}>
                  {changes === undefined ? (
                    text
                  ) : (
                    <button
                      type="button"
                      className="plain"
                      onClick={() => edit((design) => applyChanges(design, changes))}
                    >
                      {text}
                    </button>
                  )}
                </li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </ul>
  )
}
